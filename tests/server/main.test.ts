import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, expect, test } from "vitest";
import { root } from "../structure/sources.ts";

const running: ChildProcess[] = [];
const data = mkdtempSync(join(tmpdir(), "grounds-main-"));
afterAll(() => rmSync(data, { recursive: true, force: true }));

afterEach(() => {
  for (const child of running.splice(0)) child.kill("SIGKILL");
});

interface Run {
  child: ChildProcess;
  /** What it printed so far. */
  out(): string;
  err(): string;
  /** Waits until it has printed something that matches. */
  says(pattern: RegExp): Promise<RegExpMatchArray>;
  exit: Promise<number | null>;
}

function start(...args: string[]): Run {
  const child = spawn(process.execPath, ["--import", "tsx", "src/server/main.ts", "--data", data, ...args], {
    cwd: root,
  });
  running.push(child);
  let out = "";
  let err = "";
  child.stderr.on("data", (part) => {
    err += part;
  });
  const says = (pattern: RegExp) =>
    new Promise<RegExpMatchArray>((resolve, reject) => {
      const look = () => {
        const found = out.match(pattern);
        if (found !== null) resolve(found);
      };
      child.stdout.on("data", look);
      child.once("exit", () => reject(new Error(`It ended first. ${out}\n${err}`)));
      look();
    });
  child.stdout.on("data", (part) => {
    out += part;
  });
  const exit = new Promise<number | null>((resolve) => child.once("exit", resolve));
  return { child, out: () => out, err: () => err, says, exit };
}

async function listening(run: Run): Promise<string> {
  const [, address = ""] = await run.says(/is at (http:\/\/127\.0\.0\.1:\d+\/)/);
  return address;
}

test("says the demo's answer, then its address, serves the page there, and stops on a signal", async () => {
  const run = start("--port", "0");
  const address = await listening(run);
  expect(run.out().indexOf("invented")).toBeGreaterThan(-1);
  expect(run.out().indexOf("invented")).toBeLessThan(run.out().indexOf(address));

  const page = await fetch(address);
  expect(page.status).toBe(200);
  expect(page.headers.get("Content-Type")).toContain("text/html");
  const script = (await page.text()).match(/src="\.?(\/assets\/[^"]+\.js)"/)?.[1];
  const asset = await fetch(new URL(script ?? "/none", address));
  expect(asset.headers.get("Cache-Control")).toContain("immutable");
  expect(asset.headers.get("Content-Type")).toContain("text/javascript");

  run.child.kill("SIGTERM");
  expect(await run.exit).toBe(0);
  expect(run.err()).toBe("");
});

test("on a busy port it ends with a sentence and status 1", async () => {
  const first = start("--port", "0");
  const { port } = new URL(await listening(first));
  const second = start("--port", port);
  expect(await second.exit).toBe(1);
  expect(second.err().trim()).toBe(
    `Port ${port} is in use by another program. Stop that one, or choose another port: npm start -- --port ${Number(port) + 1}`,
  );
});

test("an address that others reach is refused with status 2, nothing started", async () => {
  const run = start("--host", "0.0.0.0", "--open");
  expect(await run.exit).toBe(2);
  expect(run.err()).toMatch(/^--host must be 127\.0\.0\.1\..*\nThere is no option --open\..*\n$/);
  expect(run.out()).toBe("");
});
