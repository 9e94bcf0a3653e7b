import type { Given, Working } from "../../src/explain/working.ts";
import type { AnswerView, Asked, BedView, YearFigures } from "../../src/report/view.ts";
import { measureName, working as words } from "../../src/words/en/workings.ts";
import { type Formatter, NBSP } from "../../src/words/format.ts";

/** A volume of a year, exact to the litre or gallon: workings do not round as sentences do. */
function exact(kL: number, say: Formatter): string {
  return say.system === "us"
    ? `${say.litresBare(kL * 1000)}${NBSP}${say.volumeSymbol}`
    : `${say.number(kL, Math.abs(kL) < 100 ? 2 : 1)}${NBSP}kL`;
}

function differences(year: YearFigures, sign: 1 | -1, say: Formatter) {
  const [from, less] = sign === 1 ? [year.today_kL, year.plan_kL] : [year.plan_kL, year.today_kL];
  return { withNumbers: `${exact(from, say)} − ${exact(less, say)}`, result: exact(from - less, say) };
}

/** What is set against today: the plan where measures are chosen, else the need. */
function yearFormula({ measures }: AnswerView, sign: 1 | -1): string {
  if (measures.length === 0) return sign === 1 ? words.yearFormula : words.shortFormula;
  return sign === 1 ? words.yearPlanFormula : words.shortPlanFormula;
}

function giveUp(view: AnswerView, sign: 1 | -1, say: Formatter): Working {
  const { byYear, giveUp_kL } = view.mains;
  const formula = yearFormula(view, sign);
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

function oneYear(view: AnswerView, year: YearFigures, sign: 1 | -1, say: Formatter): Working {
  return {
    title: words.year(String(year.year)),
    steps: [{ formula: yearFormula(view, sign), ...differences(year, sign, say) }],
    given: [],
    sources: [],
    provenance: "worked-out",
  };
}

function needYear(year: YearFigures, say: Formatter): Working {
  return {
    title: words.needYear(String(year.year)),
    steps: [{ formula: words.mainsFormula, withNumbers: "", result: exact(year.need_kL, say) }],
    given: [],
    sources: [],
    provenance: "worked-out",
  };
}

/** A bed that mains water may reach: its need, or its habit, counts whole before the tanks' part comes off. */
function reachedByMains(bed: BedView): boolean {
  return bed.supply === "mains-only" || bed.supply === "tank-then-mains";
}

/** Mains water as an account: all that is asked, less what tanks give in its place. */
function account(
  mains_kL: number,
  beds: readonly { bed: BedView; kL: number; given: Given }[],
  asked: Asked,
  say: Formatter,
): { step: Working["steps"][number]; given: Given[] } {
  const all = beds.reduce((sum, b) => sum + b.kL, 0) + asked.draws_kL + asked.topUp_kL + asked.always_kL;
  const rows: Given[] = beds.map((b) => b.given);
  const add = (name: string, kL: number, provenance: Given["provenance"]) => {
    if (kL > 0.0005) rows.push({ name, text: exact(kL, say), provenance });
  };
  add(words.draws, asked.draws_kL, "measured");
  add(words.topUp, asked.topUp_kL, "worked-out");
  add(words.always, asked.always_kL, "measured");
  add(words.tanks, all - mains_kL, "worked-out");
  const withNumbers = words.asked(exact(all, say), exact(all - mains_kL, say));
  return { step: { formula: words.mainsFormula, withNumbers, result: exact(mains_kL, say) }, given: rows };
}

function today(view: AnswerView, say: Formatter): Working {
  const beds = view.beds.filter(reachedByMains).map((bed) => {
    const known = bed.habit_L_year !== null;
    const kL = (bed.habit_L_year ?? bed.gross_L_year) / 1000;
    const given: Given = known
      ? { name: words.habit(bed.name), text: exact(kL, say), provenance: "measured" }
      : {
          name: words.bedNeed(bed.name),
          text: exact(kL, say),
          provenance: "assumed",
          source: words.standsIn,
        };
    return { bed, kL, given };
  });
  const { step, given } = account(view.mains.today_kL, beds, view.asked.today, say);
  return {
    title: words.today,
    steps: [step, { formula: words.habitFormula, withNumbers: "", result: "" }],
    given,
    sources: [words.sources.tank],
    provenance: "worked-out",
  };
}

function need(view: AnswerView, say: Formatter): Working {
  const beds = view.beds.filter(reachedByMains).map((bed) => {
    const kL = bed.gross_L_year / 1000;
    const given: Given = { name: words.bedNeed(bed.name), text: exact(kL, say), provenance: "worked-out" };
    return { bed, kL, given };
  });
  const { step, given } = account(view.mains.need_kL, beds, view.asked.need, say);
  return {
    title: words.need,
    steps: [step],
    given,
    sources: [words.sources.kc, words.sources.tank],
    provenance: "worked-out",
  };
}

function unknown(view: AnswerView, say: Formatter): Working {
  const total_L = view.unknown.reduce((sum, b) => sum + b.gross_L_year, 0);
  return {
    title: words.unknownTitle,
    steps: [{ formula: words.unknownFormula, withNumbers: "", result: exact(total_L / 1000, say) }],
    given: view.unknown.map(
      (b): Given => ({
        name: words.bedNeed(b.name),
        text: exact(b.gross_L_year / 1000, say),
        provenance: "worked-out",
      }),
    ),
    sources: [words.sources.kc],
    provenance: "assumed",
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
  const short = view.beds.filter((b) => b.lacks);
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

function plan(view: AnswerView, say: Formatter): Working {
  const total_kL = view.measures.reduce((sum, m) => sum + m.share_kL_year, 0);
  return {
    title: words.plan,
    steps: [
      {
        formula: words.planFormula,
        withNumbers: words.asked(exact(view.mains.today_kL, say), exact(total_kL, say)),
        result: exact(view.mains.plan_kL, say),
      },
    ],
    given: view.measures.map(
      (m): Given => ({
        name: measureName(m.name),
        text: exact(m.share_kL_year, say),
        provenance: "worked-out",
      }),
    ),
    sources: [words.planSource],
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
    ["plan", plan(view, say)],
    ["tanks", tanks(view, say)],
    ["unknown", unknown(view, say)],
    ["beds-short", bedsShort(view, say)],
  ];
  if (dry) all.push(["dry", oneYear(view, dry, sign, say)], ["dry-need", needYear(dry, say)]);
  if (wet) all.push(["wet", oneYear(view, wet, sign, say)], ["wet-need", needYear(wet, say)]);
  return new Map(all);
}
