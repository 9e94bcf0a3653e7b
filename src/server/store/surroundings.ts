import { randomBytes } from "node:crypto";
import type { Surroundings } from "./open.ts";

/** The world as it is: the computer's clock, and words by chance (80 bits). */
export const surroundings: Surroundings = {
  now: () => new Date(),
  freshWord: () =>
    BigInt(`0x${randomBytes(10).toString("hex")}`)
      .toString(36)
      .padStart(16, "0"),
};
