import { describe, expect, test } from "vitest";
import { ask, problemOf } from "../stand-in.ts";
import { create, getState, record, school, send, stateOf, testApp } from "./helpers.ts";

const header = "date,kind,id,minutes,litres,rain_mm,days,level_L,group";

describe("the weather record", () => {
  test("is kept as it came, with its span", async () => {
    const app = testApp();
    const { id, weather } = await create(app);
    expect(weather).toBeNull();
    expect((await ask(app, `/api/sites/${id}/weather`)).status).toBe(404);
    const state = await stateOf(await send(app, "PUT", `/api/sites/${id}/weather`, record));
    expect(state.weather).toMatchObject({ from: "2024-01-01", to: "2024-01-02", days: 2 });
    const read = await ask(app, `/api/sites/${id}/weather`);
    expect(read.headers.get("Content-Type")).toBe("text/csv; charset=utf-8");
    expect(await read.text()).toBe(record);
  });

  test("that is there already is replaced only by who has seen it", async () => {
    const app = testApp();
    const { id, weather } = await create(app, { survey: school(), weather: record });
    const other = record.replace("1.5", "2.5");
    const put = (headers: Record<string, string>) =>
      send(app, "PUT", `/api/sites/${id}/weather`, other, headers);
    expect((await put({})).status).toBe(428);
    expect((await put({ "If-Match": '"old"' })).status).toBe(412);
    expect((await put({ "If-Match": `"${weather!.etag}"` })).status).toBe(200);
  });

  test("as rows comes with a new site too", async () => {
    const app = testApp();
    const rows = [
      { date: "2024-01-01", rain_mm: 1.5, et0_mm: 0.8 },
      { date: "2024-01-02", rain_mm: 0, et0_mm: 1 },
    ];
    const { id } = await create(app, { survey: school(), weather: rows });
    expect(await (await ask(app, `/api/sites/${id}/weather`)).text()).toBe(record);
  });

  test.each([
    ["date,rain_mm\n2024-01-01,wet\n", "text/csv", 422],
    ["", "text/csv", 400],
    [record, "text/plain", 415],
    [record, "text/csv; charset=latin1", 415],
  ])("refuses %j as %s: %i", async (body, type, status) => {
    const app = testApp();
    const { id } = await create(app);
    const answer = await send(app, "PUT", `/api/sites/${id}/weather`, body, { "Content-Type": type });
    expect(answer.status).toBe(status);
    await problemOf(answer);
    expect((await getState(app, id)).weather).toBeNull();
  });
});

describe("the log", () => {
  test("gathers what was done, read and dipped, in the order it came", async () => {
    const app = testApp();
    const { id } = await create(app);
    const add = (entries: object[]) => send(app, "POST", `/api/sites/${id}/log`, { entries });
    await add([{ date: "2026-03-01", kind: "watering", id: "oval", minutes: 30 }]);
    await add([{ date: "2026-02-28", kind: "rain", rain_mm: 4.5, days: 3 }]);
    const state = await stateOf(
      await add([{ date: "2026-03-01", kind: "dip", id: "yard-tank", level_L: 900 }]),
    );
    expect(state.log.entries).toBe(3);
    const read = await ask(app, `/api/sites/${id}/log`);
    expect(await read.text()).toBe(
      `${header}\n2026-03-01,watering,oval,30,,,,,\n2026-02-28,rain,,,,4.5,3,,\n2026-03-01,dip,yard-tank,,,,,900,\n`,
    );
  });

  test("does not count twice what was sent twice with one key", async () => {
    const app = testApp();
    const { id } = await create(app);
    const body = { entries: [{ date: "2026-03-01", kind: "rain", rain_mm: 1 }] };
    const headers = { "Idempotency-Key": "a1" };
    await send(app, "POST", `/api/sites/${id}/log`, body, headers);
    const state = await stateOf(await send(app, "POST", `/api/sites/${id}/log`, body, headers));
    expect(state.log.entries).toBe(1);
  });

  test("does not stand in the way of who saves the survey", async () => {
    const app = testApp();
    const before = await create(app);
    await send(app, "POST", `/api/sites/${before.id}/log`, {
      entries: [{ date: "2026-03-01", kind: "rain", rain_mm: 1 }],
    });
    expect((await getState(app, before.id)).etag).toBe(before.etag);
  });

  test("as CSV is added to, or put in the place of the one before by who has seen it", async () => {
    const app = testApp();
    const { id } = await create(app);
    const csv = `${header}\n2026-03-01,rain,,,,1,,,\n`;
    const added = await stateOf(await send(app, "POST", `/api/sites/${id}/log`, csv));
    expect(added.log.entries).toBe(1);
    const put = (headers: Record<string, string>) =>
      send(app, "PUT", `/api/sites/${id}/log`, `${header}\n`, headers);
    expect((await put({})).status).toBe(428);
    expect((await put({ "If-Match": '"old"' })).status).toBe(412);
    expect((await put({ "If-Match": `"${added.log.etag}"` })).status).toBe(200);
    expect((await getState(app, id)).log.entries).toBe(0);
  });

  test.each([
    ["2026-02-30,rain,,,,1,,,", ["row 2, date"]],
    ["2026-03-01,shower,,,,1,,,", ["row 2, kind"]],
    ["2026-03-01,rain,,,,-1,,,", ["row 2, rain_mm"]],
    ["2026-03-01,rain,,,,much,,,", ["row 2, rain_mm"]],
    ["2026-03-01,rain,,,,,,,", ["row 2, rain_mm"]],
    ["2026-03-01,rain,,5,,1,,,", ["row 2, minutes"]],
    ["2026-03-01,watering,oval,,,,,,", ["row 2"]],
    ["2026-03-01,watering,,10,,,,,", ["row 2, id"]],
    ["2026-03-01,dip,yard-tank,,,,,,", ["row 2, level_L"]],
    ["2026-03-01,rain,,,,1,1.5,,\n2026-03-01,dip,,,,,,,", ["row 2, days", "row 3, id", "row 3, level_L"]],
  ])("refuses %j with each fault, and keeps none of it", async (rows, paths) => {
    const app = testApp();
    const { id } = await create(app);
    const answer = await send(
      app,
      "POST",
      `/api/sites/${id}/log`,
      `${header}\n${rows}\n2026-03-02,rain,,,,1,,,\n`,
    );
    expect(answer.status).toBe(422);
    const { faults } = await problemOf(answer);
    expect(faults.map(({ path }) => path)).toEqual(paths);
    for (const { sentence } of faults) expect(sentence).toMatch(/^[A-Z].*\.$/);
    expect((await getState(app, id)).log.entries).toBe(0);
  });

  test("refuses a header that is not its own, and says which is meant", async () => {
    const app = testApp();
    const { id } = await create(app);
    const answer = await send(app, "POST", `/api/sites/${id}/log`, "date,kind,rain\n2026-03-01,rain,1\n");
    expect((await problemOf(answer)).faults).toEqual([
      { path: "row 1, rain", sentence: 'There is no column named "rain" in a log. Is "rain_mm" meant?' },
    ]);
  });
});
