import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readSurvey } from "../../src/survey/read.ts";
import { edited, faultsOf, wholeText } from "./whole-survey.ts";

const scenarios = new URL("../scenarios/", import.meta.url);
const demo = new URL("../../demo/", import.meta.url);

const files = [scenarios, demo].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".survey.json"))
    .map((name) => ({ name, url: new URL(name, folder) })),
);

test("there are four scenarios and a demo to read", () => {
  expect(files.length).toBeGreaterThanOrEqual(5);
});

test.each(files)("$name is read, and comes back unchanged", ({ url }) => {
  const text = readFileSync(url, "utf8");
  expect(readSurvey(text)).toEqual({ survey: JSON.parse(text) });
});

test("a survey with every part of the document is read, from text or value, with a byte-order mark too", () => {
  const survey: unknown = JSON.parse(wholeText);
  expect(readSurvey(wholeText)).toEqual({ survey });
  expect(readSurvey(survey)).toEqual({ survey });
  expect(readSurvey(`\uFEFF${wholeText}`)).toEqual({ survey });
});

test("a survey needs no more than a site and three lists", () => {
  const least = {
    format: "grounds-survey",
    version: 1,
    site: { name: "حديقة", latitude: 0, longitude: 0 },
    beds: [],
    roofs: [],
    tanks: [],
  };
  expect(readSurvey(least)).toEqual({ survey: least });
});

test("thirds typed to six figures add to 1", () => {
  const plantings = ["shrubs", "trees", "hedge"].map((kind) => ({ kind, thirst: "low", share: 0.333333 }));
  expect(faultsOf(edited({ "beds[2].plantings": plantings }))).toEqual([]);
});

test("an obstruction may be all round, or pass north", () => {
  const sector = (fromAzimuth_deg: number, toAzimuth_deg: number) => [
    { fromAzimuth_deg, toAzimuth_deg, elevation_deg: 5 },
  ];
  expect(faultsOf(edited({ "beds[1].obstructions": sector(0, 360) }))).toEqual([]);
  expect(faultsOf(edited({ "beds[1].obstructions": sector(350, 10) }))).toEqual([]);
});
