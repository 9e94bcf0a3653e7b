import { describe, expect, test } from "vitest";
import { withCopy, withNew } from "../../../src/survey/edit/add.ts";
import { withId } from "../../../src/survey/edit/change-id.ts";
import { type Draft, rowsOf, valueIn, withValue } from "../../../src/survey/edit/document.ts";
import { idFrom, namedLists } from "../../../src/survey/edit/ids.ts";
import { withMoved } from "../../../src/survey/edit/move.ts";
import { withoutEntry } from "../../../src/survey/edit/remove.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import { faultsOf, wholeText } from "../whole-survey.ts";

const whole = () => JSON.parse(wholeText) as Draft;
const ids = (document: Draft, list: string) => rowsOf(document, list).map(({ id }) => id);

/** Everywhere in a document that a text stands, but not in names for people. */
function mentions(document: unknown, id: string): number {
  const named = JSON.stringify(document, (key, value) => (key === "name" || key === "what" ? "" : value));
  return named.split(`"${id}"`).length - 1;
}

describe("ids are made from names", () => {
  test.each([
    ["Rose walk", "rose-walk"],
    ["  Bed no. 7 (north) ", "bed-no-7-north"],
    ["Größe & Grün", "grosse-grun"],
    ["Żółty ogród", "zolty-ogrod"],
    ["Ωmega", "bed-1"],
    ["حديقة المطبخ", "bed-1"],
    ["校园", "bed-1"],
    ["!!!", "bed-1"],
  ])("%s gives %s", (name, id) => {
    expect(idFrom(name, "beds", new Set())).toBe(id);
  });

  test("one that is taken gets a number, and a long name is cut", () => {
    expect(idFrom("Rose walk", "beds", new Set(["rose-walk", "rose-walk-2"]))).toBe("rose-walk-3");
    expect(idFrom("حديقة", "beds", new Set(["bed-1"]))).toBe("bed-2");
    expect(idFrom("very ".repeat(16), "beds", new Set()).length).toBeLessThanOrEqual(40);
  });

  test("a bed never takes the id of a tank, nor a tank one that a measure adds", () => {
    expect(withNew(whole(), "beds", "Shed").id).toBe("shed-2");
    expect(withNew(whole(), "tanks", "New").id).toBe("new-2");
    expect(withNew(whole(), "tanks", "Mains").id).toBe("mains-2");
  });
});

describe("a new entry", () => {
  test("has no size made up: a bed counts once its area is there", () => {
    const { document, id } = withNew(whole(), "beds", "Fern corner");
    expect(faultsOf(document).map(({ path, code }) => [path, code])).toEqual([
      ["beds[3].area_m2", "missing"],
    ]);
    expect(readSurvey(withValue(document, ["beds", { id }, "area_m2"], 12))).toHaveProperty("survey");
  });

  test("of every list lacks numbers and choices at most", () => {
    for (const list of namedLists) {
      const { document } = withNew(whole(), list, "Something new");
      for (const fault of faultsOf(document))
        expect(["missing", "change-none"], fault.path).toContain(fault.code);
    }
  });

  test("starts the list where there is none", () => {
    const { taps: _, ...without } = whole();
    expect(ids(withNew(without, "taps", "Yard tap").document, "taps")).toEqual(["yard-tap"]);
  });

  test("as a copy stands in order, under its own id", () => {
    for (const list of namedLists) {
      const [first] = ids(whole(), list);
      const { document, id } = withCopy(whole(), list, String(first), "A second one");
      expect(id).not.toBe(first);
      const clash = list === "measures" ? ["measures-clash"] : [];
      expect(
        faultsOf(document).map(({ code }) => code),
        list,
      ).toEqual(clash);
    }
  });
});

describe("an entry taken out", () => {
  test.each(namedLists.flatMap((list) => ids(whole(), list).map((id) => [list, String(id)] as const)))(
    "of %s, %s, leaves a survey in order that names it nowhere",
    (list, id) => {
      const { document } = withoutEntry(whole(), list, id);
      expect(faultsOf(document)).toEqual([]);
      expect(ids(document, list)).not.toContain(id);
      expect(list === "draws" || list === "measures" || list === "found" ? 0 : mentions(document, id)).toBe(
        0,
      );
    },
  );

  test("says what else it changed", () => {
    const { document, cleaned } = withoutEntry(whole(), "tanks", "shed");
    const told = cleaned.map(({ sort, list, name }) => `${sort} ${list} ${name}`);
    expect(told).toContain("mains-only beds Kitchen garden");
    expect(told).toContain("field roofs Hall");
    expect(told).toContain("source taps Tap by the shed");
    expect(told).toContain("gone draws Toilets");
    expect(told).toContain("gone measures Shed tank doubled");
    expect(told).toContain("gone readings null");
    expect(valueIn(document, ["meters", { id: "garden" }, "feeds"])).toEqual(["oval", "gate"]);
  });

  test("leaves a bed that only its tank watered unwatered, not on the mains", () => {
    const only = withValue(whole(), ["beds", { id: "kitchen" }, "watering", "supply"], "tank-only");
    const { document, cleaned } = withoutEntry(only, "tanks", "shed");
    expect(valueIn(document, ["beds", { id: "kitchen" }, "watering", "supply"])).toBe("none");
    expect(cleaned).toContainEqual({ sort: "unwatered", list: "beds", name: "Kitchen garden" });
  });

  test("keeps findings about the entries behind it about them", () => {
    const { document } = withoutEntry(whole(), "beds", "oval");
    expect(rowsOf(document, "found").map(({ at }) => at)).toEqual([
      "beds[0].area_m2",
      "beds[1].plantings[0].thirst",
    ]);
    expect(rowsOf(withoutEntry(whole(), "beds", "kitchen").document, "found").map(({ at }) => at)).toEqual([
      "beds[1].plantings[0].thirst",
    ]);
  });

  test("that is not there changes nothing", () => {
    const document = whole();
    expect(withoutEntry(document, "beds", "nowhere").document).toBe(document);
  });
});

test("an entry moved takes its findings along", () => {
  const moved = withMoved(whole(), "beds", 2, 0);
  expect(ids(moved, "beds")).toEqual(["bank", "oval", "kitchen"]);
  expect(rowsOf(moved, "found").map(({ at }) => at)).toEqual([
    "beds[2].area_m2",
    "beds[0].plantings[0].thirst",
  ]);
  expect(faultsOf(moved)).toEqual([]);
  expect(withMoved(moved, "beds", 0, 2)).toEqual(whole());
});

test.each([
  ["beds", "oval"],
  ["tanks", "shed"],
  ["tanks", "new"],
  ["taps", "by-shed"],
  ["meters", "main"],
  ["groups", "g1"],
  ["leaks", "cistern"],
  ["roofs", "hall"],
  ["draws", "toilets"],
] as const)("an id of %s, %s, changes wherever it is named", (list, id) => {
  const document = withId(whole(), list, id, "another-id");
  expect(faultsOf(document)).toEqual([]);
  expect(mentions(document, id)).toBe(0);
  expect(withId(document, list, "another-id", id)).toEqual(whole());
});

test("an id that is taken is not given twice", () => {
  const document = whole();
  expect(withId(document, "beds", "oval", "shed")).toBe(document);
});
