import type { Given, Working } from "../../src/explain/working.ts";
import type { ThirstBed, ThirstView } from "../../src/report/thirst-view.ts";
import { thirst } from "../../src/words/en/thirst.ts";
import { type Formatter, NBSP } from "../../src/words/format.ts";
import { areaUnit, overArea } from "../../src/words/thirst-spoken.ts";

const words = thirst.working;

/** Litres or gallons to the whole one: workings do not round as sentences do. */
function exact(litres: number, say: Formatter): string {
  return `${say.litresBare(litres)}${NBSP}${say.volumeSymbol}`;
}

function given(name: string, text: string, at?: string): Given {
  return { name, text, provenance: "worked-out", ...(at && { at }) };
}

function working(
  title: string,
  formula: string,
  withNumbers: string,
  result: string,
  from: Given[],
): Working {
  return {
    title,
    steps: [{ formula, withNumbers, result }],
    given: from,
    sources: [],
    provenance: "worked-out",
  };
}

/** Workings of the page's own sums and quotients; each number in them opens at the engine's own. */
export function thirstWorkings(view: ThirstView, say: Formatter): Map<string, Working> {
  const found = new Map<string, Working>();
  const watered = view.beds.filter(({ supply }) => supply !== "none");
  const sum = (
    at: string,
    title: string,
    litres: (bed: ThirstBed) => number,
    from: (bed: ThirstBed) => string,
  ) => {
    const parts = watered.map((bed) => given(bed.name, exact(litres(bed), say), from(bed)));
    const all = watered.reduce((total, bed) => total + litres(bed), 0);
    found.set(at, working(title, words.sum, "", exact(all, say), parts));
  };
  sum(
    "all/need",
    words.allNeed,
    (bed) => bed.gross_L_year,
    (bed) => `bed/${bed.id}/need`,
  );
  sum(
    "all/rain-used",
    words.allRain,
    (bed) => bed.rainUsed_L_year,
    (bed) => `bed/${bed.id}/rain-used`,
  );
  view.years.forEach((year, y) => {
    sum(
      `all/need/${year}`,
      words.allNeedOf(String(year)),
      (bed) => bed.needByYear_L[y]!,
      (bed) => `bed/${bed.id}/need/${year}`,
    );
  });
  const short = watered.filter(({ lacks }) => lacks);
  const lacking = (bed: ThirstBed) => bed.gross_L_year - (bed.habit_L_year ?? 0);
  found.set(
    "all/short",
    working(
      words.short,
      words.sum,
      "",
      exact(
        short.reduce((total, bed) => total + lacking(bed), 0),
        say,
      ),
      short.map((bed) => given(bed.name, exact(lacking(bed), say), `bed/${bed.id}/need`)),
    ),
  );
  for (const bed of view.beds) bedWorkings(bed, view, say, found);
  return found;
}

function bedWorkings(bed: ThirstBed, view: ThirstView, say: Formatter, found: Map<string, Working>): void {
  const at = `bed/${bed.id}`;
  const need = given(words.need, exact(bed.gross_L_year, say), `${at}/need`);
  const area = given(words.area, say.area(bed.area_m2), `${at}/area`);
  const perArea = `${say.number(overArea(bed.gross_L_m2_year, say), 2)}${NBSP}${say.volumeSymbol}/${areaUnit(say)}`;
  found.set(
    `${at}/per-area`,
    working(words.perArea(bed.name), words.perAreaFormula, `${need.text} ÷ ${area.text}`, perArea, [
      need,
      area,
    ]),
  );
  const weeks = (bed.ofYears ?? bed.mean).need_L_week;
  const peak = weeks.indexOf(Math.max(...weeks));
  const week = exact(weeks[peak]!, say);
  const month = String(peak + 1).padStart(2, "0");
  const ofYears = view.years.map((year, y) =>
    given(
      words.weekOf(say.month(peak), String(year)),
      exact(bed.needRows_L_week[y * 12 + peak]!, say),
      `${at}/need/${year}-${month}`,
    ),
  );
  found.set(
    `${at}/peak/${peak}`,
    working(words.peak(bed.name, say.month(peak)), words.peakFormula, "", week, ofYears),
  );
  const flow = given(
    words.flow,
    `${say.number(say.volume(bed.flow_L_min), 1)}${NBSP}${say.volumeSymbol}/min`,
    `${at}/flow`,
  );
  const minutes = `${say.number(weeks[peak]! / bed.flow_L_min, 1)}${NBSP}min`;
  found.set(
    `${at}/minutes`,
    working(words.minutes(bed.name), words.minutesFormula, `${week} ÷ ${flow.text}`, minutes, [flow]),
  );
  if (bed.habit_L_year === null) return;
  const parts = [given(words.habit, exact(bed.habit_L_year, say), `${at}/habit`), need];
  found.set(
    `${at}/beyond`,
    working(words.beyond(bed.name), words.beyondFormula, "", exact(bed.beyond_L_year, say), parts),
  );
  found.set(
    `${at}/short`,
    working(words.lacks(bed.name), words.lacksFormula, "", exact(bed.short_L_year, say), parts),
  );
}
