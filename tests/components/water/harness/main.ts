import type { Working } from "../../../../src/explain/working.ts";
import type { Question, Reply } from "../../../../src/report/questions.ts";
import type { TanksView } from "../../../../src/report/tanks-view.ts";
import type { ThirstView } from "../../../../src/report/thirst-view.ts";
import { formatter } from "../../../../src/words/format.ts";
import type { Asked } from "./worker.ts";
import "../../../../components/tanks/tanks.ts";
import "../../../../components/thirst/thirst.ts";

const worker = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
const waiting = new Map<number, (told: unknown) => void>();
let last = 0;

worker.addEventListener("message", (event: MessageEvent<{ id: number; told: unknown }>) => {
  waiting.get(event.data.id)?.(event.data.told);
  waiting.delete(event.data.id);
});

function ask<T>(asked: Asked): Promise<T> {
  const id = ++last;
  return new Promise((resolve) => {
    waiting.set(id, resolve as (told: unknown) => void);
    worker.postMessage({ id, asked });
  });
}

const fetched = async (path: string) => (await fetch(path)).text();

/** `?at=tanks&units=us&survey=name&record=name`: mounts the element as a frame would. */
async function open(): Promise<void> {
  const given = new URLSearchParams(location.search);
  const at = given.get("at") ?? "thirst";
  const units = given.get("units") === "us" ? "us" : "metric";
  const survey = await fetched(`./surveys/${given.get("survey") ?? "school"}`);
  const record = await fetched(`./records/${given.get("record") ?? "seattle"}`);
  const views = await ask<{ thirst: ThirstView; tanks: TanksView }>({ kind: "start", survey, record });
  const element = document.createElement(at === "tanks" ? "gwb-tanks" : "gwb-thirst");
  document.querySelector("main")!.append(
    Object.assign(element, {
      view: at === "tanks" ? views.tanks : views.thirst,
      say: formatter(units, "en-GB"),
      ask: (question: Question) => ask<Reply>({ kind: "question", question }),
      explain: (address: string) => ask<Working | null>({ kind: "explain", at: address, units }),
    }),
  );
}

void open();
