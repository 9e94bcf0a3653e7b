import { type ChildProcess, spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { root } from "../../../structure/sources.ts";

export interface Outcome {
  kills: number;
  /** Saves that the server answered for, surveys and entries of the log. */
  answered: number;
  /** What the server had answered for and did not have after it was started again. */
  lost: string[];
}

interface Server {
  child: ChildProcess;
  address: string;
}

const writers = 4;

/**
 * Kills a server (SIGKILL) again and again while four tabs save surveys and log entries without pause, starts it
 * on the same data each time, and looks for everything it had answered for.
 * @param kill_ms how long the server may live, drawn by the caller
 */
export async function killAgainAndAgain(
  folder: string,
  kills: number,
  kill_ms: () => number,
): Promise<Outcome> {
  const survey = JSON.parse(readFileSync(`${root}demo/school.survey.json`, "utf8"));
  let server = await start(folder);
  const tabs = await Promise.all(
    Array.from({ length: writers }, async () => new Tab(await createSite(server.address, survey), survey)),
  );
  const lost: string[] = [];
  for (let kill = 1; kill <= kills; kill++) {
    const stopped = new Promise<void>((resolve) => server.child.once("exit", () => resolve()));
    setTimeout(() => server.child.kill("SIGKILL"), kill_ms());
    await Promise.all(tabs.map((tab) => tab.saveUntilGone(server.address)));
    await stopped;
    server = await start(folder);
    for (const tab of tabs)
      lost.push(...(await tab.missing(server.address)).map((what) => `kill ${kill}: ${what}`));
  }
  server.child.kill("SIGKILL");
  const answered = tabs.reduce((sum, tab) => sum + tab.answered, 0);
  return { kills, answered, lost };
}

/** A save that the server refused: none should be. */
class Refused extends Error {
  override name = "Refused";
}

/** One tab at work: it knows what the server has answered for. */
class Tab {
  answered = 0;
  #id: string;
  #survey: { beds: { area_m2: number }[] };
  #area_m2 = 0;
  #version = 1;
  #entries = 0;
  #etag = "*";
  #refused: string[] = [];

  constructor(id: string, survey: { beds: { area_m2: number }[] }) {
    this.#id = id;
    this.#survey = structuredClone(survey);
  }

  async saveUntilGone(address: string): Promise<void> {
    for (let area = (this.#area_m2 % 50_000) + 1; ; area = (area % 50_000) + 1) {
      try {
        if (area % 3 === 0) await this.#log(address);
        else await this.#save(address, area);
      } catch (error) {
        if (error instanceof Refused) this.#refused.push(error.message);
        return;
      }
    }
  }

  async #save(address: string, area_m2: number): Promise<void> {
    this.#survey.beds[0]!.area_m2 = area_m2;
    const answer = await fetch(`${address}/api/sites/${this.#id}/survey`, {
      method: "PUT",
      headers: { "Content-Type": "application/json", "If-Match": this.#etag },
      body: JSON.stringify(this.#survey),
    });
    const state = await answer.json();
    if (!answer.ok) throw new Refused(JSON.stringify(state));
    this.#area_m2 = area_m2;
    this.#version = state.version;
    this.#etag = `"${state.etag}"`;
    this.answered += 1;
  }

  async #log(address: string): Promise<void> {
    const answer = await fetch(`${address}/api/sites/${this.#id}/log`, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify({ entries: [{ date: "2026-03-01", kind: "rain", rain_mm: 1 }] }),
    });
    const state = await answer.json();
    if (!answer.ok) throw new Refused(JSON.stringify(state));
    this.#entries = state.log.entries;
    this.answered += 1;
  }

  /** What was answered for and is not there. A save that was under way may be there or not. */
  async missing(address: string): Promise<string[]> {
    const answer = await fetch(`${address}/api/sites/${this.#id}/state`);
    if (!answer.ok) return [`site ${this.#id}: ${answer.status}`];
    const state = await answer.json();
    this.#etag = `"${state.etag}"`;
    const lost = this.#refused.splice(0);
    if (state.log.entries < this.#entries)
      lost.push(`${this.#entries - state.log.entries} entries of the log`);
    if (this.#area_m2 > 0) {
      const version = await fetch(`${address}/api/sites/${this.#id}/versions/${this.#version}`);
      const kept = version.ok ? await version.json() : null;
      if (kept?.beds[0].area_m2 !== this.#area_m2) lost.push(`version ${this.#version}`);
      if (state.version < this.#version) lost.push(`version ${this.#version} is not at hand`);
    }
    return lost;
  }
}

async function createSite(address: string, survey: object): Promise<string> {
  const answer = await fetch(`${address}/api/sites`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ survey }),
  });
  return (await answer.json()).id;
}

function start(folder: string): Promise<Server> {
  const child = spawn(process.execPath, ["--import", "tsx", "tests/server/store/kill/serve.ts", folder], {
    cwd: root,
  });
  return new Promise((resolve, reject) => {
    let out = "";
    child.stdout.on("data", (part) => {
      out += part;
      const port = /port (\d+)/.exec(out)?.[1];
      if (port !== undefined) resolve({ child, address: `http://127.0.0.1:${port}` });
    });
    child.stderr.on("data", (part) => {
      out += part;
    });
    child.once("exit", () => reject(new Error(`The server did not start. ${out}`)));
  });
}
