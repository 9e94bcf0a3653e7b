import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { quantityOf } from "../../../src/quantities.ts";
import { completeness } from "../../../src/survey/measuring/completeness.ts";
import { questionsAbout } from "../../../src/survey/measuring/unlikely.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { usualFields } from "../../../src/tables/usual.ts";
import { missingWords, questionCodes, questionSentence } from "../../../src/words/en/walk-questions.ts";

const document = JSON.parse(
  readFileSync(new URL("../../../demo/school.survey.json", import.meta.url), "utf8"),
);

function school(change: (survey: Survey) => void = () => {}): Survey {
  const read = readSurvey(structuredClone(document));
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  change(read.survey);
  return read.survey;
}

const asked = (change: (survey: Survey) => void) =>
  questionsAbout(school(change)).map(({ at, code }) => `${at} ${code}`);

describe("a second look", () => {
  test("an ordinary school is asked nothing", () => {
    expect(questionsAbout(school())).toEqual([]);
  });

  test.each<[string, (survey: Survey) => void, string]>([
    [
      "a shrub bed of 4,000 m²",
      (s) => {
        s.beds[8]!.area_m2 = 4000;
      },
      "beds[8].area_m2 unusually-large",
    ],
    [
      "a hose of 90 L/min",
      (s) => {
        s.beds[4]!.watering.flow_L_min = 90;
      },
      "beds[4].watering.flow_L_min unusually-large",
    ],
    [
      "cover 0 with plants",
      (s) => {
        s.beds[3]!.leafCover = 0;
      },
      "beds[3].leafCover no-cover-but-plants",
    ],
    [
      "mulch without depth",
      (s) => {
        s.beds[2]!.mulch!.depth_mm = 0;
      },
      "beds[2].mulch.depth_mm mulch-without-depth",
    ],
    [
      "a tank fuller than full",
      (s) => {
        s.tanks[1]!.level_L = 5200;
      },
      "tanks[1].level_L fuller-than-full",
    ],
    [
      "an outlet half way up",
      (s) => {
        s.tanks[1]!.unusable_L = 3000;
      },
      "tanks[1].unusable_L all-below-outlet",
    ],
    [
      "rain from sprinklers",
      (s) => {
        s.beds[1]!.watering.flow_L_min = 0.6;
      },
      "beds[1].watering.flow_L_min comes-slowly",
    ],
    [
      "a cloudburst from sprinklers",
      (s) => {
        s.beds[3]!.area_m2 = 4;
      },
      "beds[3].watering.flow_L_min comes-fast",
    ],
    [
      "more than the tap gives",
      (s) => {
        s.beds[5]!.watering.flow_L_min = 30;
      },
      "beds[5].watering.flow_L_min two-flows",
    ],
    [
      "deep pots",
      (s) => {
        s.beds[2]!.rootDepth_m = 1.5;
      },
      "beds[2].rootDepth_m roots-below-pot",
    ],
    [
      "canopies beyond the bed",
      (s) => {
        s.beds[6]!.plantings[0]!.count = { plants: 12, canopy_m: 5 };
      },
      "beds[6].area_m2 canopies-beyond-bed",
    ],
    [
      "a roof of a barn",
      (s) => {
        s.roofs[0]!.area_m2 = 9000;
      },
      "roofs[0].area_m2 unusually-large",
    ],
    [
      "a drip for a tap",
      (s) => {
        s.taps![1]!.flow_L_min = 0.4;
      },
      "taps[1].flow_L_min unusually-small",
    ],
  ])("%s is asked about", (_, change, wanted) => {
    expect(asked(change)).toContain(wanted);
  });

  test("0 minutes, a tank of 0 L and a blank ask nothing", () => {
    const questions = asked((survey) => {
      survey.beds[0]!.watering.habit!.minutes = 0;
      survey.beds[1]!.leafCover = undefined;
      survey.tanks[0]!.capacity_L = 0;
      survey.tanks[0]!.level_L = 0;
      survey.tanks[0]!.unusable_L = 0;
    });
    expect(questions).toEqual([]);
  });

  test("says what was found and what is usual, as a question", () => {
    const [question] = questionsAbout(
      school((s) => {
        s.beds[8]!.area_m2 = 4000;
      }),
    );
    const sentence = questionSentence(question!);
    expect(sentence).toContain("4,000 m²");
    expect(sentence).toContain("1,000 m²");
    expect(sentence).toContain("?");
    for (const code of questionCodes) {
      const said = questionSentence({ at: "beds[0].area_m2", code, found: 3, low: 1, high: 2 });
      expect(said, code).toContain("?");
      expect(said, code).not.toMatch(/must|undefined|invalid/);
    }
  });

  test("every field with a usual range is a quantity", () => {
    for (const field of usualFields) expect(quantityOf(field.split(".").at(-1)!), field).toBeDefined();
  });
});

describe("how complete a survey is", () => {
  test("filled and missing make what is asked", () => {
    const { asked, filled, missing } = completeness(school());
    expect(filled + missing.length).toBe(asked);
    expect(missing.map(({ at }) => at)).toContain("beds[5].watering.habit");
  });

  test("a reading more is one missing less", () => {
    const before = completeness(school());
    const after = completeness(
      school((survey) => {
        survey.beds[5]!.watering.habit = { minutes: 10, days: ["mon"], months: [7] };
      }),
    );
    expect(after.filled).toBe(before.filled + 1);
  });

  test("each thing missing has its words", () => {
    const bare = school((survey) => {
      for (const bed of survey.beds)
        Object.assign(bed, {
          leafCover: undefined,
          mulch: undefined,
          soil: undefined,
          obstructions: undefined,
          watering: { method: "spray", supply: "mains-only" },
        });
      survey.site.absences = undefined;
      survey.site.elevation_m = undefined;
      survey.meters = undefined;
    });
    const codes = new Set(completeness(bare).missing.map(({ code }) => code));
    for (const code of codes) expect(missingWords[code], code).toBeDefined();
    expect(codes.size).toBeGreaterThan(9);
  });
});
