import { expect, test } from "vitest";
import { inTurn } from "../../../components/look/ask.ts";
import type { Question, Reply } from "../../../src/report/questions.ts";

const limitOf = (tank: string): Question => ({ kind: "tank-limit", tank });

test("questions are asked one after the other, whatever came of the one before", async () => {
  const told: string[] = [];
  let under = 0;
  const ask = inTurn(async (question): Promise<Reply | null> => {
    expect(++under).toBe(1);
    await new Promise((soon) => setTimeout(soon, 1));
    under--;
    const { tank } = question as Extract<Question, { kind: "tank-limit" }>;
    told.push(tank);
    if (tank === "b") throw new Error("the calculation stopped");
    return null;
  });
  const all = await Promise.allSettled([ask(limitOf("a")), ask(limitOf("b")), ask(limitOf("c"))]);
  expect(told).toEqual(["a", "b", "c"]);
  expect(all.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled"]);
});
