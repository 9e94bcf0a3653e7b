import { expect, test } from "vitest";
import type { Sentence } from "../../src/words/en/page.ts";
import { formatter, NBSP, rough } from "../../src/words/format.ts";
import { speak } from "../../src/words/spoken.ts";
import { demoSurvey, viewOf } from "./views.ts";

const say = formatter("metric", "en");
const text = (sentence: Sentence | null) =>
  (sentence ?? [])
    .map((part) => (typeof part === "string" ? part : part.text))
    .join("")
    .replaceAll(NBSP, " ");

function spoken(change: (survey: ReturnType<typeof demoSurvey>) => void) {
  const survey = demoSurvey();
  delete survey.measures;
  change(survey);
  const said = speak(viewOf(survey), say);
  return { first: text(said.first), headline: text(said.headline), after: said.after.map(text).join("") };
}

test("where a bed's watering is not known the headline says so, and claims nothing from it", () => {
  const { headline, after } = spoken(() => {});
  expect(headline).toMatch(/^Where today’s watering is known, the gardens could give up [\d,]+ kL/);
  expect(after).toMatch(
    /How Street hedge is watered is not known: what it needs, [\d.]+ kL a year, stands in/,
  );
});

test("where none is known the headline is the need, and no saving is named", () => {
  const { headline, after } = spoken((survey) => {
    for (const bed of survey.beds) delete bed.watering.habit;
  });
  expect(headline).toMatch(/^The gardens need [\d,]+ kL of mains water/);
  expect(headline + after).not.toMatch(/give up/);
  expect(after).toContain("no saving is claimed");
});

test("where gardens get less than they need that comes first, and never as a bare negative saving", () => {
  const { headline, after } = spoken((survey) => {
    for (const bed of survey.beds) {
      if (bed.watering.supply !== "none") bed.watering.habit = { minutes: 1, days: ["mon"], months: [7] };
    }
  });
  expect(headline).toMatch(
    /^The gardens get less than they need\. Watering them to need would take [\d,]+ kL more/,
  );
  expect(headline + after).not.toMatch(/[-−]\d/);
});

test("a bed that lacks water is named before a saving elsewhere", () => {
  const { first, headline } = spoken((survey) => {
    for (const bed of survey.beds)
      if (bed.id === "hedge") bed.watering.habit = { minutes: 0, days: ["mon"], months: [7] };
  });
  expect(first).toContain("get less than the plants need");
  expect(headline).toMatch(/^The gardens could give up/);
});

test("no beds, and beds that rain is enough for, are said plainly", () => {
  const empty = spoken((survey) => {
    Object.assign(survey, { beds: [], draws: [], restrictions: [], meters: [], readings: [], found: [] });
  });
  expect(empty.headline).toBe("There are no beds in this survey yet, so there is nothing to water.");
});

test("no figure of a sentence is falsely exact", () => {
  expect([1511.3, 484.2, 63.4, 10.58, 9.96, 0.0456].map(rough)).toEqual([1510, 480, 63, 10.6, 10, 0.046]);
  expect(rough(0)).toBe(0);
  expect(rough(-1511)).toBe(-1510);
});

test("the same water in gallons", () => {
  // 1 US gallon is 3.785411784 L exactly
  expect(formatter("us", "en").yearly(3.785411784)).toBe(`1,000${NBSP}gallons`);
});
