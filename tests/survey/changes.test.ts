import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changesBetween, namesOf } from "../../src/survey/changes.ts";
import { readSurvey } from "../../src/survey/read.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { changesText } from "../../src/words/en/changes.ts";

const school = readFileSync(new URL("../../demo/school.survey.json", import.meta.url), "utf8");

function fresh(): Survey {
  const read = readSurvey(school);
  if ("faults" in read) throw new Error(JSON.stringify(read.faults));
  return read.survey;
}

/** What an edit of the demo's school is told as. */
function told(edit: (survey: Survey) => void): string {
  const after = fresh();
  edit(after);
  return changesText(changesBetween(fresh(), after), namesOf(after));
}

const bed = (survey: Survey, id: string) => survey.beds.find((one) => one.id === id)!;

describe("a change is told as", () => {
  const edits: [string, (survey: Survey) => void][] = [
    [
      "Oval: area 2,400 m² → 2,444 m²",
      (s) => {
        bed(s, "oval").area_m2 = 2444;
      },
    ],
    [
      "Kitchen garden: name Kitchen garden → Kitchen plot",
      (s) => {
        bed(s, "kitchen").name = "Kitchen plot";
      },
    ],
    [
      "Site: height above sea level 60 m → 61 m",
      (s) => {
        s.site.elevation_m = 61;
      },
    ],
    [
      "Site: coastal yes → no",
      (s) => {
        s.site.coastal = false;
      },
    ],
    ["Oval: priority taken out (was 2)", (s) => void delete bed(s, "oval").priority],
    [
      "Oval: share of the rain set to 0.5",
      (s) => {
        bed(s, "oval").rainShare = 0.5;
      },
    ],
    [
      "Oval: mulch set to mulch material bark, mulch cover 0.5, mulch depth 75 mm",
      (s) => {
        bed(s, "oval").mulch = { material: "bark", cover: 0.5, depth_mm: 75 };
      },
    ],
    [
      "Kitchen garden: watering days Monday, Wednesday, Friday, Sunday → Monday, Friday",
      (s) => {
        bed(s, "kitchen").watering.habit!.days = ["mon", "fri"];
      },
    ],
    [
      "Kitchen garden, planting 1: share of the planting 0.8 → 0.7\nKitchen garden, planting 2: share of the planting 0.2 → 0.3",
      (s) => {
        const [first, second] = bed(s, "kitchen").plantings;
        first!.share = 0.7;
        second!.share = 0.3;
      },
    ],
    [
      "Bed added: Rose walk",
      (s) => void s.beds.push({ ...bed(s, "oval"), id: "rose-walk", name: "Rose walk", area_m2: 44 }),
    ],
    ["Bed taken out: Oval", (s) => void s.beds.splice(s.beds.indexOf(bed(s, "oval")), 1)],
    ["Tanks in another order", (s) => void s.tanks.reverse()],
    ["Nothing changed", () => {}],
  ];
  test.each(edits)("%s", (words, edit) => {
    expect(told(edit)).toBe(words);
  });

  test("a bed's tank by the tank's name", () => {
    const words = told((s) => {
      bed(s, "kitchen").watering.tank = "yard-tank";
    });
    expect(words).toBe("Kitchen garden: bed's tank Tank behind the hall → Yard tank");
  });

  test("a choice in the words that it was chosen by", () => {
    const words = told((s) => {
      bed(s, "kitchen").watering.supply = "tank-only";
      bed(s, "oval").plantings[0]!.thirst = "low";
    });
    expect(words).toMatch(
      /^Oval, planting 1: .* watered regularly, once grown → watered now and then, once grown$/m,
    );
    expect(words).not.toMatch(/tank-only|tank-then-mains/);
  });

  test("a bed moved in the list and changed: the change, and that the order is another", () => {
    const words = told((s) => {
      s.beds.unshift(s.beds.splice(2, 1)[0]!);
      s.beds[0]!.area_m2 += 1;
    });
    expect(words.split("\n")).toHaveLength(2);
    expect(words).toMatch(/area .* m² → .* m²\nBeds in another order/);
  });

  test("readings taken and struck out, by their count", () => {
    const words = told((s) => {
      const meter = s.meters![0]!.id;
      s.readings = [
        ...s.readings!.slice(1),
        { meter, at: "2026-01-01", value: 1 },
        { meter, at: "2026-01-02", value: 2 },
      ];
    });
    expect(words).toBe("Readings: 2 added, 1 taken out");
  });

  test("forty lines and a count, where more has changed", () => {
    const lines = told((s) => {
      for (let n = 0; n < 100; n++) s.beds.push({ ...s.beds[0]!, id: `more-${n}`, name: `More ${n}` });
    }).split("\n");
    expect(lines).toHaveLength(41);
    expect(lines.at(-1)).toBe("and 60 more changes");
  });
});

test("two surveys have changes between them exactly where they differ, each with a sentence", () => {
  const edit = fc.oneof(
    fc.record({ at: fc.nat(6), area_m2: fc.integer({ min: 1, max: 500 }) }),
    fc.record({ at: fc.nat(6), name: fc.constantFrom("A", "B", "C") }),
    fc.record({ at: fc.nat(6), gone: fc.constant(true) }),
  );
  fc.assert(
    fc.property(fc.array(edit, { maxLength: 4 }), (edits) => {
      const before = fresh();
      const after = fresh();
      for (const { at, ...fields } of edits) {
        if ("gone" in fields) after.beds.splice(at, 1);
        else if (after.beds[at]) Object.assign(after.beds[at], fields);
      }
      const changes = changesBetween(before, after);
      expect(changes.length > 0).toBe(JSON.stringify(before) !== JSON.stringify(after));
      for (const line of changesText(changes, namesOf(after)).split("\n")) {
        expect(line).toMatch(/^\S.*\S$/);
        expect(line).not.toMatch(/undefined|\[object|NaN/);
      }
    }),
    { numRuns: 200 },
  );
});
