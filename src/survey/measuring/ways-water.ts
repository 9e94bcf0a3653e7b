import { precipitationRate_mm_h, uniformityWithInterval } from "./catch-cans.ts";
import { habitOf } from "./habit-log.ts";
import type { Note } from "./note.ts";
import { deviation } from "./repeats.ts";
import { impossible, type Way, worked } from "./way.ts";

/** Cans below which a test says little: common practice asks for twenty or more. */
export const enoughCans = 20;

/** `wind`: 0 still, 1 leaves move, 2 more than that. */
const cans: Way = {
  code: "catch-cans",
  part: "water",
  slots: [
    { name: "wind", unit: "code" },
    { name: "minutes", unit: "min", by: "clock" },
    { name: "mouth", unit: "mm", by: "ruler" },
    { name: "can", unit: "mL", by: "cylinder", list: true },
  ],
  work(read) {
    const caught = read.raw("can");
    if (caught.length < 4) return impossible("too-few-cans", { found: caught.length, wanted: 4 });
    if (caught.every((mL) => mL === 0)) return impossible("cans-empty");
    const [minutes, mouth] = [read.of("minutes").figure, read.of("mouth").figure];
    if (minutes === 0 || mouth === 0) return impossible("no-time");
    const { low, high, figure, standardError } = uniformityWithInterval(caught);
    const rate = precipitationRate_mm_h(caught, mouth, minutes);
    const notes: Note[] = [
      { code: "uniformity-between", facts: { low, high } },
      { code: "precipitation-rate", facts: { rate_mm_h: rate } },
    ];
    if (caught.length < enoughCans)
      notes.push({ code: "few-cans", facts: { found: caught.length, wanted: enoughCans } });
    if (read.raw("wind")[0]! >= 2) notes.push({ code: "windy" });
    return worked({ distributionUniformity: { figure, standardError } }, notes);
  },
};

/** Minutes watered on each day of a week, Monday first, as logged. */
const habit: Way = {
  code: "habit-week",
  part: "water",
  slots: [{ name: "minutes-on-day", unit: "min", list: true }],
  work(read) {
    const week = read.raw("minutes-on-day");
    if (week.length !== 7) return impossible("not-a-week", { found: week.length });
    const { minutes, days } = habitOf(week);
    const waterings = week.filter((value) => value > 0);
    const standardError = waterings.length === 0 ? 0 : deviation(waterings) / Math.sqrt(waterings.length);
    return {
      ...worked({ "habit.minutes": { figure: minutes, standardError } }, [{ code: "one-week-only" }]),
      values: { "habit.days": days },
    };
  },
};

export const waterWays: readonly Way[] = [cans, habit];
