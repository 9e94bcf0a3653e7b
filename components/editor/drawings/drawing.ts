import { type Address, valueIn } from "../../../src/survey/edit/document.ts";
import type { Editing, Shown } from "../editing.ts";
import { outline } from "./outline.ts";
import { skyline } from "./skyline.ts";
import { tank } from "./tank.ts";

/** Things drawn as they are, from the figures below them. */
export function drawing(editing: Editing, sort: "skyline" | "tank" | "outline", at: Address): Shown {
  const entry = valueIn(editing.draft, at);
  if (sort === "skyline") return skyline(editing, at);
  return sort === "tank" ? tank(editing, entry) : outline(editing, entry, at);
}
