import { fileURLToPath } from "node:url";
import { type Harness, siteHarness } from "./harness.ts";

const root = fileURLToPath(new URL("../components/choices/harness", import.meta.url));

/** The choices screen on a page of its own. @param record weather as CSV */
export function choicesHarness(survey: object, record: string, port = 0): Promise<Harness> {
  return siteHarness(root, survey, record, port);
}
