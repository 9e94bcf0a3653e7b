import { html, type TemplateResult } from "lit";
import type { Walk } from "../context.ts";
import type { WalkList } from "../stops.ts";
import "./later.ts";
import "./round.ts";
import "./start.ts";

type Show = (walk: Walk, rest: string) => TemplateResult;

/** Screens whose code comes when they are first opened; the page's keeper has it on the machine by then. */
const later: Readonly<Record<string, { load: () => Promise<unknown>; show: Show }>> = {
  thing: {
    load: () => import("./thing.ts"),
    show: (walk, of) => html`<gwb-walk-thing class="place" .walk=${walk} .of=${of}></gwb-walk-thing>`,
  },
  stop: {
    load: () => import("./stop.ts"),
    show: (walk, key) => html`<gwb-walk-stop class="place" .walk=${walk} .key=${key}></gwb-walk-stop>`,
  },
  add: {
    load: () => import("./add.ts"),
    show: (walk, list) =>
      html`<gwb-walk-add class="place" .walk=${walk} .list=${list as WalkList}></gwb-walk-add>`,
  },
  check: {
    load: () => import("./check.ts"),
    show: (walk) => html`<gwb-walk-check class="place" .walk=${walk}></gwb-walk-check>`,
  },
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
  ...Object.fromEntries(
    Object.entries(later).map(([name, { load, show }]): [string, Show] => [
      name,
      (walk, rest) =>
        html`<gwb-walk-later .load=${load} .back=${() => walk.go("round")}>${show(walk, rest)}</gwb-walk-later>`,
    ]),
  ),
};
