import { expect, test } from "vitest";
import { freshFolder } from "../sites/helpers.ts";
import { killAgainAndAgain } from "./kill/kills.ts";

/** Lives from 60 to 450 ms: some end in a first save, some after dozens. */
function lives(): () => number {
  let kill = 0;
  return () => 60 + ((kill++ * 130) % 400);
}

test("twenty kills while saving lose nothing that was answered for", { timeout: 240_000 }, async () => {
  const { kills, answered, lost } = await killAgainAndAgain(freshFolder(), 20, lives());
  expect(lost).toEqual([]);
  expect(kills).toBe(20);
  expect(answered).toBeGreaterThan(20);
});
