import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Page } from "playwright-core";
import { expect, test, vi } from "vitest";
import { faultsByAxe, faultsByDayAndNight } from "../helpers/axe.ts";
import { hangsOver, journey, readOut } from "../helpers/journey.ts";

vi.setConfig({ testTimeout: 120_000 });

const at = journey();

const demoRecord = readFileSync(fileURLToPath(new URL("../../demo/seattle.csv", import.meta.url)), "utf8");

interface Row {
  [field: string]: unknown;
}

const garden: Row = {
  id: "rose-walk",
  name: "Rose walk",
  area_m2: 40,
  plantings: [{ kind: "perennials", thirst: "moderate", share: 1 }],
  watering: {
    method: "hose",
    supply: "mains-only",
    habit: { minutes: 30, days: ["mon", "thu"], months: [6, 7, 8] },
  },
};

function survey(name: string, beds: readonly Row[] = [garden]): Row {
  return {
    format: "grounds-survey",
    version: 1,
    site: { name, latitude: 47.6, longitude: -122.3 },
    beds,
    roofs: [],
    tanks: [],
  };
}

/** Keeps a site as another program would. @returns its path */
async function kept(page: Page, document: Row, weather?: string): Promise<string> {
  const reply = await page.request.post(`${at.served().address}api/sites`, {
    data: { survey: document, ...(weather === undefined ? {} : { weather }) },
  });
  expect(reply.status()).toBe(201);
  return `/site/${(await reply.json()).id}`;
}

async function opened(path: string, name: string, page: Page): Promise<void> {
  await page.goto(new URL(path, at.served().address).href);
  await page.getByRole("heading", { level: 1, name }).waitFor();
}

const saved = (page: Page) => page.getByText(/Saved \d/).waitFor();

async function writeArea(page: Page, text: string): Promise<void> {
  await page.getByLabel(/area/i).first().fill(text);
  await page.keyboard.press("Tab");
}

const areaKept = async (page: Page, path: string) => {
  const reply = await page.request.get(`${at.served().address}api/sites/${path.split("/")[2]}/state`);
  return (await reply.json()).survey.beds[0].area_m2;
};

test("a bed is changed, saved, undone and done again, and both survive a reload", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Tollgate Court (invented)"), demoRecord);
  await opened(`${path}/survey/beds/rose-walk`, "Tollgate Court (invented)", page);
  await writeArea(page, "44");
  await saved(page);
  await expect.poll(() => areaKept(page, path)).toBe(44);
  await page.getByRole("link", { name: "Versions", exact: true }).click();
  await page.getByRole("listitem").filter({ hasText: "Rose walk: area 40 m² → 44 m²" }).waitFor();
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect.poll(() => areaKept(page, path)).toBe(40);
  await page.reload();
  await page.getByRole("button", { name: "Redo", exact: true }).click();
  await expect.poll(() => areaKept(page, path)).toBe(44);
  await page.getByRole("button", { name: "Go back to this: Version 1" }).click();
  await expect.poll(() => areaKept(page, path)).toBe(40);
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await page.getByRole("heading", { name: /^From version \d to version \d$/ }).waitFor();
});

test("what was changed before a reload is taken back and done again where it was typed", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Tollgate Court (invented)"), demoRecord);
  await opened(`${path}/survey/beds/rose-walk`, "Tollgate Court (invented)", page);
  await writeArea(page, "52");
  await saved(page);
  await expect.poll(() => areaKept(page, path)).toBe(52);
  await page.reload();
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await page.getByText(/^Taken back: .*40.*52/).waitFor();
  await expect.poll(() => areaKept(page, path)).toBe(40);
  await page.getByRole("button", { name: "Redo", exact: true }).click();
  await expect.poll(() => areaKept(page, path)).toBe(52);
});

test("the answer follows an edit, and back leads back", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Tollgate Court (invented)"), demoRecord);
  await opened(path, "Tollgate Court (invented)", page);
  await page.getByRole("region", { name: "Answer", exact: true }).waitFor();
  const before = await readOut(page, "Answer");
  await page.getByRole("link", { name: "The survey, field by field" }).click();
  await page
    .getByRole("link", { name: /Beds and lawns/ })
    .first()
    .click();
  await page
    .getByRole("link", { name: /Rose walk/ })
    .first()
    .click();
  expect(new URL(page.url()).pathname).toBe(`${path}/survey/beds/rose-walk`);
  await writeArea(page, "400");
  await saved(page);
  await page.getByRole("link", { name: "Answer", exact: true }).click();
  await expect.poll(() => readOut(page, "Answer"), { timeout: 20_000 }).not.toBe(before);
  await page.goBack();
  expect(new URL(page.url()).pathname).toBe(`${path}/survey/beds/rose-walk`);
  await page.getByLabel(/area/i).first().waitFor();
});

test("two tabs: the second is told, nothing is overwritten, and both can be kept", async () => {
  at.forgive(/412/);
  const page = await at.open();
  const path = await kept(page, survey("Brook Terrace (invented)"), demoRecord);
  await opened(`${path}/survey/beds/rose-walk`, "Brook Terrace (invented)", page);
  await page.getByLabel(/area/i).first().waitFor();
  const other = await at.beside(page, `${path}/survey/beds/rose-walk`);
  await other.getByLabel(/area/i).first().waitFor();
  await writeArea(page, "50");
  await saved(page);
  await expect.poll(() => areaKept(page, path)).toBe(50);
  await writeArea(other, "60");
  await other.getByRole("heading", { name: "Somebody else saved this site meanwhile" }).waitFor();
  expect(await areaKept(page, path)).toBe(50);
  expect(await faultsByAxe(other)).toEqual([]);
  await other.getByRole("button", { name: "Keep both" }).click();
  await other.getByRole("heading", { level: 1, name: "Brook Terrace (invented), copy" }).waitFor();
  expect(await areaKept(page, path)).toBe(50);
  expect(await areaKept(page, new URL(other.url()).pathname)).toBe(60);
});

test("what is typed while the server is away stays here, and goes when it is back", async () => {
  at.forgive(/ERR_FAILED|Failed to load/);
  const page = await at.open();
  const path = await kept(page, survey("Wallside (invented)"), demoRecord);
  await opened(`${path}/survey/beds/rose-walk`, "Wallside (invented)", page);
  await page.getByLabel(/area/i).first().waitFor();
  await page.route("**/api/**", (route) => route.abort());
  await writeArea(page, "45");
  await page
    .getByText("The server is not reached. What you enter is kept in this browser", { exact: false })
    .waitFor();
  expect(await page.getByText(/Saved \d/).count()).toBe(0);
  await page.unroute("**/api/**");
  await page.getByRole("button", { name: "Try now" }).click();
  await saved(page);
  expect(await areaKept(page, path)).toBe(45);
});

/** The demo's record as a station's file: inches, °F, month first. */
function inInches(csv: string): string {
  const [head = "", ...lines] = csv.trim().split("\n");
  const columns = head.split(",");
  const at = (name: string) => columns.indexOf(name);
  const fahrenheit = (text: string | undefined) => ((Number(text) * 9) / 5 + 32).toFixed(1);
  const rows = lines.map((line) => {
    const cells = line.split(",");
    const [year, month, day] = cells[at("date")]!.split("-");
    const rain = (Number(cells[at("rain_mm")]) / 25.4).toFixed(3);
    return `${Number(month)}/${Number(day)}/${year},${rain},${fahrenheit(cells[at("tmax_c")])},${fahrenheit(cells[at("tmin_c")])}`;
  });
  return ["Date,Precip (in),High (F),Low (F)", ...rows].join("\n");
}

test("a record in inches and °F is previewed, taken, and worked out on", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Marrow Lane (invented)"));
  await opened(`${path}/weather`, "Marrow Lane (invented)", page);
  await page.getByRole("heading", { name: /fifty made-up years like those of the place/ }).waitFor();
  await page
    .getByRole("button", { name: "Drop a record in" })
    .setInputFiles({ name: "station.csv", mimeType: "text/csv", buffer: Buffer.from(inInches(demoRecord)) });
  const preview = page.getByRole("region", { name: "How station.csv is read" });
  await preview.waitFor();
  expect(await preview.getByLabel("Rain: Column").inputValue()).toBe("Precip (in)");
  expect(await preview.getByLabel("Rain: Unit").inputValue()).toBe("inch");
  expect(await preview.getByText("No gaps.").count()).toBe(1);
  expect(await faultsByAxe(page)).toEqual([]);
  await preview.getByRole("button", { name: "Use this record" }).click();
  await page
    .getByRole("heading", {
      name: /^Worked out on a record of 1,461 days, 1 January 2012 to 31 December 2015/,
    })
    .waitFor();
  await page.getByRole("link", { name: "Answer", exact: true }).click();
  await expect.poll(() => readOut(page, "Answer"), { timeout: 20_000 }).toMatch(/mains water/);
  const reply = await page.request.get(`${at.served().address}api${path.replace("/site", "/sites")}/weather`);
  const [, first = ""] = (await reply.text()).split("\n");
  const demoFirst = demoRecord.split("\n")[1]!.split(",");
  expect(first.split(",")[0]).toBe(demoFirst[0]);
  expect(Number(first.split(",")[1])).toBeCloseTo(Number(demoFirst[1]), 1);
});

test("a record with faults lists them by row and changes nothing", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Marrow Lane (invented)"), demoRecord);
  await opened(`${path}/weather`, "Marrow Lane (invented)", page);
  const broken = demoRecord.split("\n");
  broken[5] = broken[4]!;
  await page
    .getByRole("button", { name: "Drop a record in" })
    .setInputFiles({ name: "broken.csv", mimeType: "text/csv", buffer: Buffer.from(broken.join("\n")) });
  const preview = page.getByRole("region", { name: "How broken.csv is read" });
  await preview.getByText("row 6", { exact: false }).waitFor();
  expect(await preview.getByRole("button", { name: "Use this record" }).count()).toBe(0);
  await preview.getByRole("button", { name: "Leave it" }).click();
  await page.getByRole("heading", { name: /record of 1,461 days/ }).waitFor();
});

test("a site is exported, taken out, and brought in elsewhere as the same site", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Ferry Green (invented)"), demoRecord);
  await opened(`${path}/survey/beds/rose-walk`, "Ferry Green (invented)", page);
  await writeArea(page, "48");
  await saved(page);
  await page.getByRole("link", { name: "Versions", exact: true }).click();
  const coming = page.waitForEvent("download");
  await page.getByRole("link", { name: "Save the whole site as one file" }).click();
  const file = readFileSync(await (await coming).path());
  await page.getByRole("button", { name: "Take this site out" }).click();
  await page.getByRole("button", { name: "Bring back Ferry Green (invented)" }).waitFor();
  await page
    .getByRole("button", { name: "Bring in a file" })
    .setInputFiles({ name: "ferry.json", mimeType: "application/json", buffer: file });
  await page.getByRole("heading", { level: 1, name: "Ferry Green (invented)" }).waitFor();
  const again = new URL(page.url()).pathname;
  expect(await areaKept(page, again)).toBe(48);
  await page.getByRole("link", { name: "Versions", exact: true }).click();
  await page.getByText("Rose walk: area 40 m² → 48 m²").first().waitFor();
});

test("a file that is broken names its fault and changes nothing", async () => {
  at.forgive(/422/);
  const page = await at.open();
  const wrong = survey("Nowhere (invented)", [{ ...garden, area_m2: -4 }]);
  await page.getByRole("button", { name: "Bring in a file" }).setInputFiles({
    name: "wrong.json",
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(wrong)),
  });
  await page.getByText("Bed area must be between 0.1 and 50,000 m². You entered -4.").waitFor();
  await page.getByText("Nothing was changed.").waitFor();
  expect(await page.getByRole("link", { name: "Nowhere (invented)" }).count()).toBe(0);
});

const long = "Beds behind the old caretaker's house, along the wall, as far as the far gate, west";
const rightToLeft = "مدرسة الحديقة";

test("no beds, sixty beds, long names and names from right to left", async () => {
  const page = await at.open("", { viewport: { width: 360, height: 800 } });
  const none = await kept(page, survey("Bare Yard (invented)", []), demoRecord);
  await opened(none, "Bare Yard (invented)", page);
  await page.getByText("There are no beds in this survey yet", { exact: false }).waitFor();
  const sixty = Array.from({ length: 60 }, (_, i) => ({
    ...garden,
    id: `bed-${i}`,
    name: i % 2 ? `${long} ${i}` : `${rightToLeft} ${i}`,
  }));
  const many = await kept(page, survey(rightToLeft, sixty), demoRecord);
  await opened(many, rightToLeft, page);
  await expect.poll(() => readOut(page, "Answer"), { timeout: 30_000 }).toMatch(/kL/);
  for (const place of ["", "/walk", "/survey", "/weather", "/kept"]) {
    await opened(`${many}${place}`, rightToLeft, page);
    await page.waitForTimeout(500);
    expect(await hangsOver(page), place).toBeLessThanOrEqual(0);
  }
});

const sitePages = [
  ...["", "/walk", "/thirst", "/tanks", "/rounds", "/choices", "/survey", "/weather", "/kept"],
  "/working/bed/rose-walk/need",
];

test("axe finds nothing by day and by night on a site's own pages", async () => {
  const page = await at.open();
  const path = await kept(page, survey("Tollgate Court (invented)"), demoRecord);
  for (const place of sitePages) {
    await opened(`${path}${place}`, "Tollgate Court (invented)", page);
    await page.waitForTimeout(600);
    expect(await faultsByDayAndNight(page), place).toEqual([]);
  }
  await opened("/", "Grounds Water Balance", page);
  await page.getByRole("link", { name: "Tollgate Court (invented)" }).first().waitFor();
  expect(await faultsByDayAndNight(page)).toEqual([]);
});

test("a site that is not there is said", async () => {
  at.forgive(/404/);
  const page = await at.open("site/nothing-here/walk");
  await page.getByText("There is no such site here.", { exact: false }).waitFor();
});
