import { spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { seattle, seattleFile, two, twoPlacesFile, written } from "../survey/record/seattle.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "weather-"));
let files = 0;

function file(content: string | Uint8Array): string {
  files += 1;
  const path = join(folder, `raw${files}.csv`);
  writeFileSync(path, content);
  return path;
}

interface Ended {
  status: number | null;
  stdout: string;
  stderr: string;
  /** The record; null where none was written. */
  record: string | null;
}

/** Runs the command as a person does, away from a terminal. */
async function weather(raw: string, ...flags: string[]): Promise<Ended> {
  files += 1;
  const out = join(folder, `record${files}.csv`);
  const args = ["--import", "tsx", "src/cli/weather.ts", raw, "--out", out, ...flags];
  const ended = await command(args);
  return { ...ended, record: existsSync(out) ? readFileSync(out, "utf8") : null };
}

function command(args: readonly string[]): Promise<Omit<Ended, "record">> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
    let stdout = "";
    let stderr = "";
    child.stdout.on("data", (chunk) => (stdout += chunk));
    child.stderr.on("data", (chunk) => (stderr += chunk));
    child.on("close", (status) => done({ status, stdout, stderr }));
  });
}

function refused({ status, stderr, record }: Ended): string[] {
  expect(status).toBe(2);
  expect(record).toBeNull();
  expect(stderr).not.toMatch(/^\s+at |\bError\b|node:|undefined/m);
  return stderr.trim().split("\n");
}

const own = readFileSync(new URL("../scenarios/seattle.csv", import.meta.url), "utf8");

describe("a file nobody here made becomes a record", () => {
  it("Seattle, without a flag, and says how it was read", async () => {
    const { status, stdout, stderr, record } = await weather(fileURLToPath(seattleFile));
    expect([status, stderr]).toEqual([0, ""]);
    expect(record).toBe(own);
    expect(stdout).toMatch(/^rain_mm +precipitation +mm +0\.95 +1\.00$/m);
    expect(stdout).toMatch(/^tmin_c +temp_min +°C +/m);
    expect(stdout).toContain("1,461 days, 2012-01-01 to 2015-12-31");
    expect(stdout).toContain("Not used: weather");
    expect(stdout).toContain("2012-01-02,10.9,2.8,10.6,4.5");
  });

  it("of two places asks which, and takes the flag that it offers", async () => {
    const path = fileURLToPath(twoPlacesFile);
    const asked = await weather(path);
    const [question, ...more] = refused(asked);
    expect(more).toEqual([]);
    expect(asked.stdout).toMatch(/^rain_mm +precipitation +mm/m);
    expect(question).toContain("--where location=Seattle");
    expect((await weather(path, "--where", "location=Seattle")).record).toBe(own);
  });

  it("in Latin-1 and in UTF-16 as spreadsheets write", async () => {
    const text = written(
      "Datum;Niederschlag (mm);Lufttemperatur min (°C);Lufttemperatur max (°C);Wind (m/s);für wen",
      (day) =>
        [
          `${two(day.day)}.${two(day.month)}.${day.year}`,
          ...[day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].map((value) =>
            value.toFixed(1).replace(".", ","),
          ),
          "Überall",
        ].join(";"),
    );
    const flags = [
      "--column",
      "tmin_c=lufttemperatur min (°C)",
      "--column",
      "tmax_c=Lufttemperatur max (°C)",
    ];
    expect((await weather(file(Buffer.from(text, "latin1")), ...flags)).record).toBe(own);
    expect((await weather(file(Buffer.from(`\ufeff${text}`, "utf16le")), ...flags)).record).toBe(own);
  });

  it("says what is missing, what filling will do, and what it took for missing", async () => {
    const text = written("date,rain mm,tmin C,tmax C", (day) =>
      [day.iso, day.iso === "2013-05-05" ? "-999" : day.rain_mm, day.tmin_c, day.tmax_c].join(),
    );
    const { stdout } = await weather(file(text));
    expect(stdout).toContain('rain mm: "-999" is read as not recorded, on 1 day.');
    expect(stdout).toContain("Rain is missing on 1 day.");
    expect(stdout).toContain("Gaps are filled when the record is used: 1 day, 0.1% of it.");
  });

  it("shorter than a year, or with a gap that nothing fills, it is written with the warning", async () => {
    const days = seattle.slice(0, 40).filter((day) => day.iso !== "2012-01-20");
    const text = written(
      "date,rain mm,tmin C,tmax C",
      (day) => [day.iso, day.rain_mm, day.tmin_c, day.tmax_c].join(),
      days,
    );
    const { status, stdout } = await weather(file(text));
    expect(status).toBe(0);
    expect(stdout).toContain("The record is shorter than a year");
    expect(stdout).toContain("Rain is missing on 2012-01-20");
  });
});

describe("what is refused: status 2, a line a fault, nothing written", () => {
  const ambiguous = written(
    "date,rain mm,tmin C,tmax C",
    (day) => [`${day.day}/${day.month}/${day.year}`, day.rain_mm, day.tmin_c, day.tmax_c].join(),
    seattle.filter((day) => day.day <= 12),
  );

  it("dates that can be read both ways, with the flags that settle it", async () => {
    const path = file(ambiguous);
    const [line] = refused(await weather(path));
    expect(line).toContain("--dates dmy (day, month, year: the first row is 2012-01-01)");
    expect(line).toContain("--dates mdy");
    const { record } = await weather(path, "--dates", "dmy");
    expect(record?.split("\n")[2]).toMatch(/^2012-01-02,10.9/);
  });

  it("a file that is missing, a folder, empty, or no text", async () => {
    const lines = [
      refused(await weather(join(folder, "nowhere.csv"))),
      refused(await weather(folder)),
      refused(await weather(file(""))),
      refused(await weather(file(new Uint8Array(4096).map((_, at) => (at * 73) % 256)))),
      refused(await weather(file("\n\n"))),
    ];
    expect(lines.map((each) => each.length)).toEqual([1, 1, 1, 1, 1]);
    expect(lines.map(([line]) => line!.replace(/^.*?\.csv: |^.*?: /, ""))).toEqual([
      "There is no such file. Give the path of one that exists.",
      "This is a folder. Give the path of a file.",
      "The file is empty.",
      "The file is not UTF-8 text.",
      "The file has no rows of numbers with a date. It needs a header and a row for each day.",
    ]);
  });

  it("200 MB, without reading them", async () => {
    const path = file("date,rain\n");
    truncateSync(path, 200 * 1024 * 1024);
    const [line] = refused(await weather(path));
    expect(line).toContain("at most 64 MB. It has 200 MB");
  });

  it("every broken row, by row and column", async () => {
    const text = written(
      "date,rain mm,tmin C,tmax C",
      (day) => [day.iso, day.dayOfYear % 2 ? 1 : -1, day.tmin_c, day.tmax_c].join(),
      seattle.slice(0, 500),
    );
    const lines = refused(await weather(file(text)));
    expect(lines).toHaveLength(200);
    expect(lines[0]).toBe("row 3, rain mm: Rain must be between 0 and 2,000 mm. You entered -1.");
    expect(lines.at(-1)).toBe("record: 51 more faults are not listed here.");
  });

  it("a folder for the record that is not there, and the raw file itself", async () => {
    const raw = file(own);
    const nowhere = await command([
      "--import",
      "tsx",
      "src/cli/weather.ts",
      raw,
      "--out",
      join(folder, "no", "r.csv"),
    ]);
    expect([nowhere.status, nowhere.stderr.split("\n").length]).toEqual([2, 2]);
    const same = await command(["--import", "tsx", "src/cli/weather.ts", raw, "--out", raw]);
    expect([same.status, same.stderr]).toEqual([
      2,
      "--out: The record must not replace the file it is made from. Give --out another name.\n",
    ]);
    expect(readFileSync(raw, "utf8")).toBe(own);
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  it.each([
    [["--frob"], "There is no option --frob."],
    [["--dates", "ydm"], "--dates: The order must be dmy, mdy or ymd."],
    [["--unit", "rain_mm"], "--unit: This must be NAME=VALUE."],
    [["--unit", "snow=mm"], "--unit: The name must be rain_mm"],
    [["--column", "rain_mm=nowhere"], 'The file has no column "nowhere".'],
    [["--unit", "rain_mm=stone"], 'Rain does not come in "stone" here.'],
  ])("flags that are not understood: %j", async (flags, beginning) => {
    const lines = refused(await weather(fileURLToPath(seattleFile), ...flags));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toContain(beginning);
  });
});

it("--help says how it is used, and nothing else happens", async () => {
  const { status, stdout, stderr } = await command(["--import", "tsx", "src/cli/weather.ts", "--help"]);
  expect([status, stderr]).toEqual([0, ""]);
  for (const flag of ["--out", "--column", "--unit", "--dates", "--where"]) expect(stdout).toContain(flag);
});
