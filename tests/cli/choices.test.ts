import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { choicesSchema } from "../../src/report/choices-schema.ts";
import { command, emptyFolder, filesIn } from "../helpers/command.ts";

const demo = ["demo/school.survey.json", "--weather", "demo/seattle.csv"];

describe("choices", () => {
  test("prints the brief for a committee", () => {
    const { status, stdout, stderr } = command("choices", [...demo, "--draws", "5"]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^# .*invented/);
    expect(stdout).toMatch(/not worth it/);
  });

  test("--units us tells the brief in gallons, and the document stays as it is", () => {
    const us = command("choices", [...demo, "--draws", "0", "--units", "us"]);
    expect(us.status).toBe(0);
    expect(us.stdout).toMatch(/gallons a year/);
    const json = (units: string) =>
      command("choices", [...demo, "--draws", "0", "--json", "--units", units]).stdout;
    expect(json("us")).toBe(json("metric"));
    expect(command("choices", [...demo, "--units", "feet"]).stderr).toMatch(/^--units: .*feet/);
  });

  test("--json prints the document alone; the same seed the same bytes; the brief goes to its file", () => {
    const folder = emptyFolder();
    const run = (file: string) =>
      command("choices", [
        ...demo,
        "--json",
        "--draws",
        "8",
        "--seed",
        "3",
        "--budget",
        "5000",
        "--brief",
        join(folder, file),
      ]);
    const [one, two] = [run("brief.md"), run("brief.html")];
    expect(one.status).toBe(0);
    expect(one.stdout).toBe(two.stdout);
    const choices = choicesSchema.parse(JSON.parse(one.stdout));
    expect(choices).toMatchObject({ budget: 5000, spread: { draws: 8, seed: 3 } });
    expect(readFileSync(join(folder, "brief.md"), "utf8")).toMatch(/^# /);
    expect(readFileSync(join(folder, "brief.html"), "utf8")).toMatch(/^<!doctype html>/);
  });

  test("refuses what it does not understand, a line each, and writes nothing", () => {
    const folder = emptyFolder();
    const { status, stdout, stderr } = command("choices", [
      "demo/school.survey.json",
      "--budget",
      "lots",
      "--draws",
      "1.5",
      "--brief",
      join(folder, "brief.pdf"),
    ]);
    expect(status).toBe(2);
    expect(stdout).toBe("");
    expect(
      stderr
        .trim()
        .split("\n")
        .map((line) => line.split(":")[0]),
    ).toEqual(["--budget", "--draws", "--brief"]);
    expect(filesIn(folder)).toEqual([]);
  });

  test("--help says what it does", () => {
    expect(command("choices", ["--help"]).stdout).toMatch(/--budget N/);
  });
});
