import { describe, expect, test } from "vitest";
import { ask, problemOf, standInApp } from "./stand-in.ts";

const app = standInApp();
const reading = { headers: { Accept: "text/html,application/xhtml+xml" } };

describe("addresses that the page tells apart", () => {
  test.each(["/first", "/demo", "/site/anything", "/site/anything/walk/beds/oval"])(
    "%s is the page",
    async (path) => {
      const answer = await ask(app, path, reading);
      expect(answer.status).toBe(200);
      expect(answer.headers.get("Content-Type")).toContain("text/html");
      expect(answer.headers.get("Cache-Control")).toBe("no-cache");
      expect(await answer.text()).toContain("a page");
    },
  );

  test("somebody who reads gets the page at an address that is not there, and a status that says so", async () => {
    const answer = await ask(app, "/nowhere", reading);
    expect(answer.status).toBe(404);
    expect(await answer.text()).toContain("a page");
  });

  test("a program, and whoever asks the API, gets a problem document", async () => {
    expect((await problemOf(await ask(app, "/nowhere"))).status).toBe(404);
    expect((await problemOf(await ask(app, "/api/nowhere", reading))).status).toBe(404);
  });

  test("the device's position may be asked for by the page itself and by nobody else", async () => {
    const { headers } = await ask(app, "/first", reading);
    expect(headers.get("Permissions-Policy")).toContain("geolocation=(self)");
  });
});
