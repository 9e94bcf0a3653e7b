import { fileURLToPath } from "node:url";
import { type Harness, siteHarness } from "./harness.ts";

const root = fileURLToPath(new URL("../components/walk/harness", import.meta.url));

/** The walk on a page of its own. @param survey what it begins with @param record weather as CSV */
export function walkHarness(survey: unknown, record: string, port = 0): Promise<Harness> {
  return siteHarness(root, survey, record, port);
}
