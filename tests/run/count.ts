import { readFileSync } from "node:fs";
import * as z from "zod";

const resultSchema = z.looseObject({
  numPassedTests: z.int(),
  numFailedTests: z.int(),
  numPendingTests: z.int(),
  numTodoTests: z.int(),
  testResults: z.array(
    z.looseObject({ name: z.string(), status: z.string(), assertionResults: z.array(z.unknown()) }),
  ),
});

export interface TestCount {
  passed: number;
  failed: number;
  /** What failed that is no test's own failure. */
  sentences: string[];
}

/**
 * Counts a run of the tests from its JSON result. A file that could not be loaded, a test left out, and a run
 * that ended badly for another reason each count as a failure: nothing is passed over quietly.
 * @param isDone whether the run itself ended well
 */
export function countOf(file: string, isDone: boolean): TestCount {
  let text: string;
  try {
    text = readFileSync(file, "utf8");
  } catch {
    return { passed: 0, failed: 1, sentences: ["The run of the tests ended without a result."] };
  }
  const result = resultSchema.parse(JSON.parse(text));
  const unloaded = result.testResults.filter(
    ({ status, assertionResults }) => status === "failed" && assertionResults.length === 0,
  );
  const leftOut = result.numPendingTests + result.numTodoTests;
  const sentences = unloaded.map(({ name }) => `${name} could not be loaded, or holds no test.`);
  if (leftOut > 0)
    sentences.push(`${leftOut} tests were left out: a test that did not run is a failure here.`);
  const counted = result.numFailedTests + unloaded.length + leftOut;
  const isUnsaid = !isDone && counted === 0;
  if (isUnsaid) sentences.push("The run of the tests ended badly outside of any test.");
  return { passed: result.numPassedTests, failed: counted + (isUnsaid ? 1 : 0), sentences };
}
