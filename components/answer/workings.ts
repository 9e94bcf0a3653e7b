import type { Given, Working } from "../../src/explain/working.ts";
import { working as words } from "../../src/words/en/page.ts";
import type { Formatter } from "../format.ts";
import { type AnswerView, isShort, type YearFigures } from "./view.ts";

/** A volume of a year, exact to the litre or gallon: workings do not round as sentences do. */
function exact(kL: number, say: Formatter): string {
  return say.system === "us"
    ? `${say.litresBare(kL * 1000)} ${say.volumeSymbol}`
    : `${say.number(kL, Math.abs(kL) < 100 ? 2 : 1)} kL`;
}

function differences(year: YearFigures, sign: 1 | -1, say: Formatter) {
  const [from, less] = sign === 1 ? [year.today_kL, year.plan_kL] : [year.plan_kL, year.today_kL];
  return { withNumbers: `${exact(from, say)} − ${exact(less, say)}`, result: exact(from - less, say) };
}

function giveUp(view: AnswerView, sign: 1 | -1, say: Formatter): Working {
  const { byYear, giveUp_kL } = view.mains;
  const formula = sign === 1 ? words.yearFormula : words.shortFormula;
  return {
    title: words.giveUp,
    steps: [
      ...byYear.map((y) => ({ formula: `${y.year}: ${formula}`, ...differences(y, sign, say) })),
      { formula: words.middleFormula, withNumbers: "", result: exact(sign * giveUp_kL.p50, say) },
    ],
    given: [],
    sources: [words.sources.quantile],
    provenance: "worked-out",
  };
}

function oneYear(year: YearFigures, sign: 1 | -1, say: Formatter): Working {
  return {
    title: words.year(String(year.year)),
    steps: [
      { formula: sign === 1 ? words.yearFormula : words.shortFormula, ...differences(year, sign, say) },
    ],
    given: [],
    sources: [],
    provenance: "worked-out",
  };
}

function needYear(year: YearFigures, say: Formatter): Working {
  return {
    title: words.needYear(String(year.year)),
    steps: [{ formula: words.needFormula, withNumbers: "", result: exact(year.need_kL, say) }],
    given: [],
    sources: [],
    provenance: "worked-out",
  };
}

function leaks(view: AnswerView, say: Formatter): Given[] {
  if (view.leaks_kL_year === 0) return [];
  return [{ name: words.leaks, text: exact(view.leaks_kL_year, say), provenance: "measured" }];
}

function today(view: AnswerView, say: Formatter): Working {
  const known = view.beds.filter((b) => b.habit_L_year !== null && b.supply !== "none");
  return {
    title: words.today,
    steps: [{ formula: words.todayFormula, withNumbers: "", result: exact(view.mains.today_kL, say) }],
    given: [
      ...known.map(
        (b): Given => ({
          name: words.habit(b.name),
          text: exact(b.habit_L_year! / 1000, say),
          provenance: "measured",
        }),
      ),
      ...view.unknown.map(
        (b): Given => ({
          name: words.bedNeed(b.name),
          text: exact(b.gross_L_year / 1000, say),
          provenance: "assumed",
          source: words.standsIn,
        }),
      ),
      ...leaks(view, say),
    ],
    sources: [words.sources.tank],
    provenance: "worked-out",
  };
}

function need(view: AnswerView, say: Formatter): Working {
  const watered = view.beds.filter((b) => b.supply !== "none" && b.supply !== "other");
  return {
    title: words.need,
    steps: [{ formula: words.needFormula, withNumbers: "", result: exact(view.mains.need_kL, say) }],
    given: [
      ...watered.map(
        (b): Given => ({
          name: words.bedNeed(b.name),
          text: exact(b.gross_L_year / 1000, say),
          provenance: "worked-out",
        }),
      ),
      ...(view.tanks.length > 0
        ? [{ name: words.tanks, text: exact(view.mains.tanks_kL, say), provenance: "worked-out" as const }]
        : []),
      ...leaks(view, say),
    ],
    sources: [words.sources.kc, words.sources.tank],
    provenance: "worked-out",
  };
}

function tanks(view: AnswerView, say: Formatter): Working {
  return {
    title: words.tanksTitle,
    steps: [{ formula: words.tanksFormula, withNumbers: "", result: exact(view.mains.tanks_kL, say) }],
    given: view.tanks.map(
      (t): Given => ({
        name: t.name,
        text: exact(t.yield_L_year / 1000, say),
        provenance: "worked-out",
      }),
    ),
    sources: [words.sources.tank],
    provenance: "worked-out",
  };
}

function bedsShort(view: AnswerView, say: Formatter): Working {
  const short = view.beds.filter(isShort);
  return {
    title: words.shortTitle,
    steps: short.map((b) => ({
      formula: `${b.name}: ${words.shortBedFormula}`,
      withNumbers: `${exact(b.gross_L_year / 1000, say)} − ${exact((b.habit_L_year ?? 0) / 1000, say)}`,
      result: exact((b.gross_L_year - (b.habit_L_year ?? 0)) / 1000, say),
    })),
    given: [],
    sources: [words.sources.kc],
    provenance: "worked-out",
  };
}

/** Every working that a sentence of the answer may open, by the name its slot gives. */
export function workingsOf(view: AnswerView, say: Formatter): ReadonlyMap<string, Working> {
  const { dry, wet } = view.mains;
  const sign = view.mains.giveUp_kL.p50 < 0 ? -1 : 1;
  const all: [string, Working][] = [
    ["give-up", giveUp(view, sign, say)],
    ["today", today(view, say)],
    ["need", need(view, say)],
    ["tanks", tanks(view, say)],
    ["beds-short", bedsShort(view, say)],
  ];
  if (dry) all.push(["dry", oneYear(dry, sign, say)], ["dry-need", needYear(dry, say)]);
  if (wet) all.push(["wet", oneYear(wet, sign, say)], ["wet-need", needYear(wet, say)]);
  return new Map(all);
}
