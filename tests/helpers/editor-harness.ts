import { fileURLToPath } from "node:url";
import { type Harness, harness } from "./harness.ts";

const root = fileURLToPath(new URL("../components/editor/harness", import.meta.url));

/** The editor on a page of its own. */
export function editorHarness(): Promise<Harness> {
  return harness(root, () => {});
}
