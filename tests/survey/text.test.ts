import { expect, test } from "vitest";
import { faultsOf, sentencesOf, stockWords, wholeText } from "./whole-survey.ts";

const texts: [what: string, text: string, said: RegExp][] = [
  ["an empty file", "", /^survey: The file is empty/],
  ["nothing but spaces", " \n\t ", /^survey: The file is empty/],
  [
    "a file cut short",
    wholeText.slice(0, 4_000),
    /^survey: The file ends in the middle, at line \d+, column \d+/,
  ],
  ["a file cut within a word", '{"format": "grou', /ends in the middle, at line 1, column 17:/],
  ["a file cut within a number", '{\n "a": [1, -', /ends in the middle, at line 2, column 12:/],
  ["a comma too many", '{\n "a": 1,\n}', /line 3, column 1 stands "}"/],
  ["a comma too few", '{\n "a": 1\n "b": 2}', /line 3, column 2 stands """/],
  ["NaN as JSON", '{"area_m2": NaN}', /line 1, column 13 stands "N"/],
  ["a number with a comma", '{"area_m2": 3,5}', /line 1, column 15 stands "5"/],
  ["a number that opens with a point", '{"a": .5}', /line 1, column 7 stands "\."/],
  ["a string over two lines", '{"a": "b\nc"}', /line 1, column 9 stands "\\u000a"/],
  ["single quotes", "{'a': 1}", /line 1, column 2 stands "'"/],
  ["a wrong escape", '{"a": "\\x"}', /line 1, column 8 stands/],
  ["a wrong escape by number", '{"a": "\\u12g4"}', /line 1, column 8 stands/],
  ["something after the end", "{} {}", /line 1, column 4 stands "{"/],
  ["a closing bracket of another kind", '{"a": [1}', /line 1, column 9 stands "}"/],
  ["binary", "PK\u0003\u0004\u0000\u0000\ud800", /line 1, column 1 stands "P"/],
  ["a web page", "<!doctype html>", /line 1, column 1 stands "<"/],
  ["a list", "[]", /must be a survey: a group of fields in curly brackets\. A list stands there/],
  ["a word", '"survey"', /must be a survey/],
  ["null", "null", /must be a survey.*It is null/],
  [
    "another document",
    '{"format": "grounds-report", "version": 1}',
    /^format: The format must be "grounds-survey"\. You entered the text "grounds-report"/,
  ],
  ["no format", "{}", /^format: The format must be "grounds-survey"\. It is not there/],
  ["no version", '{"format": "grounds-survey"}', /^version: The version must be the number 1/],
  [
    "a version in quotes",
    '{"format": "grounds-survey", "version": "1"}',
    /^version: .*without quotation marks/,
  ],
  ["an older version", '{"format": "grounds-survey", "version": 0}', /^version: .*first version is 1/],
  ["a version below all", '{"format": "grounds-survey", "version": -1e9}', /^version: .*first version is 1/],
  [
    "a newer version",
    '{"format": "grounds-survey", "version": 2}',
    /^version: .*version 2.*Update the program/,
  ],
  ["nesting 41 deep", `${"[".repeat(41)}${"]".repeat(41)}`, /^survey: .*nest deeper than 40/],
  ["nesting a million deep", "[".repeat(1_000_000), /^survey: .*nest deeper than 40/],
  ["brackets by the million in a list", `[${"{},".repeat(1_000_001)}{}]`, /must be a survey/],
  [
    "a string of 19 million letters that never ends",
    `{"a": "${"x".repeat(19_000_000)}`,
    /ends in the middle/,
  ],
  [
    "21 million characters",
    " ".repeat(21_000_000),
    /^survey: .*at most 20,000,000 characters long\. This one has 21,000,000/,
  ],
];

test.each(texts)("%s is refused in one line", (_, text, said) => {
  const sentences = sentencesOf(text);
  expect(sentences).toHaveLength(1);
  expect(sentences[0]).toMatch(said);
  expect(sentences[0]).not.toMatch(stockWords);
  expect(sentences[0]).not.toContain("\n");
});

test("a value that nests without end, or is too large, is refused", () => {
  const round: Record<string, unknown> = { format: "grounds-survey", version: 1 };
  round.self = round;
  expect(faultsOf(round)).toEqual([{ path: "survey", code: "too-deep", facts: { most: 40 } }]);
  const large = { format: "grounds-survey", version: 1, readings: Array(1_000_001).fill(1) };
  expect(faultsOf(large)).toEqual([{ path: "survey", code: "too-many-values", facts: { most: 1_000_000 } }]);
});

test("wherever a survey is cut short, it says at the last line that it is", () => {
  for (let end = 1; end < wholeText.trimEnd().length; end += 97) {
    const text = wholeText.slice(0, end);
    const [fault] = faultsOf(text);
    expect(fault?.code, text.slice(-20)).toBe("json-cut");
    expect(fault?.facts.line).toBeGreaterThanOrEqual(text.trimEnd().split("\n").length);
  }
});

test("a field that pretends to be the prototype is a field nobody knows", () => {
  const text = wholeText.replace('"site": {', '"__proto__": {"polluted": 1}, "site": {"__proto__": 1,');
  expect(faultsOf(text).map(({ path, code }) => [path, code])).toEqual([
    ["__proto__", "unknown-field"],
    ["site.__proto__", "unknown-field"],
  ]);
});
