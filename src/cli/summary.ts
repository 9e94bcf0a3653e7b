import type { Caution } from "../report/cautions.ts";
import type { GroundsReport } from "../report/schema.ts";
import { toView } from "../report/to-view.ts";
import type { AnswerView } from "../report/view.ts";
import type { WorkedOut } from "../report/work-out.ts";
import type { UnitSystem } from "../units.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import type { Sentence } from "../words/en/page.ts";
import { summaryWords as words } from "../words/en/summary.ts";
import { type Formatter, formatter } from "../words/format.ts";
import { speak } from "../words/spoken.ts";
import { tableText, wrapped } from "./table-text.ts";

/** Prints the answer for people; bold only where a terminal shows it. */
export function printSummary(
  worked: WorkedOut,
  report: GroundsReport,
  units: UnitSystem,
  lang: string,
): void {
  const say = formatter(units, lang);
  const view = toView(worked, report, cautionSentence);
  console.log(summaryText(view, say, process.stdout.isTTY === true && !process.env.NO_COLOR));
}

/** The whole summary: the answer as sentences, then beds by month, today against need, tanks, and what to mind. */
export function summaryText(view: AnswerView, say: Formatter, bold: boolean): string {
  const { first, headline, after } = speak(view, say);
  const strong = (text: string) => (bold ? `\u001b[1m${text}\u001b[22m` : text);
  const parts = [
    wrapped(words.of(view.site, view.weather.from, view.weather.to)),
    ...(first ? [wrapped(plain(first))] : []),
    strong(wrapped(plain(headline))),
    wrapped(after.map(plain).join(" ").replace(/ {2,}/g, " ")),
    ...(view.beds.length > 0 ? [byMonth(view, say), againstNeed(view, say)] : []),
    ...(view.tanks.length > 0 ? [tanks(view, say)] : []),
    mind(view),
  ];
  return parts.filter((part) => part !== "").join("\n\n");
}

function plain(sentence: Sentence): string {
  return sentence
    .map((piece) => (typeof piece === "string" ? piece : piece.text))
    .join("")
    .trim();
}

function byMonth(view: AnswerView, say: Formatter): string {
  const months = Array.from({ length: 12 }, (_, m) => say.month(m, "short"));
  const rows = view.beds.map((bed) => [bed.name, ...bed.need_L_week.map((litres) => short(litres, say))]);
  return `${words.byMonth(say.volumeUnit)}\n${tableText([words.bed, ...months], rows, 18, " ")}`;
}

/** A week's water in four characters: 850, 1.2k, 43k. */
function short(litres: number, say: Formatter): string {
  const amount = say.volume(litres);
  if (amount < 0.5) return "·";
  if (amount < 1000) return say.number(amount < 100 ? amount : Number(amount.toPrecision(2)), 0);
  const thousands = Number((amount / 1000).toPrecision(2));
  return `${say.number(thousands, thousands < 10 ? 1 : 0)}k`;
}

function againstNeed(view: AnswerView, say: Formatter): string {
  const rows = view.beds.map((bed) => {
    const today = bed.supply === "none" ? words.rainOnly : words.notKnown;
    return [
      bed.name,
      bed.habit_L_year === null ? today : say.litresBare(bed.habit_L_year),
      say.litresBare(bed.gross_L_year),
      bed.today_L_week ? say.litresBare(bed.beyond_L_year) : "",
      bed.today_L_week ? say.litresBare(bed.short_L_year) : "",
      say.number(bed.stressDays_year, 0),
    ];
  });
  return `${words.againstNeed(say.volumeUnit)}\n${tableText(words.againstNeedColumns, rows)}`;
}

function tanks(view: AnswerView, say: Formatter): string {
  const rows = view.tanks.map((tank) => [
    tank.inUse ? tank.name : words.outOfUse(tank.name),
    say.litresBare(tank.inflow_L_year),
    say.litresBare(tank.yield_L_year),
    say.litresBare(tank.spill_L_year),
    say.number(tank.shortDays_year, 0),
  ]);
  return `${words.tanks(say.volumeUnit)}\n${tableText(words.tankColumns, rows)}`;
}

/** Safety first heard on the walk and at the tank; here only what bears on the figures, and the rules of the place. */
const besideFigures: readonly Caution["code"][] = [
  "record-short",
  "record-filled",
  "record-generated",
  "normals-of-cell",
  "normals-cooler",
  "normals-rough-country",
  "normals-moved",
  "no-whole-year",
  "own-water",
  "shade-by-radiation",
  "clay-beyond-fit",
  "tank-not-for-drinking",
  "no-cross-connection",
  "local-rules-first",
];

function mind(view: AnswerView): string {
  const cautions = view.cautions.filter(({ code }) => besideFigures.includes(code));
  const lines = [
    ...cautions.map(({ sentence }) => sentence),
    ...(view.assumed.length > 0 ? [words.assumed(view.assumed.length)] : []),
  ];
  return lines.map((line) => wrapped(`- ${line}`).replaceAll("\n", "\n  ")).join("\n");
}
