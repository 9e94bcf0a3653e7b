import "../../src/survey/without-compiling.ts";

import type { Ask } from "./messages.ts";
import { Desk } from "./work.ts";

const desk = new Desk((told) => postMessage(told));

addEventListener("message", async ({ data }: MessageEvent<Ask>) => {
  try {
    await desk.hear(data);
  } catch (error) {
    const id = "id" in data ? data.id : 0;
    postMessage({ kind: "crash", id, words: error instanceof Error ? error.message : String(error) });
  }
});
