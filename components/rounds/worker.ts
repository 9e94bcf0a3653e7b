import "../../src/survey/without-compiling.ts";

import type { RoundsPost, RoundsReply } from "./messages.ts";

addEventListener("message", async ({ data: { id, ask } }: MessageEvent<RoundsPost>) => {
  let reply: RoundsReply;
  try {
    const { carryOut } = await import("./work.ts");
    reply = { id, told: await carryOut(ask) };
  } catch (error) {
    reply = { id, crash: error instanceof Error ? error.message : String(error) };
  }
  postMessage(reply);
});
