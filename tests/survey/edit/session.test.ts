import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { withNew } from "../../../src/survey/edit/add.ts";
import {
  type Address,
  addressOf,
  type Draft,
  keyOf,
  pathOf,
  valueIn,
  withValue,
} from "../../../src/survey/edit/document.ts";
import { healed } from "../../../src/survey/edit/heal.ts";
import { references } from "../../../src/survey/edit/references.ts";
import { withoutEntry } from "../../../src/survey/edit/remove.ts";
import { begin, edit, redo, type Session, undo } from "../../../src/survey/edit/session.ts";
import { fieldPatterns, sortAt } from "../../../src/survey/edit/sorts.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { wholeText } from "../whole-survey.ts";

const read = readSurvey(wholeText);
if ("faults" in read) throw new Error("The whole survey has faults.");
const whole: Survey = read.survey;

const area: Address = ["beds", { id: "oval" }, "area_m2"];
const set = (session: Session, at: Address, value: unknown, text = String(value)) =>
  edit(session, { change: (d) => withValue(d, at, value), key: keyOf(at), typed: { text, value } });

describe("what counts while something is wrong", () => {
  test("is the last right value, and what was typed is kept", () => {
    const session = set(begin(whole), area, "about a tennis court");
    expect(valueIn(session.draft, area)).toBe("about a tennis court");
    expect(valueIn(session.right, area)).toBe(9500);
    expect(session.right).toBe(whole);
    expect(session.faults.map(({ path }) => path)).toEqual(["beds[0].area_m2"]);
  });

  test("takes in what is right elsewhere", () => {
    const one = set(begin(whole), area, -4);
    const two = set(one, ["roofs", { id: "hall" }, "area_m2"], 333);
    expect(valueIn(two.right, ["roofs", { id: "hall" }, "area_m2"])).toBe(333);
    expect(valueIn(two.right, area)).toBe(9500);
  });

  test("holds fields that go together back together, until they fit", () => {
    const share = (at: number): Address => ["beds", { id: "kitchen" }, "plantings", at, "share"];
    const one = set(begin(whole), share(0), 0.5);
    expect(valueIn(one.right, share(0))).toBe(0.75);
    expect(one.faults.map(({ code }) => code)).toEqual(["shares-sum"]);
    const two = set(one, share(1), 0.5);
    expect(two.faults).toEqual([]);
    expect(valueIn(two.right, share(0))).toBe(0.5);
  });

  test("leaves out an entry that is not finished, wherever it is named", () => {
    const { document, id } = withNew(whole, "beds", "Fern corner");
    const beds: Address = ["measures", { id: "more-mulch" }, "mulch", "beds"];
    const one = edit(begin(whole), { change: () => document });
    const two = set(one, beds, ["bank", id]);
    expect(two.right.beds).toHaveLength(3);
    expect(valueIn(two.right, beds)).toEqual(["bank"]);
    const three = set(two, ["beds", { id }, "area_m2"], 8);
    expect(three.right.beds).toHaveLength(4);
    expect(valueIn(three.right, beds)).toEqual(["bank", id]);
  });

  test("keeps readings that are right beside a new one that is not finished", () => {
    const more = (session: Session, row: unknown) =>
      edit(session, { change: (d) => ({ ...d, readings: [...(d.readings as unknown[]), row] }) });
    const one = more(begin(whole), { meter: "main", at: "2026-02-05" });
    const two = more(one, { meter: "main", at: "2026-03-05", value: 10500 });
    expect(two.right.readings).toHaveLength(5);
    expect(two.right.readings?.at(-1)).toMatchObject({ value: 10500 });
  });

  test("follows entries taken out while another is at fault", () => {
    const one = set(begin(whole), ["beds", { id: "kitchen" }, "area_m2"], "?");
    const two = edit(one, { change: (d) => withoutEntry(d, "beds", "oval").document });
    expect(two.right.beds.map(({ id }) => id)).toEqual(["kitchen", "bank"]);
    expect(valueIn(two.right, ["beds", { id: "kitchen" }, "area_m2"])).toBe(36);
  });

  test("is always a survey in order", () => {
    const patterns = fieldPatterns().filter((pattern) => pattern.includes("."));
    const anything = fc.oneof(
      fc.constantFrom(undefined, "", "x", -1, 0, 0.5, 1, 1e9, null, true),
      fc.constantFrom([], [1], ["mon"], {}, "oval", "shed", "none", "2026-01-01"),
    );
    const change = fc.record({ pattern: fc.constantFrom(...patterns), at: fc.nat(2), value: anything });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 5 }), (changes) => {
        let draft: Draft = whole;
        for (const { pattern, at, value } of changes) {
          const path = pattern.split(/\.|(?=\[)/).map((step) => (step === "[]" ? at : step));
          draft = withValue(draft, addressOf(draft, path), value);
        }
        const survey = healed(draft, whole);
        expect(readSurvey(survey)).toHaveProperty("survey");
        if ("survey" in readSurvey(draft)) expect(survey).toEqual(draft);
      }),
      { numRuns: 150 },
    );
  });
});

describe("the way back", () => {
  test("undo and redo bring texts and values", () => {
    const one = set(begin(whole), area, 20, "20 m2");
    const two = set(one, ["site", "name"], "Elsewhere");
    const back = undo(undo(two));
    expect(back.right).toEqual(whole);
    expect(back.typed.size).toBe(0);
    const again = redo(back);
    expect(valueIn(again.right, area)).toBe(20);
    expect(again.typed.get("beds/oval/area_m2")?.text).toBe("20 m2");
    expect(redo(again).right).toEqual(two.right);
    expect(undo(begin(whole)).right).toBe(whole);
  });

  test("going on in one field is one step", () => {
    const session = set(set(set(begin(whole), area, 20), area, 21), area, 22);
    expect(undo(session).right).toEqual(whole);
  });

  test("an edit that changes nothing is no step", () => {
    expect(set(begin(whole), area, 9500).past).toEqual([]);
  });
});

test("addresses follow entries by id and paths by place", () => {
  const path = ["beds", 1, "plantings", 0, "share"];
  const address = addressOf(whole, path);
  expect(keyOf(address)).toBe("beds/kitchen/plantings/0/share");
  expect(pathOf(whole, address)).toEqual(path);
  const without = withoutEntry(whole, "beds", "oval").document;
  expect(pathOf(without, address)).toEqual(["beds", 0, "plantings", 0, "share"]);
  expect(pathOf(withoutEntry(without, "beds", "kitchen").document, address)).toBeNull();
});

test("a value put in leaves what is not on its way as it was", () => {
  const next = withValue(whole, area, 3);
  expect(next.beds).not.toBe(whole.beds);
  expect((next.beds as unknown[])[1]).toBe(whole.beds[1]);
  expect(next.tanks).toBe(whole.tanks);
  expect(withValue(next, ["beds", { id: "bank" }, "mulch", "cover"], 0.5)).toMatchObject({
    beds: [{}, {}, { mulch: { cover: 0.5 } }],
  });
});

test("every field that holds an id of another entry is known as a reference", () => {
  const own = /^(?:\w+\[\]|measures\[\]\.(?:addTank|addDraw))\.id$/;
  const unknown = fieldPatterns().filter((pattern) => {
    const path = pattern.split(/\.|(?=\[)/).map((step) => (step === "[]" ? 0 : step));
    const sort = sortAt(path);
    return sort?.sort === "text" && sort.form === "id" && !own.test(pattern);
  });
  expect(unknown).toEqual([]);
  for (const { at } of references) expect(fieldPatterns()).toContain(at.replace(/\[\]$/, ""));
});

test("every field has a sort, but for the two that say what the document is", () => {
  const without = fieldPatterns().filter(
    (pattern) => sortAt(pattern.split(/\.|(?=\[)/).map((step) => (step === "[]" ? 0 : step))) === null,
  );
  expect(without).toEqual(["format", "version"]);
});
