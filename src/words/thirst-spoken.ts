import type { Thirst, ThirstBed, ThirstView } from "../report/thirst-view.ts";
import { fromSI } from "../units.ts";
import { fractionWords, type Sentence, type Slot } from "./en/page.ts";
import { thirst as words } from "./en/thirst.ts";
import { type Formatter, NBSP, rough } from "./format.ts";

/** From this share of a total on, a bed is named as where it goes. */
const MUCH = 0.3;
/** Rain used to within this share is called nearly all. */
const NEARLY = 0.95;
/** A habit within this share of the need, over and under, is called close. */
const CLOSE = 0.1;

export interface SpokenThirst {
  first: Sentence | null;
  headline: Sentence;
  after: readonly Sentence[];
}

/** The page's first sentences: what lacks, then rain and watering, then where it goes. */
export function speakThirst(view: ThirstView, say: Formatter): SpokenThirst {
  const { all, told, beds, years } = view;
  if (beds.length === 0) return { first: null, headline: words.noBeds, after: [] };
  if (!all || all.gross_L_year < 1) return { first: null, headline: words.noNeed, after: [] };
  const slot = (at: string, litres: number): Slot => ({ at, text: say.yearly(litres / 1000) });
  const inYear = (year: number) => all.needByYear_L[years.indexOf(year)]!;
  const watered = beds.filter(({ supply }) => supply !== "none");
  const most = [...watered].sort((a, b) => b.gross_L_year - a.gross_L_year)[0]!;
  const thirstiest = watered[0]!;
  const share = fractionWords(most.gross_L_year / all.gross_L_year);
  const rainOnly = beds.filter(({ supply }) => supply === "none").map(({ name }) => name);
  return {
    first: shortOf(watered, say),
    headline: words.headline(slot("all/rain-used", all.rainUsed_L_year), slot("all/need", all.gross_L_year)),
    after: [
      told
        ? words.dryAndWet(
            String(told.dry),
            slot(`all/need/${told.dry}`, inYear(told.dry)),
            String(told.wet),
            slot(`all/need/${told.wet}`, inYear(told.wet)),
          )
        : [],
      watered.length > 1 && share && most.gross_L_year > MUCH * all.gross_L_year
        ? words.most(most.name, capital(share))
        : [],
      watered.length > 1
        ? words.thirstiest(thirstiest.name, {
            at: `bed/${thirstiest.id}/per-area`,
            text: perArea(thirstiest.gross_L_m2_year, say),
          })
        : [],
      rainOnly.length > 0 ? words.rainOnly(rainOnly) : [],
    ],
  };
}

/** Litres over a square metre as shown: those, or gallons over a square foot. */
export function overArea(x_L_m2: number, say: Formatter): number {
  return say.system === "us" ? say.volume(x_L_m2) / fromSI(1, "m²", "ft²")! : x_L_m2;
}

export function areaUnit(say: Formatter): string {
  return say.system === "us" ? "ft²" : "m²";
}

/** "410 litres on each m²". */
export function perArea(x_L_m2: number, say: Formatter): string {
  const shown = overArea(x_L_m2, say);
  const text = say.number(rough(shown), shown < 10 ? 2 : 0);
  return words.perArea(`${text}${NBSP}${say.volumeUnit}`, areaUnit(say));
}

function shortOf(beds: readonly ThirstBed[], say: Formatter): Sentence | null {
  const short = beds.filter(({ lacks }) => lacks);
  if (short.length === 0) return null;
  const missing_L = short.reduce((sum, bed) => sum + bed.gross_L_year - (bed.habit_L_year ?? 0), 0);
  return words.short(
    short.map(({ name }) => name),
    { at: "all/short", text: say.yearly(missing_L / 1000) },
  );
}

/** What is said of one bed: its thirstiest month, rain, habit, thirst. */
export function speakBed(bed: ThirstBed, say: Formatter): Sentence[] {
  const { need_L_week } = bed.ofYears ?? bed.mean;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  const peak_L = need_L_week[peak]!;
  const figure = (what: string, text: string): Slot => ({ at: `bed/${bed.id}/${what}`, text });
  if (bed.supply === "none")
    return [words.bed.rainOnly(figure("need", say.litres(bed.gross_L_year))), ...stressOf(bed, say)];
  if (peak_L < 1) return [words.bed.never(bed.name), rainOf(bed, say)];
  const minutes = bed.flow_L_min > 0 ? peak_L / bed.flow_L_min : 0;
  const at = `need/week/${String(peak + 1).padStart(2, "0")}`;
  return [
    words.bed.needs(
      bed.name,
      say.month(peak),
      figure(bed.ofYears ? `peak/${peak}` : at, say.litres(peak_L)),
      minutes > 0
        ? { at: `bed/${bed.id}/minutes`, text: words.bed.minutes(say.number(minutes, minutes < 10 ? 1 : 0)) }
        : null,
    ),
    rainOf(bed, say),
    habitOf(bed, say),
    ...stressOf(bed, say),
    bed.establishing_L_year === null
      ? []
      : words.bed.establishing(figure("establishing", say.litres(bed.establishing_L_year))),
  ];
}

/** What is said of all beds together. */
export function speakAll(all: Thirst, say: Formatter): Sentence[] {
  const { need_L_week } = all.ofYears ?? all.mean;
  const peak = need_L_week.indexOf(Math.max(...need_L_week));
  if (need_L_week[peak]! < 1) return [words.noNeed];
  return [
    words.bed.allNeed(say.month(peak), { at: "", text: say.litres(need_L_week[peak]!) }),
    rainOf(all, say),
  ];
}

function rainOf(of: Thirst | ThirstBed, say: Formatter): Sentence {
  const share = of.rain_L_year > 0 ? of.rainUsed_L_year / of.rain_L_year : 0;
  if (share >= NEARLY) return [words.bed.allRain];
  const at = "id" in of ? `bed/${of.id}/rain-used` : "all/rain-used";
  return of.rain_L_year > 0
    ? words.bed.rain(fractionWords(share) ?? say.share(share), {
        at,
        text:
          "id" in of
            ? roughDepth(of.rainUsed_L_year / of.area_m2, say)
            : say.yearly(of.rainUsed_L_year / 1000),
      })
    : [];
}

function roughDepth(x_mm: number, say: Formatter): string {
  return `${say.number(rough(say.depthValue(x_mm)), 1)}${NBSP}${say.depthUnit}`;
}

function habitOf(bed: ThirstBed, say: Formatter): Sentence {
  if (bed.today_L_week === null) return [words.bed.habitUnknown(bed.name)];
  const much = CLOSE * Math.max(bed.gross_L_year, 1);
  const slot = (what: string, litres: number): Slot | null =>
    litres > much ? { at: `bed/${bed.id}/${what}`, text: say.litres(litres) } : null;
  const sentence = words.bed.habit(slot("beyond", bed.beyond_L_year), slot("short", bed.short_L_year));
  return sentence.length > 0 ? sentence : [words.bed.habitEven];
}

function stressOf(bed: ThirstBed, say: Formatter): Sentence[] {
  const days = (count: number) =>
    Math.round(count) === 1 ? words.bed.oneDay : words.bed.days(say.number(count, 0));
  const slot = (what: string, count: number): Slot => ({
    at: what && `bed/${bed.id}/${what}`,
    text: days(count),
  });
  const asToday = (count: number, isNoneToNeed: boolean): Sentence => {
    if (count >= 0.05) return words.bed.stressToday(slot("", count));
    return isNoneToNeed ? [words.bed.noStressToday] : [];
  };
  if (bed.supply === "none" && bed.stressDays_year < 0.5) return [];
  const isNone = (count: number) => count < 0.05;
  const to: Sentence = isNone(bed.stressDays_year)
    ? [words.bed.noStress]
    : words.bed.stress(slot("stress", bed.stressDays_year));
  const today: Sentence = bed.underHabit
    ? asToday(bed.underHabit.stressDays_year, isNone(bed.stressDays_year))
    : [];
  return [[...to, ...today, words.bed.stop], bed.supply === "tank-only" ? [words.bed.tankOnly] : []];
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
