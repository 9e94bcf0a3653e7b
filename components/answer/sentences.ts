import { answer, fractionWords, type Sentence, type Slot } from "../../src/words/en/page.ts";
import type { Formatter } from "../format.ts";
import { type AnswerView, isShort } from "./view.ts";

/** The answer in words: what is said first, the headline, and what follows it. */
export interface Spoken {
  /** Beds that get less than they need; said before all else. */
  first: Sentence | null;
  headline: Sentence;
  then: readonly Sentence[];
}

/** Chooses the sentences that the figures bear; no saving is claimed where today is not known. */
export function speak(view: AnswerView, say: Formatter): Spoken {
  const { mains, standing } = view;
  const slot = (at: string, kL: number): Slot => ({ at, text: say.yearly(kL) });
  const bare = (at: string, kL: number): Slot => ({ at, text: say.yearlyBare(kL) });
  if (standing === "no-beds") return { first: null, headline: answer.noBeds, then: [] };
  if (standing === "no-need") return { first: null, headline: answer.noNeed, then: [] };

  const giveUp_kL = mains.giveUp_kL.p50;
  const need = slot("need", mains.need_kL);
  const tanks = mains.tanks_kL > 0 ? [answer.tanksBring(slot("tanks", mains.tanks_kL))] : [];
  const needYears = answer.needYears(
    mains.dry && bare("dry-need", mains.dry.need_kL),
    mains.wet && bare("wet-need", mains.wet.need_kL),
  );
  if (standing === "need-only") {
    return { first: null, headline: answer.need(need), then: [needYears, ...tanks, [answer.noSaving]] };
  }
  const short = giveUp_kL < 0;
  const size = slot("give-up", Math.abs(giveUp_kL));
  const change = (year: typeof mains.dry, at: string) =>
    year && bare(at, Math.abs(year.today_kL - year.plan_kL));
  const sameWay = [mains.dry, mains.wet].every((y) => y === null || y.today_kL - y.plan_kL < 0 === short);
  const yearsOf = short ? answer.shortYears : answer.years;
  const years = sameWay ? yearsOf(change(mains.dry, "dry"), change(mains.wet, "wet")) : [];
  const first = bedsShort(view, say);
  if (standing === "partly-known") {
    const needFirst = answer.need(need);
    const where = short ? answer.partlyShort(size) : answer.partly(size);
    return { first, headline: needFirst, then: [where, years, ...tanks] };
  }
  const taken = answer.todayAndNeed(slot("today", mains.today_kL), bare("need", mains.need_kL));
  if (Math.abs(giveUp_kL) < 0.02 * mains.today_kL)
    return { first, headline: answer.even(need), then: [...tanks] };
  if (short) return { first: null, headline: answer.short(size), then: [years, taken] };
  return {
    first,
    headline: answer.saving(size, fractionWords(giveUp_kL / mains.today_kL)),
    then: [years, taken],
  };
}

function bedsShort(view: AnswerView, say: Formatter): Sentence | null {
  const short = view.beds.filter((b) => b.supply !== "none" && isShort(b));
  if (short.length === 0) return null;
  const missing_L = short.reduce((sum, b) => sum + b.gross_L_year - (b.habit_L_year ?? 0), 0);
  const names = short.map((b) => b.name);
  return answer.bedsShort(names, { at: "beds-short", text: say.yearly(missing_L / 1000) });
}
