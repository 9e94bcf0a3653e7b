import { fileURLToPath } from "node:url";
import { type Harness, siteHarness } from "./harness.ts";

const root = fileURLToPath(new URL("../components/rounds/harness", import.meta.url));

/** The rounds on a page of their own. @param record weather as CSV */
export function roundsHarness(survey: unknown, record: string, port = 0): Promise<Harness> {
  return siteHarness(root, survey, record, port);
}
