import { html, type TemplateResult } from "lit";
import type { Walk } from "../context.ts";
import type { WalkList } from "../stops.ts";
import "./add.ts";
import "./check.ts";
import "./later.ts";
import "./round.ts";
import "./start.ts";
import "./stop.ts";
import "./thing.ts";

type Show = (walk: Walk, rest: string) => TemplateResult;

/** Screens that are not on every walk come when they are first opened. */
const later: Readonly<Record<string, { load: () => Promise<unknown>; show: Show }>> = {
  worth: {
    load: () => import("./worth.ts"),
    show: (walk) => html`<gwb-walk-worth class="place" .walk=${walk}></gwb-walk-worth>`,
  },
  teacher: {
    load: () => import("./teacher.ts"),
    show: (walk) => html`<gwb-walk-teacher class="place" .walk=${walk}></gwb-walk-teacher>`,
  },
  sheets: {
    load: () => import("./sheets.ts"),
    show: (walk) => html`<gwb-walk-sheets class="place" .walk=${walk}></gwb-walk-sheets>`,
  },
  type: {
    load: () => import("./type-in.ts"),
    show: (walk) => html`<gwb-walk-type class="place" .walk=${walk}></gwb-walk-type>`,
  },
  drawing: {
    load: () => import("./drawing.ts"),
    show: (walk) => html`<gwb-walk-drawing class="place" .walk=${walk}></gwb-walk-drawing>`,
  },
  shapes: {
    load: () => import("./shapes.ts"),
    show: (walk) => html`<gwb-walk-shapes class="place" .walk=${walk}></gwb-walk-shapes>`,
  },
};

/** Every screen of the walk by the first word of its route. */
export const screens: Readonly<Record<string, Show>> = {
  "": (walk) => html`<gwb-walk-start class="place" .walk=${walk}></gwb-walk-start>`,
  round: (walk) => html`<gwb-walk-round class="place" .walk=${walk}></gwb-walk-round>`,
  thing: (walk, of) => html`<gwb-walk-thing class="place" .walk=${walk} .of=${of}></gwb-walk-thing>`,
  stop: (walk, key) => html`<gwb-walk-stop class="place" .walk=${walk} .key=${key}></gwb-walk-stop>`,
  add: (walk, list) =>
    html`<gwb-walk-add class="place" .walk=${walk} .list=${list as WalkList}></gwb-walk-add>`,
  check: (walk) => html`<gwb-walk-check class="place" .walk=${walk}></gwb-walk-check>`,
  ...Object.fromEntries(
    Object.entries(later).map(([name, { load, show }]): [string, Show] => [
      name,
      (walk, rest) =>
        html`<gwb-walk-later .load=${load} .back=${() => walk.go("round")}>${show(walk, rest)}</gwb-walk-later>`,
    ]),
  ),
};
