import { roundNotes, roundSources, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Working } from "../working.ts";
import { nameOf, pageOf, type RoundBook, workedOut } from "./book.ts";

/** A month's seasonal percentage: its water beside that of the month that asks most. */
export function percentOf(book: RoundBook, month: number): Working | null {
  const { programme } = book.worked;
  const percent = programme?.percentByMonth[month];
  if (!programme || percent === undefined) return null;
  const peak_L = Math.max(...programme.litresByMonth);
  if (peak_L <= 0) return null;
  const { sheet, at } = pageOf(book, roundAt.percent(month));
  sheet.step(
    "percent",
    {
      beds_L: workedOut(programme.litresByMonth[month]!, roundSources.needRun),
      peak_L: workedOut(peak_L, roundSources.needRun),
    },
    percent,
  );
  return sheet.done(at, roundTitles.percent(month));
}

/** What a timer's programme gives a bed, and what it costs. */
export function timerOf(book: RoundBook, id: string, what: "minutes" | "water" | "stress"): Working | null {
  const { programme } = book.worked;
  const bed = programme?.beds.find((one) => one.id === id);
  if (!programme || !bed) return null;
  const { sheet, at } = pageOf(book, roundAt.timer(id, what));
  const name = nameOf(book, id);
  const { given_L, need_L, stressDays, needStressDays } = bed.cost;
  const ofProgramme = (value: number) => workedOut(value, roundSources.timerRun);
  const toNeed = (value: number) => workedOut(value, roundSources.needRun);
  if (what === "water") {
    if (need_L <= 0) return null;
    sheet.step("overLitres", { given_L: ofProgramme(given_L), need_L: toNeed(need_L) }, given_L / need_L - 1);
    return sheet.done(at, roundTitles.timerWater(name));
  }
  if (what === "stress") {
    sheet.step(
      "stressMoreYear",
      { stressYear: ofProgramme(stressDays), stressNeedYear: toNeed(needStressDays) },
      stressDays - needStressDays,
    );
    return sheet.done(at, roundTitles.timerStress(name));
  }
  if (bed.minutes === 0) return null;
  sheet.step(
    "timerMinutes",
    {
      longestDay_min: workedOut(bed.most_min, roundSources.hours),
      askedMinutes: toNeed(bed.asked_min),
      fullDays: workedOut(programme.fullDays, roundSources.percents),
    },
    bed.minutes,
  );
  sheet.note(roundNotes.search, roundSources.daysTried, {
    provenance: "worked-out",
    source: roundSources.timerRun,
  });
  return sheet.done(at, roundTitles.timer(name));
}
