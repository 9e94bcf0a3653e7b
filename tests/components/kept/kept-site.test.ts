import { describe, expect, test } from "vitest";
import { passingBox } from "../../../components/kept/box.ts";
import type { KeptSite } from "../../../components/kept/kept-site.ts";
import { areaIn, create, getState, school, schoolOf, testApp } from "../../server/sites/helpers.ts";
import { browser, closeAll, openTab, Wire } from "./wire.ts";

async function begun() {
  const app = testApp();
  const { id } = await create(app);
  const wire = new Wire(app);
  const own = await browser();
  return { app, id, wire, own, tab: await openTab(wire, id, own) };
}

const areaOf = (kept: KeptSite) => (kept.survey as { beds: { area_m2: number }[] }).beds[0]!.area_m2;
const onDisk = async (app: ReturnType<typeof testApp>, id: string) =>
  (await getState(app, id)).survey.beds[0]!.area_m2;

describe("what is typed", () => {
  test("is called saved when the server has answered, and not before", async () => {
    const { app, id, wire, tab } = await begun();
    expect(tab.standing.is).toBe("saved");
    const letGo = wire.hold();
    await tab.change(schoolOf(44));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(tab.standing.is).toBe("saving");
    letGo();
    await tab.settled();
    expect(tab.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(44);
    expect(tab.state?.words).toBe("Oval: area 2,400 m² → 44 m²");
  });

  test("while a save is under way goes next, the newest only", async () => {
    const { app, id, wire, tab } = await begun();
    const letGo = wire.hold();
    await tab.change(schoolOf(1));
    await new Promise((resolve) => setTimeout(resolve, 20));
    for (const area of [2, 3, 4]) await tab.change(schoolOf(area));
    letGo();
    await tab.settled();
    expect(await onDisk(app, id)).toBe(4);
    expect(wire.requests.filter((request) => request.startsWith("PUT"))).toHaveLength(2);
    expect(tab.standing.is).toBe("saved");
  });

  test("with faults is kept as a draft, with each fault", async () => {
    const { app, id, tab } = await begun();
    await tab.change(schoolOf(-4));
    await tab.settled();
    expect(tab.standing).toMatchObject({ is: "draft", faults: [{ path: "beds[0].area_m2" }] });
    expect((await getState(app, id)).draft?.survey).toEqual(schoolOf(-4));
    await tab.change(schoolOf(4));
    await tab.settled();
    expect(tab.standing.is).toBe("saved");
    expect((await getState(app, id)).draft).toBeNull();
  });

  test("as a draft is there again in another tab", async () => {
    const { id, wire, tab } = await begun();
    await tab.change(schoolOf(-4));
    await tab.settled();
    const other = await openTab(wire, id, await browser());
    expect(areaOf(other)).toBe(-4);
  });
});

describe("without the server", () => {
  test("everything stays in this browser, and goes when the server is back", async () => {
    const { app, id, wire, own, tab } = await begun();
    wire.weather = "down";
    await tab.change(schoolOf(44));
    await tab.addToLog([{ date: "2026-03-01", kind: "rain", rain_mm: 3 }]);
    await tab.settled();
    expect(tab.standing).toEqual({ is: "waiting", reason: null, isInBrowser: true });
    expect(await own.box.waiting(id)).toHaveLength(1);
    wire.weather = "up";
    tab.tryNow();
    await new Promise((resolve) => setTimeout(resolve, 0));
    await tab.settled();
    expect(tab.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(44);
    expect((await getState(app, id)).log.entries).toBe(1);
    expect(await own.box.waiting(id)).toEqual([]);
    expect(await own.box.log(id)).toEqual([]);
  });

  test("what a closed tab left unsent goes from the next one", async () => {
    const { app, id, wire, own, tab } = await begun();
    wire.weather = "down";
    await tab.change(schoolOf(44));
    await tab.settled();
    closeAll(tab, own);
    const offline = await openTab(wire, id, own);
    expect(areaOf(offline)).toBe(44);
    closeAll(offline, own);
    wire.weather = "up";
    const next = await openTab(wire, id, own);
    await next.settled();
    expect(next.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(44);
  });

  test("what a tab that is open still holds is left to that tab", async () => {
    const { id, wire, own, tab } = await begun();
    wire.weather = "down";
    await tab.change(schoolOf(44));
    await tab.settled();
    const second = await openTab(wire, id, own);
    expect(areaOf(second)).toBe(2400);
    expect(areaOf(tab)).toBe(44);
  });

  test("the site opens as it was last seen", async () => {
    const { id, wire, own, tab } = await begun();
    closeAll(tab, own);
    wire.weather = "down";
    const offline = await openTab(wire, id, own);
    expect(offline.standing.is).toBe("waiting");
    expect(offline.survey).toEqual(school());
    wire.weather = "up";
    offline.tryNow();
    await new Promise((resolve) => setTimeout(resolve, 0));
    await offline.settled();
    expect(offline.standing.is).toBe("saved");
  });

  test("a full disk is told in the server's words, and tried again", async () => {
    const { app, id, wire, tab } = await begun();
    wire.weather = { status: 507, detail: "The disk is full." };
    await tab.change(schoolOf(44));
    await tab.settled();
    expect(tab.standing).toMatchObject({ is: "waiting", reason: "The disk is full." });
    wire.weather = "up";
    tab.tryNow();
    await new Promise((resolve) => setTimeout(resolve, 0));
    await tab.settled();
    expect(await onDisk(app, id)).toBe(44);
  });

  test("a browser that keeps nothing is told of", async () => {
    const { id, wire } = await begun();
    const tab = await openTab(wire, id, { box: passingBox(), openTabs: new Set() });
    wire.weather = "down";
    await tab.change(schoolOf(44));
    await tab.settled();
    expect(tab.standing).toMatchObject({ is: "waiting", isInBrowser: false });
  });
});

describe("answers that are lost on the way", () => {
  test("a save that arrived is no conflict when more was typed since", async () => {
    const { app, id, wire, tab } = await begun();
    wire.weather = "answers-lost";
    await tab.change(schoolOf(1));
    await tab.settled();
    expect(await onDisk(app, id)).toBe(1);
    wire.weather = "down";
    await tab.change(schoolOf(2));
    await tab.settled();
    wire.weather = "up";
    await tab.change(schoolOf(3));
    await tab.settled();
    expect(tab.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(3);
  });

  test("entries of the log are not counted twice", async () => {
    const { app, id, wire, tab } = await begun();
    wire.weather = "answers-lost";
    await tab.addToLog([{ date: "2026-03-01", kind: "rain", rain_mm: 3 }]);
    await tab.settled();
    wire.weather = "up";
    tab.tryNow();
    await new Promise((resolve) => setTimeout(resolve, 0));
    await tab.settled();
    expect((await getState(app, id)).log.entries).toBe(1);
    expect(tab.state?.log.entries).toBe(1);
  });
});

describe("two tabs", () => {
  async function inConflict() {
    const { app, id, wire, own, tab } = await begun();
    const second = await openTab(wire, id, own);
    await tab.change(schoolOf(1));
    await tab.settled();
    await second.change(schoolOf(2));
    await second.settled();
    return { app, id, wire, own, first: tab, second };
  }

  test("the second is told, with both and what differs; nothing is overwritten or lost", async () => {
    const { app, id, own, second } = await inConflict();
    expect(second.standing).toMatchObject({
      is: "conflict",
      conflict: { changes: [{ path: "beds[0].area_m2", sentence: "Oval: area 1 m² → 2 m²" }] },
    });
    expect(areaOf(second)).toBe(2);
    expect(await onDisk(app, id)).toBe(1);
    expect(await own.box.waiting(id)).toHaveLength(1);
  });

  test("what is typed on meanwhile stays, and is not sent until one way is chosen", async () => {
    const { app, id, second } = await inConflict();
    await second.change(schoolOf(3));
    await second.settled();
    expect(second.standing.is).toBe("conflict");
    expect(await onDisk(app, id)).toBe(1);
    await second.keepMine();
    expect(await onDisk(app, id)).toBe(3);
  });

  test("keeping mine leaves the other's among the versions", async () => {
    const { app, id, second } = await inConflict();
    await second.keepMine();
    expect(second.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(2);
    expect(await areaIn(app, id, 2)).toBe(1);
  });

  test("keeping theirs lets mine go", async () => {
    const { app, id, own, second } = await inConflict();
    await second.keepTheirs();
    expect(areaOf(second)).toBe(1);
    expect(second.standing.is).toBe("saved");
    expect(await onDisk(app, id)).toBe(1);
    expect(await own.box.waiting(id)).toEqual([]);
  });

  test("keeping both makes a site of mine, its past with it", async () => {
    const { app, id, second } = await inConflict();
    const copy = await second.keepBoth("Second school (invented)");
    expect(await onDisk(app, id)).toBe(1);
    expect(await onDisk(app, copy.id)).toBe(2);
    expect((await getState(app, copy.id)).name).toBe("Second school (invented)");
    expect((await getState(app, copy.id)).versions).toBe(3);
    expect(second.standing.is).toBe("saved");
  });
});

describe("undo and redo", () => {
  test("go after what was just typed has been saved", async () => {
    const { app, id, tab } = await begun();
    await tab.change(schoolOf(1));
    await tab.change(schoolOf(2));
    await tab.undo();
    expect(tab.state?.redo).not.toBeNull();
    const back = areaOf(tab);
    expect(back).toBe(await onDisk(app, id));
    await tab.redo();
    expect(areaOf(tab)).toBe(2);
    await tab.restore(1);
    expect(areaOf(tab)).toBe(2400);
  });

  test("without the server are refused, and nothing typed is lost", async () => {
    const { wire, tab } = await begun();
    wire.weather = "down";
    await tab.change(schoolOf(1));
    await expect(tab.undo()).rejects.toThrow();
    expect(areaOf(tab)).toBe(1);
  });

  test("on a state that is gone show what is there now", async () => {
    const { id, wire, own, tab } = await begun();
    const second = await openTab(wire, id, own);
    await tab.change(schoolOf(1));
    await tab.settled();
    await expect(second.undo()).rejects.toMatchObject({ problem: { status: 412 } });
    expect(areaOf(second)).toBe(1);
  });
});
