import { expect, test } from "vitest";
import { carried } from "../../../src/survey/edit/carried.ts";

const bed = (id: string, more: object = {}) => ({ id, name: id, area_m2: 40, ...more });
const before = { site: { name: "Marrow Lane" }, beds: [bed("rose"), bed("oval")] };

test("what changed goes into the draft, and what was typed there with a fault stays", () => {
  const draft = { ...before, beds: [bed("rose", { area_m2: -4 }), bed("oval")] };
  const after = { ...before, beds: [bed("rose", { leafCover: 0.6 }), bed("oval", { area_m2: 64 })] };
  expect(carried(draft, before, after)).toEqual({
    ...before,
    beds: [bed("rose", { area_m2: -4, leafCover: 0.6 }), bed("oval", { area_m2: 64 })],
  });
});

test("entries go by their ids: added, taken out, and elsewhere in the draft", () => {
  const draft = { ...before, beds: [bed("new", { area_m2: "" }), bed("oval"), bed("rose")] };
  const after = { ...before, beds: [bed("oval", { area_m2: 64 }), bed("bank")] };
  expect(carried(draft, before, after).beds).toEqual([
    bed("new", { area_m2: "" }),
    bed("oval", { area_m2: 64 }),
    bed("bank"),
  ]);
});

test("a list that came with the change is taken whole, a field that went is gone", () => {
  const found = [{ id: "f1", at: "beds[0].area_m2" }];
  const marked = { ...before, note: "x" };
  const after = { ...before, found };
  expect(carried({ ...marked, site: {} }, marked, after)).toEqual({ site: {}, beds: before.beds, found });
});
