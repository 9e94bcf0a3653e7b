import type { AnswerView } from "../report/view.ts";
import { answer, fractionWords, type Sentence, type Slot, yearWords } from "./en/page.ts";
import type { Formatter } from "./format.ts";

/** The answer in words: what is said first, the headline, and what follows it. */
export interface Spoken {
  /** Beds that get less than they need; said before all else. */
  first: Sentence | null;
  headline: Sentence;
  after: readonly Sentence[];
}

/** Chooses the sentences that the figures bear; no saving is claimed where today is not known. */
export function speak(view: AnswerView, say: Formatter): Spoken {
  const { mains, standing } = view;
  const slot = (at: string, kL: number): Slot => ({ at, text: say.yearly(kL) });
  const bare = (at: string, kL: number): Slot => ({ at, text: say.yearlyBare(kL) });
  if (standing === "no-beds") return { first: null, headline: answer.noBeds, after: [] };
  if (standing === "no-need") return { first: null, headline: answer.noNeed, after: [] };

  const giveUp_kL = mains.giveUp_kL.p50;
  const need = slot("need", mains.need_kL);
  const tanks = mains.tanks_kL > 0 ? [answer.tanksBring(slot("tanks", mains.tanks_kL))] : [];
  const needYears = answer.needYears(
    mains.dry && bare("dry-need", mains.dry.need_kL),
    mains.wet && bare("wet-need", mains.wet.need_kL),
  );
  if (standing === "need-only") {
    return { first: null, headline: answer.need(need), after: [needYears, ...tanks, [answer.noSaving]] };
  }
  const year = view.years.length > 0 ? yearWords.middle : yearWords.partial;
  const short = giveUp_kL < 0;
  const size = slot("give-up", Math.abs(giveUp_kL));
  const change = (of: typeof mains.dry, at: string) => of && bare(at, Math.abs(of.today_kL - of.plan_kL));
  const sameWay = [mains.dry, mains.wet].every((y) => y === null || y.today_kL - y.plan_kL < 0 === short);
  const yearsOf = short ? answer.shortYears : answer.years;
  const years = sameWay ? yearsOf(change(mains.dry, "dry"), change(mains.wet, "wet")) : [];
  // watering to need is one of the measures listed
  const planned: Sentence =
    view.measures.length > 1
      ? answer.withMeasures(view.measures.length - 1, bare("plan", mains.plan_kL))
      : [];
  const first = bedsShort(view, say);
  if (standing === "partly-known") {
    const unknown_kL = view.unknown.reduce((sum, b) => sum + b.gross_L_year, 0) / 1000;
    const unknown = answer.unknown(
      view.unknown.map((b) => b.name),
      slot("unknown", unknown_kL),
    );
    const where = short ? answer.partlyShort(size, year) : answer.partly(size, year);
    // where most of the need stands in for something not known, the need is the answer
    if (unknown_kL > mains.need_kL / 2)
      return { first, headline: answer.need(need), after: [needYears, where, years, unknown] };
    return { first, headline: where, after: [years, unknown, answer.toNeed(need), planned] };
  }
  const taken = answer.todayAndNeed(slot("today", mains.today_kL), bare("need", mains.need_kL));
  if (Math.abs(giveUp_kL) < 0.02 * mains.today_kL)
    return { first, headline: answer.even(need), after: [...tanks] };
  if (short) return { first: null, headline: answer.short(size, year), after: [years, taken, planned] };
  return {
    first,
    headline: answer.saving(size, fractionWords(giveUp_kL / mains.today_kL), year),
    after: [years, taken, planned],
  };
}

function bedsShort(view: AnswerView, say: Formatter): Sentence | null {
  const short = view.beds.filter((b) => b.supply !== "none" && b.lacks);
  if (short.length === 0) return null;
  const missing_L = short.reduce((sum, b) => sum + b.gross_L_year - (b.habit_L_year ?? 0), 0);
  const names = short.map((b) => b.name);
  return answer.bedsShort(names, { at: "beds-short", text: say.yearly(missing_L / 1000) });
}
