import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { command, emptyFolder, filesIn } from "../helpers/command.ts";

const demo = ["demo/school.survey.json", "--weather", "demo/seattle.csv"];

describe("explain", () => {
  test("lists the answer's figures with their addresses", () => {
    const { status, stdout, stderr } = command("explain", demo);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toMatch(/^ {2}mains\/give-up +[\d.,]+\u00A0kL {2}Mains water that could be given up$/m);
    expect(stdout).toMatch(/^ {2}bed\/kitchen\/need /m);
  });

  test("shows a day's Ks with its equation, and what to open next", () => {
    const { status, stdout } = command("explain", [...demo, "--figure", "bed/front/ks/2015-07-14"]);
    expect(status).toBe(0);
    expect(stdout).toMatch(/RAW = p day × TAW/);
    expect(stdout).toContain("FAO-56, Eq. 84");
    expect(stdout).toMatch(/see\s+bed\/front\/available/);
    expect(stdout).not.toMatch(/undefined|NaN/);
  });

  test("opens figures of the choices too, down to a day behind a set of measures", () => {
    const npv = command("explain", [...demo, "--figure", "choices/purse/share/mend-cistern/npv"]);
    expect(npv.stdout).toMatch(
      /NPV = Σ[\s\S]*day one: −\$180\.00; .*see\s+choices\/purse\/share\/mend-cistern\/year\/0/,
    );
    const day = command("explain", [...demo, "--figure", "choices/with/mulch-front/bed/front/ks/2015-07-14"]);
    expect(day.stdout).toMatch(/“Bark on the front beds”[\s\S]*FAO-56, Eq\. 84/);
    const nowhere = command("explain", [...demo, "--figure", "choices/share/nobody/water"]);
    expect(nowhere).toMatchObject({ status: 2, stdout: "" });
  });

  test("--units us puts customary units beside SI; --json prints the working", () => {
    const { stdout } = command("explain", [...demo, "--figure", "bed/oval/available", "--units", "us"]);
    expect(stdout).toMatch(/Zr\): 0\.3\u00A0m \(0\.9843\u00A0ft\)/);
    const json = command("explain", [...demo, "--figure", "et0/2015-07-14", "--json"]);
    expect(JSON.parse(json.stdout)).toMatchObject({ at: "et0/2015-07-14", unit: "mm" });
  });

  test("writes the worked example for a class", () => {
    const path = join(emptyFolder(), "class.html");
    const { status, stdout, stderr } = command("explain", [
      ...demo,
      "--class-sheet",
      path,
      "--bed",
      "kitchen",
    ]);
    expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: "", stderr: "" });
    expect(readFileSync(path, "utf8")).toMatch(/^<!doctype html>/);
  });

  test("refuses what leads nowhere, a line each, and writes nothing", () => {
    const folder = emptyFolder();
    const out = join(folder, "class.html");
    const refused = (...args: string[]) => {
      const { status, stdout, stderr } = command("explain", [...demo, ...args]);
      expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
      return stderr.trim().split("\n");
    };
    expect(refused("--figure", "bed//ks")).toEqual([
      expect.stringMatching(/^--figure: bed\/\/ks has not the form/),
    ]);
    expect(refused("--figure", "bed/oval/ks")).toEqual([
      expect.stringMatching(/^--figure: bed\/oval\/ks leads nowhere/),
    ]);
    expect(refused("--class-sheet", out, "--bed", "nobody")).toEqual([
      expect.stringMatching(/^--class-sheet: .*nobody/),
    ]);
    expect(
      refused("--class-sheet", out, "--from", "July", "--units", "furlongs").map(
        (line) => line.split(":")[0],
      ),
    ).toEqual(["--from", "--bed", "--units"]);
    expect(filesIn(folder)).toEqual([]);
  });
});
