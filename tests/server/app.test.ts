import { describe, expect, test } from "vitest";
import { ask, own, port, post, problemOf, standInApp } from "./stand-in.ts";

const app = standInApp();

describe("who may ask", () => {
  test.each([`127.0.0.1:${port}`, `localhost:${port}`, `LOCALHOST:${port}`, `[::1]:${port}`])(
    "%s may",
    async (Host) => {
      expect((await ask(app, "/healthz", { headers: { Host } })).status).toBe(200);
    },
  );

  test.each([
    "elsewhere.example",
    `elsewhere.example:${port}`,
    "127.0.0.1",
    "127.0.0.1:80",
    `127.0.0.1.example:${port}`,
  ])("a request for the host %s is refused", async (Host) => {
    const answer = await ask(app, "/healthz", { headers: { Host } });
    expect(answer.status).toBe(403);
    expect(JSON.stringify(await problemOf(answer))).not.toContain("example");
  });

  test("a request that names no host is refused", async () => {
    expect((await app.request("/healthz")).status).toBe(403);
  });

  test.each([
    "https://elsewhere.example",
    "null",
    `https://127.0.0.1:${port}`,
    "http://127.0.0.1:9",
    "http://localhost",
  ])("a script of %s is refused", async (Origin) => {
    const answer = await post(app, { survey: { beds: [] } }, { Origin });
    expect(answer.status).toBe(403);
    await problemOf(answer);
  });

  test("the page's own script may", async () => {
    const answer = await post(app, { survey: { beds: [] } }, { Origin: `http://localhost:${port}` });
    expect(answer.status).toBe(200);
  });
});

describe("what every answer carries", () => {
  test.each(["/", "/healthz", "/nowhere", "/api/estimate"])("%s", async (path) => {
    const { headers } = await ask(app, path);
    const policy = headers.get("Content-Security-Policy") ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(headers.get("X-Content-Type-Options")).toBe("nosniff");
    expect(headers.get("Referrer-Policy")).toBe("no-referrer");
    expect(headers.get("Cross-Origin-Opener-Policy")).toBe("same-origin");
    expect(headers.get("Cross-Origin-Resource-Policy")).toBe("same-origin");
    expect(headers.get("Cross-Origin-Embedder-Policy")).toBe("require-corp");
    expect(headers.get("Permissions-Policy")).toContain("camera=()");
    expect(headers.get("X-Powered-By")).toBeNull();
    expect(headers.get("Access-Control-Allow-Origin")).toBeNull();
  });

  test("a refused host's answer too", async () => {
    const { headers } = await ask(app, "/", { headers: { Host: "elsewhere.example" } });
    expect(headers.get("Content-Security-Policy")).toContain("default-src 'none'");
  });
});

describe("addresses and methods", () => {
  test.each([
    "/nowhere",
    "/api",
    "/api/nowhere",
    "/assets/../package.json",
    "/assets/%2e%2e/package.json",
    "/%00",
    "/%zz",
  ])("there is nothing at %s", async (path) => {
    const answer = await ask(app, path);
    expect(answer.status).toBe(404);
    expect(JSON.stringify(await problemOf(answer))).not.toContain("nowhere");
  });

  test.each([
    ["GET", "/api/estimate", "POST"],
    ["PUT", "/api/estimate", "POST"],
    ["POST", "/", "GET, HEAD"],
    ["DELETE", "/healthz", "GET, HEAD"],
    ["POST", "/api/openapi.json", "GET, HEAD"],
  ])("%s %s: allowed is %s", async (method, path, allowed) => {
    const answer = await ask(app, path, { method });
    expect(answer.status).toBe(405);
    expect(answer.headers.get("Allow")).toBe(allowed);
    await problemOf(answer);
  });

  test("HEAD gives the headers of GET and no body", async () => {
    const answer = await ask(app, "/", { method: "HEAD" });
    expect(answer.status).toBe(200);
    expect(answer.headers.get("Content-Type")).toContain("text/html");
    expect(await answer.text()).toBe("");
  });
});

describe("the page", () => {
  test("is asked for again each time, and not sent again where it is the same", async () => {
    const first = await ask(app, "/");
    expect(first.headers.get("Cache-Control")).toBe("no-cache");
    expect(await first.text()).toContain("<title>");
    const etag = first.headers.get("ETag") ?? "";
    const second = await ask(app, "/", { headers: { ...own, "If-None-Match": etag } });
    expect(second.status).toBe(304);
    expect(await second.text()).toBe("");
  });

  test("its hashed assets are kept for good", async () => {
    const answer = await ask(app, "/assets/page-a1b2c3d4.js");
    expect(answer.headers.get("Cache-Control")).toContain("immutable");
    expect(answer.headers.get("Content-Type")).toBe("text/javascript; charset=utf-8");
  });

  test("comes compressed to who can read that", async () => {
    const answer = await ask(app, "/", { headers: { ...own, "Accept-Encoding": "gzip" } });
    expect(answer.headers.get("Content-Encoding")).toBe("gzip");
    expect(answer.headers.get("Vary")).toContain("Accept-Encoding");
  });
});

test("a fault of the program itself is told in the terminal and not to the caller", async () => {
  const told: unknown[] = [];
  const failing = standInApp({
    estimate: () => {
      throw new TypeError("secret of the house");
    },
    logFault: (error) => told.push(error),
  });
  const answer = await post(failing, { survey: { beds: [] } });
  expect(answer.status).toBe(500);
  expect(JSON.stringify(await problemOf(answer))).not.toContain("secret");
  expect(told).toHaveLength(1);
});
