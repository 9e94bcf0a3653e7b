import { readFileSync, truncateSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { reportSchema } from "../../src/report/schema.ts";
import { command, emptyFolder, filesIn } from "../helpers/command.ts";
import { report, workFiles } from "../helpers/worked.ts";

const survey = "demo/school.survey.json";
const weather = "demo/seattle.csv";

describe("estimate", () => {
  test("prints an answer that a keeper understands", () => {
    const { status, stdout, stderr } = command("estimate", [survey, "--weather", weather]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/mains water/);
    expect(stdout).toMatch(/In a dry year/);
    expect(stdout).toMatch(/Litres a week/);
    for (const bed of ["Oval", "Kitchen garden", "Street hedge"]) expect(stdout).toContain(bed);
    expect(stdout).not.toContain("\u001b");
    expect(stdout.split("\n").every((line) => line.length <= 80)).toBe(true);
  });

  test("--json prints the report and nothing else, the same as worked out in place", () => {
    const { status, stdout } = command("estimate", [survey, "--weather", weather, "--json"]);
    expect(status).toBe(0);
    const found = JSON.parse(stdout);
    expect(reportSchema.safeParse(found).error).toBeUndefined();
    expect(found).toEqual(JSON.parse(JSON.stringify(report(workFiles(survey, weather)))));
  });

  test("--daily writes a row a day, with the contract's columns, and the answer still comes", () => {
    const out = join(emptyFolder(), "daily.csv");
    const { status, stdout } = command("estimate", [survey, "--weather", weather, "--json", "--daily", out]);
    expect(status).toBe(0);
    JSON.parse(stdout);
    const [header, ...rows] = readFileSync(out, "utf8").trim().split("\n");
    expect(header!.startsWith("date,rain_mm,et0_mm,")).toBe(true);
    expect(header!.endsWith(".level_L,mains_L")).toBe(true);
    expect(rows).toHaveLength(1461);
    expect(rows.every((row) => row.split(",").length === header!.split(",").length)).toBe(true);
  });

  test("--units us speaks gallons", () => {
    expect(command("estimate", [survey, "--weather", weather, "--units", "us"]).stdout).toMatch(/gallons/);
  });

  test("without a record it generates years from the place's normals and says so; the same seed says the same", () => {
    const run = (seed: string) =>
      command("estimate", ["demo/southern.survey.json", "--years", "3", "--seed", seed, "--json"]).stdout;
    const first = run("7");
    expect(JSON.parse(first).weather.generated).toEqual({ years: 3, seed: 7 });
    expect(run("7")).toBe(first);
    expect(run("8")).not.toBe(first);
    expect(JSON.parse(first).assumed.map((row: { where: string }) => row.where)).toContain("site.normals");
  });

  test("--help says how", () => {
    const { status, stdout } = command("estimate", ["--help"]);
    expect(status).toBe(0);
    expect(stdout).toContain("--weather");
  });
});

describe("input that is refused", () => {
  const folder = emptyFolder();
  const file = (name: string, content: string | Uint8Array) => {
    const path = join(folder, name);
    writeFileSync(path, content);
    return path;
  };
  const whole = JSON.parse(readFileSync(new URL(`../../${survey}`, import.meta.url), "utf8"));
  const changed = (name: string, change: (survey: typeof whole) => void) => {
    const copy = structuredClone(whole);
    change(copy);
    return file(name, JSON.stringify(copy));
  };
  const huge = file("huge.json", "{");
  truncateSync(huge, 200 * 2 ** 20);

  const cases: [string, string[], RegExp][] = [
    [
      "a missing survey",
      [join(folder, "none.json"), "--weather", weather],
      /none\.json: There is no such file/,
    ],
    ["a folder", [folder, "--weather", weather], /folder/],
    ["an empty file", [file("empty.json", ""), "--weather", weather], /empty/],
    ["200 MB", [huge, "--weather", weather], /at most 20 MB/],
    ["binary", [file("bytes.json", Uint8Array.of(0, 255, 3)), "--weather", weather], /not UTF-8 text/],
    [
      "half a survey",
      [file("half.json", JSON.stringify(whole).slice(0, 900)), "--weather", weather],
      /survey: /,
    ],
    [
      "−1 m²",
      [
        changed("area.json", (s) => {
          s.beds[1].area_m2 = -1;
        }),
        "--weather",
        weather,
      ],
      /^beds\[1\]\.area_m2: /,
    ],
    [
      "a newer version",
      [
        changed("newer.json", (s) => {
          s.version = 2;
        }),
        "--weather",
        weather,
      ],
      /version/,
    ],
    [
      "an unknown tank",
      [
        changed("tank.json", (s) => {
          s.roofs[0].tank = "nowhere";
        }),
        "--weather",
        weather,
      ],
      /^roofs\[0\]\.tank: .*nowhere/,
    ],
    ["a missing record", [survey, "--weather", join(folder, "none.csv")], /no such file/],
    ["a record that is no record", [survey, "--weather", survey], /./],
    [
      "duplicate dates",
      [survey, "--weather", file("twice.csv", "date,rain_mm,et0_mm\n2020-01-01,0,1\n2020-01-01,0,1\n")],
      /^row 3/,
    ],
    [
      "tmin above tmax",
      [survey, "--weather", file("crossed.csv", "date,rain_mm,tmin_c,tmax_c\n2020-01-01,0,9,4\n")],
      /^row 2/,
    ],
    [
      "a gap that nothing fills",
      [
        survey,
        "--weather",
        file("gap.csv", "date,rain_mm,tmin_c,tmax_c\n2020-01-01,,1,4\n2020-01-02,0,1,4\n"),
      ],
      /^weather, rain_mm: /,
    ],
    [
      "shade without sky",
      [survey, "--weather", file("sky.csv", "date,rain_mm,et0_mm\n2020-01-01,0,1\n")],
      /^beds\[\d\]\.obstructions: /,
    ],
    ["no survey", ["--weather", weather], /one survey file/],
    ["an unknown option", [survey, "--weather", weather, "--colour"], /--colour: There is no such option/],
    ["odd units", [survey, "--weather", weather, "--units", "imperial"], /--units: Give metric or us/],
    ["years that are none", [survey, "--years", "0"], /--years: /],
  ];

  test.each(cases)("%s: exit 2, one line a fault, no stack trace, nothing written", (_, args, says) => {
    const out = emptyFolder();
    const { status, stdout, stderr } = command("estimate", [...args, "--daily", join(out, "daily.csv")]);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    const lines = stderr.trim().split("\n");
    expect(lines.some((line) => says.test(line))).toBe(true);
    expect(stderr).not.toMatch(/\bat .*:\d+:\d+|node:|Error/);
    expect(filesIn(out)).toEqual([]);
  });

  test("a table that cannot be written is said", () => {
    const { status, stderr } = command("estimate", [
      survey,
      "--weather",
      weather,
      "--daily",
      join(folder, "no/way.csv"),
    ]);
    expect(status).toBe(2);
    expect(stderr).toMatch(/could not be written/);
  });
});
