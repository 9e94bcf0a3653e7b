import * as z from "zod";

export const amount = (meaning: string) => z.number().describe(meaning);
export const maybe = (meaning: string) => z.number().nullable().describe(meaning);
export const words = (meaning: string) => z.string().describe(meaning);
export const id = (of: string) => z.string().describe(`Id of ${of}`);
export const share = (meaning: string) => z.number().min(0).max(1).describe(`${meaning}, 0 to 1`);
export const members = (meaning: string) =>
  z.array(z.string().describe("Id of a measure, or water-to-need")).describe(meaning);

/** 10, 50 and 90 % points. */
export const points = (meaning: string) =>
  z
    .strictObject({
      p10: maybe("10 % point"),
      p50: maybe("50 % point"),
      p90: maybe("90 % point"),
    })
    .describe(meaning);
