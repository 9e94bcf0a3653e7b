import { type Formula, f, ours } from "./formula.ts";

/** Formulas of sums over days and years. */
export const sumsFormulas = {
  mainsDay: f("mains", "Σ {mains}", "beds, draws that a tank is short of, top-up and leaks", ours),
  mainsToKL: f("mainsKL", "{mains} ÷ 1000", "1,000 L are 1 kL"),
  giveUpYear: f("giveUp", "{todayKL} − {planKL}", "as watered today, less as planned", ours),
  place: f(
    "order",
    "{point} × ({count} − 1)",
    "the years in order, the least first",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  between: f(
    "giveUp",
    "{below} + ({order} − {placeBelow}) × ({above} − {below})",
    "on a straight line between two years",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  needPoint: f(
    "yearsNeed",
    "{below} + ({order} − {placeBelow}) × ({above} − {below})",
    "on a straight line between two years",
    "Hyndman and Fan (1996), American Statistician 50:361–365, type 7",
  ),
  nearestYear: f("year", "{year}", "the year whose need lies nearest to it", ours),
} satisfies Record<string, Formula>;
