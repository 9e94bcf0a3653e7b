import { describe, expect, test } from "vitest";
import { ask, post, problemOf, standInApp } from "./stand-in.ts";

const app = standInApp();
const json = { "Content-Type": "application/json" };

describe("what an estimate is given", () => {
  test("a survey and a record as CSV text", async () => {
    const answer = await post(app, { survey: { beds: [] }, weather: "date,rain_mm\n2020-01-01,0\n" });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("Cache-Control")).toBe("no-store");
    expect(await answer.json()).toEqual({ need_mm: 1 });
  });

  test("a record as rows reaches the reader as rows", async () => {
    let given: unknown;
    const listening = standInApp({
      readRecord: (weather) => {
        given = weather;
        return { ok: false, faults: [] };
      },
    });
    await post(listening, { survey: { beds: [] }, weather: [{ date: "2020-01-01", rain_mm: 0 }] });
    expect(given).toEqual([{ date: "2020-01-01", rain_mm: 0 }]);
  });

  test("faults of survey and record come in one answer", async () => {
    const refusing = standInApp({
      readSurvey: () => ({ ok: false, faults: [{ path: "beds[0].area_m2", sentence: "One." }] }),
      readRecord: () => ({ ok: false, faults: [{ path: "row 2, rain_mm", sentence: "Two." }] }),
    });
    const answer = await post(refusing, { survey: {}, weather: "" });
    expect(answer.status).toBe(422);
    expect((await problemOf(answer)).faults.map((fault) => fault.path)).toEqual([
      "beds[0].area_m2",
      "row 2, rain_mm",
    ]);
  });
});

describe("bodies that are refused before they are read", () => {
  test.each([
    undefined,
    "text/plain",
    "application/x-www-form-urlencoded",
    "application/json; charset=latin1",
  ])("content type %s", async (type) => {
    const headers: Record<string, string> = type === undefined ? {} : { "Content-Type": type };
    const body = new TextEncoder().encode("{}");
    const answer = await ask(app, "/api/estimate", { method: "POST", body, headers });
    expect(answer.status).toBe(415);
    await problemOf(answer);
  });

  test("a compressed one", async () => {
    expect((await post(app, "{}", { "Content-Encoding": "gzip" })).status).toBe(415);
  });

  test.each([
    "",
    " ",
    "{",
    '{"survey":',
    "{'survey':1}",
    "NaN",
    "undefined",
    '{"survey":{}} extra',
    "\u0000",
  ])("text that is not JSON: %j", async (body) => {
    const answer = await post(app, body);
    expect(answer.status).toBe(400);
    await problemOf(answer);
  });

  test("bytes that are not UTF-8", async () => {
    const body = new Uint8Array([0x7b, 0x22, 0xff, 0xfe, 0x22, 0x7d]);
    expect((await ask(app, "/api/estimate", { method: "POST", body, headers: json })).status).toBe(400);
  });

  test("nesting of a hundred thousand levels", async () => {
    const answer = await post(app, `{"survey":${"[".repeat(100_000)}${"]".repeat(100_000)}}`);
    expect(answer.status).toBe(400);
    expect((await problemOf(answer)).detail).toContain("40 levels");
  });

  test("brackets inside text are no nesting", async () => {
    const answer = await post(app, { survey: { beds: [], note: `"\\${"[".repeat(1000)}` } });
    expect(answer.status).toBe(200);
  });

  test("a body that says it is too large", async () => {
    const answer = await post(app, "{}", { "Content-Length": "40000000" });
    expect(answer.status).toBe(413);
    expect((await problemOf(answer)).detail).toContain("32 MB");
  });

  test("a body that grows too large while it comes", async () => {
    const mebibyte = new Uint8Array(1024 * 1024).fill(0x20);
    let sent = 0;
    const body = new ReadableStream<Uint8Array>({
      pull(controller) {
        sent += 1;
        if (sent > 64) controller.close();
        else controller.enqueue(mebibyte);
      },
    });
    const init = { method: "POST", body, headers: json, duplex: "half" } as RequestInit;
    const answer = await ask(app, "/api/estimate", init);
    expect(answer.status).toBe(413);
    expect(sent).toBeLessThan(40);
  });

  test.each([[null], [[]], ["text"], [7]])("a body that is %j", async (body) => {
    const answer = await post(app, JSON.stringify(body));
    expect(answer.status).toBe(422);
    expect((await problemOf(answer)).faults).toHaveLength(1);
  });

  test("every fault of the body's own form is listed", async () => {
    const answer = await post(app, { weather: 4, wether: 1, ["x".repeat(500)]: 1 });
    const problem = await problemOf(answer);
    expect(problem.faults.map((fault) => fault.path)).toEqual([
      "wether",
      `${"x".repeat(39)}…`,
      "survey",
      "weather",
    ]);
  });

  test("more beds and days than one request may ask for", async () => {
    const long = standInApp({
      readRecord: () => ({
        ok: true,
        value: { firstDay: 0, days: 70_000, columns: { rain_mm: new Float64Array(0) } },
      }),
    });
    const answer = await post(long, { survey: { beds: new Array(500).fill({}) }, weather: "" });
    expect(answer.status).toBe(422);
    expect((await problemOf(answer)).faults[0]?.sentence).toContain("70,000 days");
  });
});
