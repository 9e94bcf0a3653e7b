import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, test } from "vitest";
import { roundsSchema } from "../../src/report/rounds-schema.ts";
import { stockWords } from "../survey/whole-survey.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "grounds-rounds-"));
afterAll(() => rmSync(folder, { recursive: true }));

const demo = ["demo/school.survey.json", "--weather", "demo/seattle.csv"];
const inFolder = (name: string) => join(folder, name);

function rounds(...args: string[]) {
  return spawnSync(join(root, "node_modules/.bin/tsx"), ["src/cli/rounds.ts", ...args], {
    cwd: root,
    encoding: "utf8",
  });
}

test("the month table is printed for people, and as a document on standard output alone", () => {
  const spoken = rounds(...demo, "--month", "7");
  expect(spoken.status).toBe(0);
  expect(spoken.stdout).toContain("July");
  expect(spoken.stdout).not.toContain("August\n");
  const json = rounds(...demo, "--json");
  expect(json.stderr).toBe("");
  expect(roundsSchema.parse(JSON.parse(json.stdout)).months).toHaveLength(12);
});

test("a week's round goes from five entries to a printed sheet, a calendar and a table", () => {
  writeFileSync(
    inFolder("log.csv"),
    "date,kind,id,minutes,litres,rain_mm,days,level_L,group\n2026-07-04,watering,oval,200,,,,,\n2026-07-05,rain,,,,6,4,,\n",
  );
  const files = ["round.html", "round.ics", "round.csv"].map(inFolder);
  const outcome = rounds(
    ...demo,
    "--week",
    "2026-07-06",
    "--log",
    inFolder("log.csv"),
    "--level_L",
    "yard-tank=900",
    "--heat",
    "hotter",
    "--last-round",
    "some",
    "--html",
    files[0]!,
    "--ics",
    files[1]!,
    "--csv",
    files[2]!,
  );
  expect(outcome.status).toBe(0);
  expect(outcome.stdout).toContain("Monday 6 July");
  const [html, ics, csv] = files.map((file) => readFileSync(file, "utf8"));
  for (const words of [
    "Rain in the gauge",
    "Dip of Yard tank",
    'class="tick"',
    "dig a finger deep",
    "from survey",
    "Assumed",
    "legionella",
  ])
    expect(html).toContain(words);
  expect(html).not.toMatch(/<script|https?:/);
  expect(ics).toMatch(/^BEGIN:VCALENDAR\r\n/);
  expect(csv!.split("\n")).toHaveLength(12 * 8 + 2);
});

test("inches and gallons are said and printed where they are asked for, and the document stays SI", () => {
  const sheet = inFolder("us.html");
  const calendar = inFolder("us.ics");
  const week = ["--week", "2026-07-20", "--level_L", "yard-tank=900", "--hot-spell", "0.7"];
  const us = rounds(
    ...demo,
    ...week,
    "--units",
    "us",
    "--html",
    sheet,
    "--ics",
    calendar,
    "--paper",
    "letter",
  );
  expect(us.status).toBe(0);
  const html = readFileSync(sheet, "utf8");
  const ics = readFileSync(calendar, "utf8").replaceAll(/\r\n /g, "");
  for (const text of [us.stdout, html]) {
    expect(text).toMatch(/\d gal/);
    expect(text).toMatch(/\d in are missing/);
    expect(text.replaceAll(/ (mm|L)\/?(min)? \(/g, "")).not.toMatch(/\d (mm|L)\b(?! \()/);
  }
  expect(ics).toMatch(/DESCRIPTION:[\d\\,]+ gal/);
  const document = roundsSchema.parse(JSON.parse(rounds(...demo, ...week, "--units", "us", "--json").stdout));
  expect(document.week!.hotSpell).toBe(0.7);
  expect(document.week!.tanks.find(({ id }) => id === "yard-tank")!.level_L).toBe(900);
});

test("on paper what was assumed has names, and minutes their working", () => {
  const sheet = inFolder("notes.html");
  rounds(...demo, "--month", "7", "--html", sheet);
  const html = readFileSync(sheet, "utf8");
  const notes = html.slice(html.indexOf("How it was worked out"));
  expect(notes).toMatch(/Oval: .*mm ÷ .* × .*m² ÷ .*L\/min = .*min, so \d+/);
  expect(notes).toMatch(/<b>Orchard\.<\/b> .*Efficiency: 90%/);
  const cards = html.slice(html.indexOf('class="card"'), html.indexOf("How it was worked out"));
  for (const month of ["June", "July", "August"]) expect(cards).toContain(month);
  expect(notes).not.toMatch(/beds\[|_m\b|_mm\b/);
});

describe("what is refused has exit status 2, a line a fault, and nothing written", () => {
  const never = inFolder("never.html");
  test.each([
    [["nowhere.json", "--weather", "demo/seattle.csv"], [/^nowhere\.json: /]],
    [[...demo, "--month", "13"], [/^--month: /]],
    [[...demo, "--log", "log.csv"], [/^--log: /]],
    [
      [...demo, "--week", "2026-02-30", "--level_L", "pond", "--last-round", "perhaps"],
      [/^--week: /, /^--last-round: /, /^--level_L: /],
    ],
    [
      [...demo, "--week", "2026-07-06", "--level_L", "pond=3", "--level_L", "yard-tank=99999"],
      [/pond/, /5000 L/],
    ],
    [[...demo, "--colour"], [/^--colour: /]],
    [
      [...demo, "--units", "feet", "--starts", "0"],
      [/^--units: /, /^--starts: /],
    ],
    [[...demo, "--week", "2026-07-06", "--hot-spell", "2"], [/^--hot-spell: /]],
    [[...demo, "--hot-spell", "0.5"], [/^--hot-spell: /]],
    [[], [/one survey/]],
  ])("%j", (args, lines) => {
    const { status, stderr, stdout } = rounds(...args, "--html", never);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    const told = stderr.trimEnd().split("\n");
    expect(told).toHaveLength(lines.length);
    lines.forEach((line, k) => {
      expect(told[k]).toMatch(line);
    });
    expect(stderr).not.toMatch(stockWords);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(existsSync(never)).toBe(false);
  });

  test("faults of the log are named by row and column", () => {
    const log = inFolder("broken.csv");
    writeFileSync(log, "date,kind,id,minutes\n2026-07-04,watering,oval,-5\n2026-07-05,dip,pond,\n");
    const { status, stderr } = rounds(...demo, "--week", "2026-07-06", "--log", log);
    expect(status).toBe(2);
    expect(stderr).toMatch(/^row 2, minutes: /m);
    expect(stderr).toMatch(/^row 3, level_L: /m);
  });
});

test("a survey without a record is worked out on years of its place", () => {
  const { status, stdout } = rounds("demo/southern.survey.json", "--month", "1");
  expect(status).toBe(0);
  expect(stdout).toContain("January");
});
