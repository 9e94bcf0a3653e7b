import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import type { Survey } from "../../src/survey/survey.ts";
import { faultsByDayAndNight } from "../helpers/axe.ts";
import { launchBrowser } from "../helpers/browser.ts";
import type { Harness } from "../helpers/harness.ts";
import { walkHarness } from "../helpers/walk-harness.ts";

const demo = (file: string) =>
  readFileSync(fileURLToPath(new URL(`../../demo/${file}`, import.meta.url)), "utf8");
const school = JSON.parse(demo("school.survey.json")) as Survey;

let harness: Harness;
let browser: Browser;
let context: BrowserContext | undefined;
let asked: string[] = [];
let wrong: string[] = [];
/** Anything that would carry a picture or a reading off the page. */
let sent: string[] = [];

beforeAll(async () => {
  const survey = { ...school, found: undefined, groups: undefined };
  [harness, browser] = await Promise.all([walkHarness(survey, demo("seattle.csv")), launchBrowser()]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await harness?.stop();
});

afterEach(async () => {
  await context?.close();
  context = undefined;
  const elsewhere = asked.filter((url) => !url.startsWith(harness.address) && !/^(blob|data):/.test(url));
  const [faults, carried] = [wrong, sent];
  sent = [];
  asked = [];
  wrong = [];
  expect(elsewhere, "requests that left the host").toEqual([]);
  expect(carried, "requests that carry something").toEqual([]);
  expect(faults, "errors in the page").toEqual([]);
});

const phone: BrowserContextOptions = {
  viewport: { width: 360, height: 740 },
  hasTouch: true,
  isMobile: true,
};
const parts = ["areas", "thirst", "cover", "soil", "shade", "water", "tanks"];

async function open(route = "", options: BrowserContextOptions = phone): Promise<Page> {
  context = await browser.newContext({ locale: "en-GB", ...options });
  context.on("request", (request) => {
    asked.push(request.url());
    if (request.method() !== "GET") sent.push(request.url());
  });
  context.setDefaultTimeout(8_000);
  const page = await context.newPage();
  page.on("pageerror", (error) => wrong.push(String(error)));
  page.on("console", (message) => {
    if (message.type() === "error" && !/ERR_INTERNET_DISCONNECTED/.test(message.text()))
      wrong.push(message.text());
  });
  await page.goto(`${harness.address}#${route}`);
  return page;
}

/** A group under way that has read its cautions, at a screen of the walk. */
async function at(route: string, options: BrowserContextOptions = phone): Promise<Page> {
  const page = await open("", options);
  await page.evaluate((read) => {
    const draft = { nickname: "Teasel", mode: "full", route: "", stops: {}, read, passed: [] };
    localStorage.setItem("grounds-walk/harness/group/teasel", JSON.stringify(draft));
    localStorage.setItem("grounds-walk/harness/last", "Teasel");
  }, parts);
  await page.goto(`${harness.address}?again#${route}`);
  await page.getByRole("heading", { level: 2 }).first().waitFor();
  return page;
}

/** Text on the page; units are held to their numbers by spaces that do not break. */
const seen = (page: Page, pattern: RegExp) =>
  page.getByText(new RegExp(pattern.source.replaceAll(" ", "\\s"), pattern.flags)).first();

const surveyOf = (page: Page) => page.evaluate(() => window.survey);
const press = (page: Page, name: string | RegExp) => page.getByRole("button", { name, exact: true }).tap();
const write = (page: Page, name: string | RegExp, text: string) =>
  page.getByRole("textbox", { name, exact: true }).fill(text);

test("a group starts, guesses, measures by touch, and the survey has what it read", async () => {
  const page = await open();
  await page.getByRole("heading", { name: "Walk the grounds" }).waitFor();
  await press(page, "Start");
  await page.getByText("The group needs a nickname.").waitFor();
  await write(page, "Your group’s nickname", "Teasel");
  await press(page, "Start");
  await page.getByRole("button", { name: /^Front beds/ }).tap();
  await page.getByRole("button", { name: /^Area/ }).tap();
  await page.getByText("Walk round beds, not through them", { exact: false }).waitFor();
  await press(page, "We have read this");
  await page.getByRole("textbox").fill("50");
  await press(page, "That is our guess");
  await press(page, "Rectangle");
  await write(page, "Length", "16");
  await write(page, "Width", "4,1");
  await press(page, "Width: one more reading");
  await write(page, "Width, reading 2", "3.9");
  await seen(page, /^64\.\d m²$/).waitFor();
  await seen(page, /With that it needs about .* a year/).waitFor();
  await press(page, "Keep it");
  await seen(page, /Your guess: 50 m²/).waitFor();
  const { beds, found, groups } = await surveyOf(page);
  expect(beds[3]!.area_m2).toBeCloseTo(64, 9);
  expect(groups).toMatchObject([{ nickname: "Teasel" }]);
  expect(found).toMatchObject([
    { at: "beds[3].area_m2", how: "rectangle 1,2", readings: [16, 4.1, 3.9], guess: 50 },
  ]);
});

test("a figure opens to its readings, and one that is left out counts no more", async () => {
  const page = await at("stop/beds/front/area");
  await page.evaluate(
    (survey) => {
      const row = { how: "rectangle", when: "2025-03-02T10:30", at: "beds[3].area_m2" };
      const found = [
        { ...row, id: "f1", readings: [16, 4], figure: 64, group: "g1", text: "16 | 4" },
        { ...row, id: "f2", readings: [16, 6], figure: 96, group: "g2", text: "16 | 6" },
      ];
      const groups = ["Teasel", "Sorrel"].map((nickname, i) => ({ id: `g${i + 1}`, nickname }));
      const beds = survey.beds.map((bed, i) => (i === 3 ? { ...bed, area_m2: 80 } : bed));
      localStorage.setItem("harness", JSON.stringify({ ...survey, beds, found, groups }));
    },
    await surveyOf(page),
  );
  await page.goto(`${harness.address}?opened#stop/beds/front/area`);
  await seen(page, /^80 m²$/).waitFor();
  await page.getByText("How it was read, 2 readings").tap();
  await seen(page, /Sorrel, 2 Mar 2025, 10:30: Rectangle, 16 | 6/).waitFor();
  await press(page, "Leave it out: Sorrel");
  await seen(page, /^64 m²$/).waitFor();
  expect((await surveyOf(page)).beds[3]!.area_m2).toBeCloseTo(64, 9);
  await press(page, "Count it again: Sorrel");
  await seen(page, /^80 m²$/).waitFor();
});

test("shapes that cannot be are named, and not kept", async () => {
  const page = await at("stop/beds/front/area");
  await press(page, "No guess");
  await press(page, "Triangle");
  for (const [side, length] of [
    ["Side A", "9"],
    ["Side B", "3"],
    ["Side C", "4"],
  ])
    await write(page, side!, length!);
  await seen(page, /No triangle closes: one side is 9 m, the other two together only 7 m/).waitFor();
  await page.getByText("The sides do not meet.").waitFor();
  expect(await page.getByRole("button", { name: "Keep it" }).isDisabled()).toBe(true);
});

test("a bed of several shapes, one taken away", async () => {
  const page = await at("stop/beds/front/area");
  await press(page, "No guess");
  await press(page, "Rectangle");
  await write(page, "Length", "10");
  await write(page, "Width", "5");
  await press(page, "Take a shape away");
  await press(page, "Circle");
  await page.getByRole("textbox", { name: "Across" }).fill("2");
  await seen(page, /^46\.\d\d? m²$/).waitFor();
  await press(page, "Keep it");
  expect((await surveyOf(page)).found![0]).toMatchObject({ how: "rectangle - circle", readings: [10, 5, 2] });
});

test("offline in the middle of an entry, and opened anew: nothing is lost, and the walk goes on", async () => {
  const page = await at("stop/beds/front/area");
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await press(page, "No guess");
  await press(page, "Rectangle");
  await write(page, "Length", "16");
  await context!.setOffline(true);
  await write(page, "Width", "4");
  await page.reload();
  await page.getByRole("textbox", { name: "Width" }).waitFor();
  expect(await page.getByRole("textbox", { name: "Length" }).inputValue()).toBe("16");
  expect(await page.getByRole("textbox", { name: "Width" }).inputValue()).toBe("4");
  await press(page, "Keep it");
  await press(page, "Next stop");
  // the list of plants was never opened before: it was kept with the page
  await press(page, "No guess");
  await page.getByRole("button", { name: /^By name/ }).tap();
  await write(page, "What is it called?", "lavendar");
  await page.getByRole("button", { name: /^Lavandula/ }).tap();
  const { found } = await surveyOf(page);
  expect(found).toMatchObject([{ at: "beds[3].area_m2" }, { how: "plant list", text: "Lavandula" }]);
});

test("turned on its side in the middle of an entry", async () => {
  const page = await at("stop/beds/front/area");
  await press(page, "No guess");
  await press(page, "Circle");
  await write(page, "Across", "5");
  await page.setViewportSize({ width: 740, height: 360 });
  expect(await page.getByRole("textbox", { name: "Across" }).inputValue()).toBe("5");
  await seen(page, /^19\.6 m²$/).waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(740);
});

test("the stopwatch counts while the screen sleeps, and through a reload", async () => {
  const page = await open();
  await page.clock.install({ time: new Date("2025-03-02T10:00:00") });
  await page.evaluate((read) => {
    const draft = { nickname: "Teasel", mode: "full", route: "", stops: {}, read, passed: [] };
    localStorage.setItem("grounds-walk/harness/group/teasel", JSON.stringify(draft));
    localStorage.setItem("grounds-walk/harness/last", "Teasel");
  }, parts);
  await page.goto(`${harness.address}?again#stop/beds/front/flow`);
  await press(page, "No guess");
  await press(page, "Jug and stopwatch");
  await write(page, "Water caught", "9");
  await press(page, "Start");
  // no frame is drawn meanwhile
  await page.clock.pauseAt(new Date("2025-03-02T10:00:20"));
  await page.reload();
  await page.clock.pauseAt(new Date("2025-03-02T10:00:30"));
  await press(page, "Stop");
  const button = page.getByRole("button", { name: /^Write down/ });
  const seconds = Number(/[\d.]+/.exec((await button.textContent()) ?? "")![0]);
  expect(seconds).toBeGreaterThan(25);
  expect(seconds).toBeLessThanOrEqual(30);
  await button.tap();
  expect(Number(await page.getByRole("textbox", { name: "Time" }).inputValue())).toBe(seconds);
});

test("by keyboard alone: a start, a guess and a circle", async () => {
  const page = await open("", { viewport: { width: 1280, height: 900 } });
  const name = page.getByRole("textbox", { name: "Your group’s nickname" });
  await name.waitFor();
  await name.focus();
  await page.keyboard.type("Sorrel");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "The round" }).waitFor();
  const tabTo = async (text: RegExp) => {
    for (let i = 0; i < 80; i++) {
      await page.keyboard.press("Tab");
      const label = await page.evaluate(() => {
        let active = document.activeElement;
        while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
        return (active?.getAttribute("aria-label") ?? active?.textContent ?? "").trim().replace(/\s+/g, " ");
      });
      if (text.test(label)) return;
    }
    throw new Error(`${text} was not reached by Tab`);
  };
  await tabTo(/^Next: Oval, area$/);
  await page.keyboard.press("Enter");
  await tabTo(/^We have read this$/);
  await page.keyboard.press("Enter");
  await page.getByRole("textbox").focus();
  await page.keyboard.type("2000");
  await page.keyboard.press("Enter");
  await tabTo(/^Circle$/);
  await page.keyboard.press("Enter");
  await page.getByRole("textbox", { name: "Across" }).focus();
  await page.keyboard.type("50");
  await tabTo(/^Keep it$/);
  await page.keyboard.press("Space");
  await seen(page, /Your guess: 2,000/).waitFor();
  expect((await surveyOf(page)).beds[0]!.area_m2).toBeCloseTo(625 * Math.PI, 6);
});

/** A plan drawn by the test itself: a green sheet, 900 by 600 px. */
async function planPng(page: Page): Promise<Buffer> {
  const data = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 900;
    canvas.height = 600;
    const pen = canvas.getContext("2d")!;
    pen.fillStyle = "#7f9c5a";
    pen.fillRect(0, 0, 900, 600);
    return canvas.toDataURL("image/png").split(",")[1]!;
  });
  return Buffer.from(data, "base64");
}

test("a plan is traced by touch and by keys, undone, and stays on the machine", async () => {
  const page = await at("stop/beds/front/area");
  await press(page, "No guess");
  await press(page, "Traced on a plan");
  const choose = page.locator("input[type=file]");
  await choose.setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: Buffer.from("<svg/>") });
  await seen(page, /holds no JPEG, PNG or WebP picture/).waitFor();
  await choose.setInputFiles({ name: "plan.png", mimeType: "image/png", buffer: await planPng(page) });
  const board = page.getByRole("application");
  await board.waitFor();
  await board.scrollIntoViewIfNeeded();
  const tap = async (x: number, y: number) => {
    const box = (await board.boundingBox())!;
    const scale = box.width / 900;
    await page.touchscreen.tap(box.x + x * scale, box.y + y * scale);
  };
  await tap(90, 60);
  await tap(810, 60);
  await write(page, "Known length", "72");
  await board.scrollIntoViewIfNeeded();
  for (const [x, y] of [
    [270, 180],
    [630, 180],
    [630, 480],
  ] as const)
    await tap(x, y);
  await tap(860, 560);
  await press(page, "Undo");
  // the last corner by keys: from the middle of the board
  await board.focus();
  const box = (await board.boundingBox())!;
  const steps = Math.round(((450 - 270) * box.width) / 900 / 6);
  for (let i = 0; i < steps; i++) await page.keyboard.press("ArrowLeft");
  for (let i = 0; i < steps; i++) await page.keyboard.press("ArrowDown");
  await page.keyboard.press("Enter");
  await seen(page, /^1,\d\d0 m²$/).waitFor();
  await seen(page, /^All round: 13\d/).waitFor();
  await press(page, "Keep it");
  const bed = (await surveyOf(page)).beds[3]!;
  expect(bed.area_m2 / 1080).toBeGreaterThan(0.9);
  expect(bed.area_m2 / 1080).toBeLessThan(1.1);
  expect(bed.outline_m).toHaveLength(4);
  await page.goto(`${harness.address}?plan#drawing`);
  await page.getByRole("img", { name: /^Site drawing/ }).waitFor();
});

/** A JPEG as a phone writes it: with a segment that says where it was taken. */
async function placedJpeg(page: Page): Promise<Buffer> {
  const data = await page.evaluate(() => {
    const canvas = document.createElement("canvas");
    canvas.width = 90;
    canvas.height = 60;
    return canvas.toDataURL("image/jpeg").split(",")[1]!;
  });
  const plain = Buffer.from(data, "base64");
  const note = Buffer.from("Exif\0\0GPS 47.60621 -122.33207 of a camera");
  const head = Buffer.from([0xff, 0xe1, 0, note.length + 2]);
  return Buffer.concat([plain.subarray(0, 2), head, note, plain.subarray(2)]);
}

test("a picture is kept without what the camera wrote into it", async () => {
  const page = await at("stop/beds/front/area");
  await press(page, "No guess");
  await press(page, "Traced on a plan");
  const buffer = await placedJpeg(page);
  expect(buffer.includes("GPS")).toBe(true);
  await page.locator("input[type=file]").setInputFiles({ name: "a.jpg", mimeType: "image/jpeg", buffer });
  await page.getByRole("application").waitFor();
  const kept = await page.evaluate(async () => {
    const opening = indexedDB.open("grounds-walk");
    await new Promise((done) => opening.addEventListener("success", done));
    const asking = opening.result.transaction("pictures").objectStore("pictures").getAll();
    await new Promise((done) => asking.addEventListener("success", done));
    return Promise.all(
      (asking.result as Blob[]).map(async (blob) => [...new Uint8Array(await blob.arrayBuffer())]),
    );
  });
  expect(kept).toHaveLength(1);
  const bytes = Buffer.from(kept[0]!);
  expect(bytes.subarray(0, 2)).toEqual(Buffer.from([0xff, 0xd8]));
  expect(bytes.includes("Exif")).toBe(false);
  expect(bytes.includes("GPS")).toBe(false);
});

test("a photograph’s green is counted here and goes nowhere", async () => {
  const page = await at("stop/beds/front/cover");
  await press(page, "No guess");
  await press(page, "Leaf cover from a photograph");
  // the page is being kept meanwhile, which asks for its files
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const before = asked.length;
  await page
    .locator("input[type=file]")
    .setInputFiles({ name: "bed.png", mimeType: "image/png", buffer: await planPng(page) });
  await seen(page, /^100%$/).waitFor();
  await seen(page, /A help, not the truth/).waitFor();
  expect(asked.slice(before)).toEqual([]);
});

test("practice changes nothing of the survey", async () => {
  const page = await open();
  await write(page, "Your group’s nickname", "Yarrow");
  await page.getByRole("button", { name: /^Practice/ }).tap();
  await press(page, "Start");
  await page.getByText("Practice: nothing here changes your survey.").waitFor();
  const before = await surveyOf(page);
  await page.getByRole("button", { name: /^Oval/ }).tap();
  await page.getByRole("button", { name: /^Mulch/ }).tap();
  await press(page, "We have read this");
  await press(page, "Nothing: bare soil");
  await page.getByRole("button", { name: "Next stop" }).waitFor();
  expect(await surveyOf(page)).toEqual(before);
});

test("what is told of the watering, against a week’s log", async () => {
  const page = await at("stop/beds/front/habit");
  await write(page, "Minutes each time", "30");
  for (const name of ["Monday", "Thursday", "June", "July"]) await press(page, name);
  await write(page, "Monday", "45");
  await write(page, "Thursday", "60");
  await seen(page, /The log says 1\.8 times what was told/).waitFor();
  await press(page, "Keep the log");
  const { beds, found } = await surveyOf(page);
  expect(beds[3]!.watering.habit).toEqual({ minutes: 52.5, days: ["mon", "thu"], months: [6, 7] });
  expect(found!.map(({ how }) => how)).toEqual(["habit-week", "habit-week"]);
});

const square = (west: number, north: number) => {
  const [east, south] = [west + 0.0004, north - 0.0003];
  return [
    [west, south],
    [east, south],
    [east, north],
    [west, north],
    [west, south],
  ];
};

test("a map file’s shapes become beds, a fault is named, and outlines are written again", async () => {
  const page = await at("shapes");
  const feature = (name: string, ring: number[][]) => ({
    type: "Feature",
    properties: { name },
    geometry: { type: "Polygon", coordinates: [ring] },
  });
  const crossed = [
    [0, 0],
    [1, 1],
    [1, 0],
    [0, 1],
    [0, 0],
  ];
  const file = {
    type: "FeatureCollection",
    features: [
      feature("Front beds", square(-122.3, 47.6)),
      feature("Meadow", square(-122.29, 47.6)),
      feature("Bow", crossed),
    ],
  };
  await page.locator("input[type=file]").setInputFiles({
    name: "map.geojson",
    mimeType: "application/geo+json",
    buffer: Buffer.from(JSON.stringify(file)),
  });
  await seen(page, /Shape 3: side 1 and side 3 cross/).waitFor();
  await press(page, "Take them into the survey");
  await seen(page, /2 outlines were taken in/).waitFor();
  const { beds } = await surveyOf(page);
  expect(beds.at(-1)).toMatchObject({ name: "Meadow" });
  // 0.0004° of longitude by 0.0003° of latitude at 47.6° north: 30.1 m by 33.4 m
  expect(beds[3]!.area_m2 / (30.07 * 33.35)).toBeCloseTo(1, 2);
  const coming = page.waitForEvent("download");
  await press(page, "Save all outlines as GeoJSON");
  const written = JSON.parse(readFileSync(await (await coming).path(), "utf8"));
  expect(written.features.map((one: { properties: { name: string } }) => one.properties.name)).toEqual([
    "Front beds",
    "Meadow",
  ]);
});

test("a bed that was not there is added with a guess, and is measured", async () => {
  const page = await at("add/beds");
  await press(page, "Add it");
  await page.getByText("It needs a name.").waitFor();
  await page.getByRole("textbox", { name: "What is it called?" }).fill("Bike shed border");
  await press(page, "shrubs");
  await press(page, "drip line on the ground");
  await page.getByRole("textbox", { name: "How large do you think it is?" }).fill("12");
  await press(page, "Add it");
  await page.getByRole("heading", { name: "Bike shed border" }).waitFor();
  const bed = (await surveyOf(page)).beds.at(-1)!;
  expect(bed).toMatchObject({ area_m2: 12, plantings: [{ kind: "shrubs" }], watering: { method: "drip" } });
});

test("sheets and a dip table are printed alone, and the page is back after", async () => {
  const page = await at("sheets", { viewport: { width: 1280, height: 900 } });
  await page.evaluate(() => {
    window.print = () => {};
  });
  await page.getByRole("button", { name: "Print" }).click();
  await page.emulateMedia({ media: "print" });
  await page.getByRole("heading", { name: "Grounds Water Balance: Soil" }).waitFor();
  expect(await page.locator("main").first().isVisible()).toBe(false);
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  expect(await page.locator("gwb-paper").count()).toBe(0);
});

test("the site drawing takes a tank’s place and is saved as SVG with its inks", async () => {
  const page = await at("drawing", { viewport: { width: 1280, height: 900 } });
  await page.getByRole("combobox", { name: "Place a tank or tap" }).selectOption({ label: "Yard tank" });
  await page.getByRole("application").focus();
  for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Enter");
  await page.getByRole("img", { name: /^Site drawing/ }).waitFor();
  expect((await surveyOf(page)).tanks[1]!.at_m).toHaveLength(2);
  const coming = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save the drawing as SVG" }).click();
  const text = readFileSync(await (await coming).path(), "utf8");
  expect(text).toMatch(/^<svg [^>]*xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
  expect(text).toContain("Oval");
  // what its numbers stand for goes with it
  for (const { name } of [...school.beds, ...school.roofs, ...school.tanks, ...(school.taps ?? [])])
    expect(text).toMatch(new RegExp(`\\d\\. ${name}<`));
  expect(text).not.toMatch(/var\(--|<!--/);
});

const routes = [
  "",
  "round",
  "thing/beds/front",
  "thing/tanks/hall-tank",
  "add/beds",
  "check",
  "worth",
  "teacher",
  "sheets",
  "type",
  "drawing",
  "shapes",
  "stop/beds/front/area",
  "stop/beds/front/thirst",
  "stop/beds/front/shares",
  "stop/beds/front/cover",
  "stop/beds/front/mulch",
  "stop/beds/front/soil",
  "stop/beds/front/shade",
  "stop/beds/front/habit",
  "stop/beds/oval/heads",
  "stop/beds/oval/cans",
  "stop/roofs/hall-roof/roof-area",
  "stop/roofs/hall-roof/roof-share",
  "stop/tanks/hall-tank/capacity",
  "stop/tanks/hall-tank/tank-use",
  "stop/taps/yard-tap/hose-flow",
];

/** Ways whose screens have tools of their own. */
const ways: readonly (readonly [string, string])[] = [
  ["stop/beds/front/area", "Four uneven sides"],
  ["stop/beds/front/area", "Traced on a plan"],
  ["stop/beds/front/cover", "Leaf cover by the chart"],
  ["stop/beds/front/cover", "Leaf cover by points"],
  ["stop/beds/front/soil", "Soil in a jar"],
  ["stop/beds/front/soil", "Soil by feel"],
  ["stop/beds/front/shade", "Skyline by fists"],
  ["stop/beds/front/flow", "Jug and stopwatch"],
  ["stop/roofs/hall-roof/roof-area", "Roof by slope and pitch"],
  ["stop/tanks/hall-tank/capacity", "Round tank that lies"],
  ["stop/taps/yard-tap/hose-flow", "Hose from a tank"],
];

/** Things to press that are smaller than a thumb, and whatever makes the page wider than the phone. */
function tooSmall(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const look = (root: ParentNode) => {
      for (const element of root.querySelectorAll<HTMLElement>("*")) {
        if (element.shadowRoot) look(element.shadowRoot);
        if (!element.matches("button, a, summary, select, input:not([type=file]), label.press")) continue;
        const { width, height } = element.getBoundingClientRect();
        if (width === 0 || element.closest("details:not([open]) > :not(summary)")) continue;
        if (height < 43.5 || width < 24)
          found.push(
            `${element.textContent?.trim() || element.id}: ${Math.round(width)} by ${Math.round(height)}`,
          );
      }
    };
    look(document);
    if (document.documentElement.scrollWidth > innerWidth)
      found.push(`page ${document.documentElement.scrollWidth} wide`);
    return found;
  });
}

async function toWay(page: Page, way: string): Promise<void> {
  const noGuess = page.getByRole("button", { name: "No guess" });
  if (await noGuess.isVisible()) await noGuess.tap();
  await press(page, way);
}

describe("every screen fits a phone and a thumb, and has no fault for axe", () => {
  test("by day and by night", async () => {
    const page = await at("round", phone);
    const faults: string[] = [];
    const check = async (name: string) => {
      await page.getByRole("heading", { level: 2 }).first().waitFor();
      await page.waitForTimeout(60);
      const found = await faultsByDayAndNight(page, { without: ["page-has-heading-one"] });
      faults.push(...found.map((fault) => `${name}: ${fault}`));
      faults.push(...(await tooSmall(page)).map((one) => `${name}: ${one}`));
    };
    for (const route of routes) {
      await page.goto(`${harness.address}?${encodeURIComponent(route)}#${route}`);
      await check(route);
    }
    for (const [route, way] of ways) {
      await page.evaluate(() => {
        const key = "grounds-walk/harness/group/teasel";
        localStorage.setItem(key, JSON.stringify({ ...JSON.parse(localStorage.getItem(key)!), stops: {} }));
      });
      await page.goto(`${harness.address}?${encodeURIComponent(way)}#${route}`);
      await page.getByRole("heading", { level: 2 }).first().waitFor();
      await toWay(page, way);
      await check(way);
    }
    expect(faults).toEqual([]);
  }, 240_000);

  test("at 320 px nothing is cut off", async () => {
    const page = await at("round", { ...phone, viewport: { width: 320, height: 640 } });
    const wide: string[] = [];
    for (const route of routes) {
      await page.goto(`${harness.address}?${encodeURIComponent(route)}#${route}`);
      await page.getByRole("heading", { level: 2 }).first().waitFor();
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      if (width > 320) wide.push(`${route}: ${width}`);
    }
    expect(wide).toEqual([]);
  }, 120_000);
});
