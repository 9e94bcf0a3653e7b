import { html, nothing } from "lit";
import { until } from "lit/directives/until.js";
import { type Address, valueIn } from "../../../src/survey/edit/document.ts";
import type { Editing, Shown } from "../editing.ts";

type Sort = "skyline" | "tank" | "outline";
type Draw = (editing: Editing, entry: unknown, at: Address) => Shown;

/** Each drawing comes when it is first shown: the sun's paths and the like weigh more than the fields around them. */
const load: Readonly<Record<Sort, () => Promise<Draw>>> = {
  skyline: async () => {
    const { skyline } = await import("./skyline.ts");
    return (editing, _, at) => skyline(editing, at);
  },
  tank: async () => (await import("./tank.ts")).tank,
  outline: async () => (await import("./outline.ts")).outline,
};

const loaded = new Map<Sort, Draw>();

/** Things drawn as they are, from the figures below them. */
export function drawing(editing: Editing, sort: Sort, at: Address): Shown {
  const entry = valueIn(editing.draft, at);
  const draw = loaded.get(sort);
  if (draw) return draw(editing, entry, at);
  // without its drawing a field is still a field
  const drawn = fetched(sort).then((fresh) => fresh?.(editing, entry, at) ?? nothing);
  return html`${until(drawn, nothing)}`;
}

async function fetched(sort: Sort): Promise<Draw | null> {
  const draw = await load[sort]().catch(() => null);
  if (draw) loaded.set(sort, draw);
  return draw;
}
