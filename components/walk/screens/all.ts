import { html, type TemplateResult } from "lit";
import type { Walk } from "../context.ts";
import "./start.ts";
import "./round.ts";
import "./stop.ts";
import "./thing.ts";

/** Every screen of the walk by the first word of its route. */
export const screens: Readonly<Record<string, (walk: Walk, rest: string) => TemplateResult>> = {
  "": (walk) => html`<gwb-walk-start class="place" .walk=${walk}></gwb-walk-start>`,
  round: (walk) => html`<gwb-walk-round class="place" .walk=${walk}></gwb-walk-round>`,
  thing: (walk, of) => html`<gwb-walk-thing class="place" .walk=${walk} .of=${of}></gwb-walk-thing>`,
  stop: (walk, key) => html`<gwb-walk-stop class="place" .walk=${walk} .key=${key}></gwb-walk-stop>`,
};
