import { fromDay, weekday } from "../engine/weather/dates.ts";
import type { Survey } from "../survey/survey.ts";
import type { MonthDay } from "./month-days.ts";
import type { GroundsRounds, RoundsBedMonth, RoundsWatering } from "./rounds-schema.ts";
import { blank, list, table, text, tick } from "./sheets/html.ts";
import { placeDrawing } from "./sheets/place.ts";
import { type Paper, sheetStyle } from "./sheets/style.ts";
import type { RoundsWeek } from "./week-schema.ts";

/** Every sentence and heading of the sheets; the words are not the report's. */
export interface SheetWords {
  language: string;
  wallTitle(month: number, year: number): string;
  wallHead: readonly string[];
  gridHead: readonly string[];
  when(watering: RoundsWatering): string;
  minutes(watering: Pick<RoundsWatering, "minutes" | "cycles" | "soak_min">): string;
  litres(L: number): string;
  depth(mm: number): string;
  rain(leaveAfter_mm: number | null): string;
  dry(watering: RoundsWatering): string;
  closed(day: number, beds: readonly string[]): string;
  gridKey: string;
  check: string;
  card(bed: string): string;
  cardHead: readonly string[];
  month(month: number): string;
  wets(wetted_m: number): string;
  place: string;
  plants(plants: { plants: number; litresEach: number; cansEach: number }): string;
  weekTitle(from: string, to: string): string;
  weekHead: readonly string[];
  day(date: string): string;
  shortDay(date: string): string;
  noTime: string;
  left: string;
  gauge: string;
  dip(tank: string): string;
  holiday(name: string): string;
  away(from: string, to: string, firstDayBack: string): string;
  tanks: string;
  ration(row: { fromTank_L: number; fromMains_L: number; short_L: number }): string;
  cautions: string;
  workings: string;
  method: string;
  assumptions: string;
  /** @param kind of the planting that it is of */
  assumed(where: string, value: string | number | boolean, kind: string | null): string;
  footer(place: string, madeOn: string | null, surveyVersion: string, from: string, to: string): string;
}

export interface SheetNames {
  bed(id: string): string;
  tank(id: string): string;
  /** The bed, roof or tank that a path of the survey lies in; null for the site's own. */
  at(path: string): string | null;
  /** The kind of the planting that a path lies in, where its bed has several. */
  kind(path: string): string | null;
}

/** Names of a survey's things for its sheets. */
export function sheetNames(survey: Survey): SheetNames {
  const beds = new Map(survey.beds.map(({ id, name }) => [id, name]));
  const tanks = new Map(survey.tanks.map(({ id, name }) => [id, name]));
  return {
    bed: (id) => beds.get(id) ?? id,
    tank: (id) => tanks.get(id) ?? id,
    at: (path) => {
      const [, list, place] = /^(beds|roofs|tanks)\[(\d+)\]/.exec(path) ?? [];
      return list ? (survey[list as "beds" | "roofs" | "tanks"][Number(place)]?.name ?? null) : null;
    },
    kind: (path) => {
      const [, bed, planting] = /^beds\[(\d+)\]\.plantings\[(\d+)\]/.exec(path) ?? [];
      const plantings = survey.beds[Number(bed)]?.plantings ?? [];
      return plantings.length > 1 ? (plantings[Number(planting)]?.kind ?? null) : null;
    },
  };
}

export interface SheetAsk {
  document: GroundsRounds;
  /** Months to print with their dates. */
  months: readonly { year: number; month: number; days: readonly MonthDay[] }[];
  names: SheetNames;
  /** How each bed's minutes were worked out, a line a bed. */
  workings: readonly string[];
  outlines: ReadonlyMap<string, readonly (readonly [number, number])[]>;
  surveyVersion: string;
  paper: Paper;
  /** Whether a card for each bed goes with them; it does unless said. */
  withCards?: boolean;
  words: SheetWords;
}

/** Sheets to print: the week's tick list where there is a week, a wall sheet for each month, a card for each bed. */
export function roundsSheets(ask: SheetAsk): string {
  const { document, months, paper, withCards = true, words } = ask;
  const parts = [
    ...(document.week ? [weekSheet(ask, document.week)] : []),
    ...months.map((month) => wallSheet(ask, month)),
    ...(withCards ? [cards(ask)] : []),
    notes(ask),
  ];
  return `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${text(document.survey)}</title>
<style>${sheetStyle(paper)}</style>
</head>
<body>
${parts.join("\n")}
</body>
</html>
`;
}

function footer({ document, surveyVersion, words }: SheetAsk): string {
  const { survey, madeOn, weather } = document;
  return `<footer>${text(words.footer(survey, madeOn, surveyVersion, weather.from, weather.to))}</footer>`;
}

function wallSheet(ask: SheetAsk, { year, month, days }: SheetAsk["months"][number]): string {
  const { document, names, words } = ask;
  const all = document.months.find((one) => one.month === month)?.beds ?? [];
  const rows = all.filter(({ minutes, dry }) => minutes > 0 || (dry?.minutes ?? 0) > 0);
  const numbers = new Map(rows.map(({ id }, k) => [id, k + 1]));
  const cells = rows.map((bed) => [
    text(`${numbers.get(bed.id)!} ${names.bed(bed.id)}`),
    text(words.when(bed)),
    text(words.minutes(bed)),
    bed.minutes > 0
      ? `${text(words.litres(bed.litres))}<br><span class="dry">${text(words.depth(bed.net_mm))}</span>`
      : "",
    text(bed.minutes > 0 ? words.rain(bed.leaveAfterRain_mm) : ""),
    `<span class="dry">${bed.dry ? text(words.dry(bed.dry)) : ""}</span>`,
  ]);
  const closed = days
    .filter((day) => day.closed.length > 0)
    .map((day) =>
      words.closed(
        day.day,
        day.closed.map(({ id }) => names.bed(id)),
      ),
    );
  return `<section>
<h1>${text(words.wallTitle(month, year))}</h1>
${table(words.wallHead, cells, "wall")}
<p>${text(words.check)}</p>
${monthGrid(days, numbers, words)}
${closed.length > 0 ? `<div class="small">${list(closed)}</div>` : ""}
${footer(ask)}
</section>`;
}

/** The month as weeks of seven days, each date with the numbers of its beds. */
function monthGrid(
  days: readonly MonthDay[],
  numbers: ReadonlyMap<string, number>,
  words: SheetWords,
): string {
  const first = days[0];
  if (!first) return "";
  const cells = [
    ...Array.from({ length: weekday(first.day) }, () => ""),
    ...days.map(({ day, turns }) => {
      const beds = turns.map(({ id }) => numbers.get(id)).filter((number) => number !== undefined);
      return `<b>${fromDay(day).day}</b>${beds.sort((a, b) => a - b).join(" ")}`;
    }),
  ];
  const weeks = Array.from({ length: Math.ceil(cells.length / 7) }, (_, k) =>
    Array.from({ length: 7 }, (__, d) => cells[7 * k + d] ?? ""),
  );
  return `<p>${text(words.gridKey)}</p>${table(words.gridHead, weeks, "grid")}`;
}

function cards({ document, names, outlines, words }: SheetAsk): string {
  const ids = document.rounding.map(({ id }) => id);
  const one = (id: string) => {
    const rows = document.months.flatMap(({ month, beds }) =>
      beds.filter((bed) => bed.id === id && bed.minutes > 0).map((bed) => ({ month, bed })),
    );
    const deepest = Math.max(0, ...rows.map(({ bed }) => bed.wetted_m));
    const plants = rows[0]?.bed.plants ?? [];
    const drawing =
      placeDrawing(outlines, id, text(names.bed(id))) ?? `<div class="place">${text(words.place)}</div>`;
    return `<div class="card">${drawing}<h2>${text(words.card(names.bed(id)))}</h2>
<p>${text(words.check)} ${deepest > 0 ? text(words.wets(deepest)) : ""}</p>
${plants.map((group) => `<p>${text(words.plants(group))}</p>`).join("")}
${table(
  words.cardHead,
  rows.map(({ month, bed }) => cardRow(month, bed, words)),
)}</div>`;
  };
  return `<section>${ids.map(one).join("\n")}</section>`;
}

function cardRow(month: number, bed: RoundsBedMonth, words: SheetWords): string[] {
  return [
    text(words.month(month)),
    text(words.when(bed)),
    text(words.minutes(bed)),
    text(words.litres(bed.litres)),
    text(words.rain(bed.leaveAfterRain_mm)),
  ];
}

function weekSheet(ask: SheetAsk, week: RoundsWeek): string {
  const { names, words } = ask;
  let shown = 0;
  const days = week.days.map(({ date, left, help }) => {
    const rows = week.beds.flatMap((bed) =>
      bed.waterings.filter((watering) => watering.date === date).map((watering) => ({ bed, watering })),
    );
    if (rows.length === 0) return "";
    const byTime = [...rows].sort((a, b) => timeOf(a).localeCompare(timeOf(b)));
    const cells = byTime.map(({ bed, watering }) => [
      tick,
      text(watering.runs[0]?.from ?? words.noTime),
      `<b>${text(names.bed(bed.id))}</b><br><span class="small">${text(watering.sentence)}</span>`,
      text(words.minutes(watering)),
      `<span class="number">${text(words.litres(watering.litres))}</span>`,
      blank,
    ]);
    const note = left.length > 0 ? `<p>${text(help ?? "")}</p>` : "";
    const kind = shown++ === 0 ? "ticks" : "ticks later";
    return `<div class="day"><h2>${text(words.day(date))}</h2>${table(words.weekHead, cells, kind)}${note}</div>`;
  });
  const rain = table(
    week.days.map(({ date }) => words.shortDay(date)),
    [week.days.map(() => "")],
    "week",
  );
  const leave = week.beds.flatMap(({ id, leave: why }) => (why ? [`${names.bed(id)}. ${why.sentence}`] : []));
  return `<section>
<h1>${text(words.weekTitle(week.from, week.to))}</h1>
${days.join("\n")}
<div class="notes"><h2>${text(words.left)}</h2>${list(leave)}</div>
<h2>${text(words.gauge)}</h2>${rain}
<div class="dips">${week.tanks.map(({ id }) => `<p>${text(words.dip(names.tank(id)))} ${blank}</p>`).join("")}</div>
<div class="notes">${week.tanks.length > 0 ? `<h2>${text(words.tanks)}</h2>${tankNotes(ask, week)}` : ""}
${week.holidays.map((holiday) => holidayNotes(holiday, words)).join("")}</div>
${footer(ask)}
</section>`;
}

function holidayNotes(
  { name, from, to, firstDayBack, beds }: RoundsWeek["holidays"][number],
  words: SheetWords,
): string {
  const lines = list(beds.map(({ sentence }) => sentence));
  return `<h2>${text(words.holiday(name))}</h2>${lines}<p>${text(words.away(from, to, firstDayBack))}</p>`;
}

/** Each tank's sentence; below one that is short, who gets what of it, the first first. */
function tankNotes({ names, words }: SheetAsk, { tanks }: RoundsWeek): string {
  const rows = tanks.map(({ sentence, rations, mainsToKeepAll_L }) => {
    const shares = rations.map((row, k) => text(`${k + 1} ${names.bed(row.id)}: ${words.ration(row)}`));
    return `<li>${text(sentence)}${mainsToKeepAll_L >= 1 ? `<br>${shares.join("<br>")}` : ""}</li>`;
  });
  return `<ul>${rows.join("")}</ul>`;
}

function timeOf({ watering }: { watering: { runs: readonly { from: string }[] } }): string {
  return watering.runs[0]?.from ?? "~";
}

/** The cautions, how it was worked out, and what was assumed about soil and watering: with every print. */
function notes(ask: SheetAsk): string {
  const { document, words, workings } = ask;
  return `<section>
<h2>${text(words.cautions)}</h2>${list(document.cautions)}
<h2>${text(words.workings)}</h2>
<div class="small"><p>${text(words.method)}</p>${list(workings)}</div>
<h2>${text(words.assumptions)}</h2>
<div class="small">${assumptions(ask)}</div>
${footer(ask)}
</section>`;
}

/** What stands in, gathered by the bed that it belongs to. */
function assumptions({ document, names, words }: SheetAsk): string {
  const bearing = document.assumed.filter(({ where }) => /soil|watering|leafCover|rootDepth/.test(where));
  const byThing = new Map<string, string[]>();
  for (const { where, value } of bearing) {
    const thing = names.at(where) ?? "";
    byThing.set(thing, [...(byThing.get(thing) ?? []), words.assumed(where, value, names.kind(where))]);
  }
  const rows = [...byThing].map(
    ([thing, lines]) => `<li><b>${text(thing)}.</b> ${text(lines.join("; "))}</li>`,
  );
  return `<ul>${rows.join("")}</ul>`;
}
