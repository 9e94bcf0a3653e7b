import { html, type TemplateResult } from "lit";
import type { Walk } from "./context.ts";
import { screens } from "./screens/all.ts";

/** The screen of a route: its first word names it, the rest is the screen's. */
export function routeOf(walk: Walk): TemplateResult {
  const { nickname, route } = walk.draft;
  const [name = "", ...rest] = route.split("/");
  const open = ["", "teacher", "sheets"].includes(name);
  const show = screens[nickname || open ? name : ""] ?? screens[nickname ? "round" : ""]!;
  return html`${show(walk, rest.join("/"))}`;
}

/** Whether a route leads to a screen of the walk. */
export function isScreen(route: string): boolean {
  const [name = ""] = route.split("/");
  return Object.hasOwn(screens, name);
}
