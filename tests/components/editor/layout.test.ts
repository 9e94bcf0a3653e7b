import { expect, test } from "vitest";
import { screenAt, screenOf } from "../../../components/editor/layout/address.ts";
import { partList, places } from "../../../components/editor/layout/screens.ts";
import { addressOfText } from "../../../src/survey/edit/document.ts";
import { fieldPatterns } from "../../../src/survey/edit/sorts.ts";
import { bedParts, parts } from "../../../src/words/en/editor-parts.ts";
import { wholeText } from "../../survey/whole-survey.ts";

/** What a document is, not what was found on the grounds. */
const ofTheFile = ["format", "version"];

test("every field of a survey has its place in the editor, and no other", () => {
  const wanted = fieldPatterns().filter((pattern) => !ofTheFile.includes(pattern));
  expect([...places.keys()].sort()).toEqual([...wanted].sort());
});

test("every part and every sheet of a bed has its words", () => {
  for (const part of partList) {
    expect(parts[part.slug], part.slug).toBeDefined();
    if ("list" in part) for (const { slug } of part.sheets) expect(bedParts[slug], slug).toBeDefined();
  }
});

test.each([
  ["site.latitude", "place"],
  ["site.normals.rain_mm[3]", "weather"],
  ["site.absences[1].from", "absences"],
  ["beds[0].area_m2", "beds/oval"],
  ["beds[0].plantings", "beds/oval/plants"],
  ["beds[1].soil", "beds/kitchen/soil"],
  ["beds[1].soil.tew_mm", "beds/kitchen/soil"],
  ["beds[0].watering.habit.minutes", "beds/oval/habit"],
  ["beds[0].dryOn[1]", "beds/oval/days"],
  ["tanks[0].topUp.toShare", "tanks/shed"],
  ["measures[0].mulch.beds[0]", "measures/more-mulch"],
  ["measures[0]", "measures/more-mulch"],
  ["tariff", "price"],
  ["readings[2].kL", "readings"],
])("a fault at %s leads to %s", (path, at) => {
  const survey = JSON.parse(wholeText);
  expect(screenOf(survey, addressOfText(survey, path))).toBe(at);
});

test("an address that is none leads to the contents, or as far as it is one", () => {
  expect(screenAt("nowhere/at/all")).toEqual({ part: null, id: null, sheet: null });
  expect(screenAt("beds/oval/nowhere")).toMatchObject({ id: "oval", sheet: null });
  expect(screenAt("beds/%E0%A4%A/soil")).toMatchObject({ id: "%E0%A4%A" });
});
