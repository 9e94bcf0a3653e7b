import "../../../src/survey/without-compiling.ts";

import type { Answers, Ask, Kind, Post, Reply } from "./messages.ts";

const lastOf = new Map<Kind, number>();

type Tell = (told: Answers[Kind], isLast: boolean) => void;

/** Each kind of work is loaded when it is first asked for. */
async function carryOut(ask: Ask, tell: Tell, isOvertaken: () => boolean): Promise<void> {
  switch (ask.kind) {
    case "answer": {
      const { answerOf } = await import("./answer.ts");
      return tell(answerOf(ask.survey, ask.weather), true);
    }
    case "warm":
      await import("./answer.ts");
      return tell(null, true);
    case "explain": {
      if (ask.address.startsWith("choices/")) {
        const { choiceWorkingOf } = await import("./choices-workings.ts");
        return tell({ working: choiceWorkingOf(ask.address, ask.units) }, true);
      }
      const { workingOf } = await import("./workings.ts");
      return tell({ working: workingOf(ask.address, ask.units) }, true);
    }
    case "class-sheet": {
      const { classSheetOf } = await import("./workings.ts");
      return tell({ html: classSheetOf(ask.bed, ask.units) }, true);
    }
    case "thirst": {
      const { thirstOf } = await import("./water.ts");
      return tell({ view: thirstOf() }, true);
    }
    case "tanks": {
      const { tanksOf } = await import("./water.ts");
      return tell({ view: tanksOf() }, true);
    }
    case "width": {
      const { drawWidth } = await import("./width.ts");
      return drawWidth(tell, isOvertaken);
    }
    case "question": {
      const { replyTo } = await import("./water.ts");
      return tell({ reply: replyTo(ask.question) }, true);
    }
    case "preview": {
      const { previewOf } = await import("./preview.ts");
      return tell({ preview: previewOf(ask.name, ask.text, ask.given) }, true);
    }
    case "first": {
      const { firstAnswer } = await import("./first.ts");
      return firstAnswer(ask, tell, isOvertaken);
    }
  }
}

addEventListener("message", async (event: MessageEvent<Post>) => {
  const { id, ask } = event.data;
  const { kind } = ask;
  lastOf.set(kind, id);
  const post = (reply: Reply) => postMessage(reply);
  // what was asked again meanwhile need not be worked out any more
  await new Promise((resolve) => setTimeout(resolve));
  const isOvertaken = () => lastOf.get(kind) !== id;
  if (isOvertaken()) return;
  try {
    await carryOut(ask, (told, isLast) => post({ id, kind, told, isLast }), isOvertaken);
  } catch (error) {
    post({ id, kind, crash: error instanceof Error ? error.message : String(error) });
  }
});
