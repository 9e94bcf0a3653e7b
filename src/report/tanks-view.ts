import type { TankShares } from "../engine/site-run.ts";
import { perYear, sumOver, wholeYears } from "../engine/years.ts";
import { type Caution, cautionsFor } from "./cautions.ts";
import { needWithDays } from "./need-days.ts";
import { type RoofBrings, roofsBring } from "./roofs-bring.ts";
import type { GroundsReport } from "./schema.ts";
import { tankView } from "./to-view.ts";
import type { TankView } from "./view.ts";
import type { WorkedOut } from "./work-out.ts";

/** What the page on roofs and tanks shows, watered to need; plain data that can cross from a worker. */
export interface TanksView {
  site: string;
  years: readonly number[];
  dryYear: number | null;
  wetYear: number | null;
  roofs: readonly RoofBrings[];
  tanks: readonly TankStory[];
  cautions: readonly { code: Caution["code"]; sentence: string }[];
}

/** One that asks a tank for water: what for, and what of it is given. Litres of a mean year. */
export interface Claim {
  kind: "bed" | "draw";
  id: string;
  name: string;
  asks_L_year: number;
  got_L_year: number;
  /** The mains give the rest. */
  restFromMains: boolean;
}

export interface TankYearFigures {
  year: number;
  inflow_L: number;
  yield_L: number;
  spill_L: number;
  topUp_L: number;
  shortDays: number;
}

export interface TankStory extends TankView {
  draw_L_year: number;
  /** Roofs that drain to it, m² of them together. */
  roofs: readonly string[];
  roof_m2: number;
  rule: "after-spillage" | "before-spillage";
  /** In the order in which a short day serves them. */
  claims: readonly Claim[];
  byYear: readonly TankYearFigures[];
}

/** Pure. @param say turns a caution into a sentence */
export function toTanksView(
  worked: WorkedOut,
  report: GroundsReport,
  say: (caution: Caution) => string,
): TanksView {
  return {
    site: worked.survey.site.name,
    years: worked.outcome.mains.byYear.map(({ year }) => year),
    dryYear: report.mains.dryYear,
    wetYear: report.mains.wetYear,
    roofs: roofsBring(worked),
    tanks: worked.ready.tanks.map((_, t) => tankStory(worked, report, t)),
    cautions: cautionsFor(worked).map((caution) => ({ code: caution.code, sentence: say(caution) })),
  };
}

function tankStory(worked: WorkedOut, report: GroundsReport, t: number): TankStory {
  const { ready, need, weather } = worked;
  const { group } = ready.tanks[t]!;
  const { inflow_L, yield_L, spill_L, topUp_L } = need.tanks[t]!.series;
  const view = tankView(worked, report, t);
  const roofs = ready.grounds.roofs.filter(({ tank }) => group.members.some(({ id }) => id === tank));
  return {
    ...view,
    draw_L_year: report.tanks[t]!.draw_L_year,
    roofs: roofs.map(({ id }) => id),
    roof_m2: roofs.reduce((sum, { area_m2 }) => sum + area_m2, 0),
    rule: group.rule,
    claims: claimsOn(worked, t, needWithDays(worked).shares![t]!),
    byYear: wholeYears(weather.calendar).map((span) => ({
      year: span.year,
      inflow_L: sumOver(inflow_L, span),
      yield_L: sumOver(yield_L, span),
      spill_L: sumOver(spill_L, span),
      topUp_L: sumOver(topUp_L, span),
      shortDays: view.short.subarray(span.from, span.to).reduce((sum, short) => sum + short, 0),
    })),
  };
}

function claimsOn(worked: WorkedOut, t: number, { before_L, beds_L, after_L }: TankShares): Claim[] {
  const { ready, survey, outcome } = worked;
  const { before, beds, after } = ready.tanks[t]!;
  const inYear = (litres: Float64Array) =>
    perYear(
      litres.reduce((sum, each) => sum + each, 0),
      outcome.days,
    );
  const draws = (of: typeof before, got_L: readonly Float64Array[]) =>
    of.map(
      ({ draw, asks_L }, k): Claim => ({
        kind: "draw",
        id: draw.id,
        name: survey.draws?.find(({ id }) => id === draw.id)?.name ?? draw.id,
        asks_L_year: inYear(asks_L),
        got_L_year: inYear(got_L[k]!),
        restFromMains: true,
      }),
    );
  const onBeds = beds.map((bed, k): Claim => {
    const place = ready.beds.indexOf(bed);
    return {
      kind: "bed",
      id: bed.grown.bed.id,
      name: survey.beds[place]!.name,
      asks_L_year: perYear(outcome.beds[place]!.gross_L, outcome.days),
      got_L_year: inYear(beds_L[k]!),
      restFromMains: bed.grown.bed.watering.supply !== "tank-only",
    };
  });
  return [...draws(before, before_L), ...onBeds, ...draws(after, after_L)];
}
