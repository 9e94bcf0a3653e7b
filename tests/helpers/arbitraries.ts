import fc from "fast-check";
import type { Bed, Draw, Grounds, Roof, Tank } from "../../src/engine/grounds.ts";
import { dayNumber } from "../../src/engine/weather/dates.ts";
import type { WeatherRecord } from "../../src/engine/weather/record.ts";

/** Grounds and records of every sort that the engine may be given, for properties that hold of all of them. */

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const share = within(0, 1);
const days = (length: number) => fc.array(fc.boolean(), { minLength: length, maxLength: length });

const planting = fc.record({
  kcbFull: within(0, 1.3),
  climateAdjusted: fc.boolean(),
  height_m: within(0.02, 15),
  rootDepth_m: within(0.05, 2),
  depletionFraction: within(0.1, 0.8),
  monthly: fc.array(within(0, 1.2), { minLength: 12, maxLength: 12 }),
  establishing: fc.constant(null),
});

const plantings = fc
  .array(fc.tuple(planting, within(0.05, 1)), { minLength: 1, maxLength: 3 })
  .map((rows) => {
    const all = rows.reduce((sum, [, weight]) => sum + weight, 0);
    return rows.map(([row, weight]) => ({ ...row, share: weight / all }));
  });

const soil = fc
  .record({
    wiltingPoint: within(0.01, 0.3),
    available: within(0.01, 0.25),
    tew_mm: within(1, 35),
    rew: share,
  })
  .map(({ wiltingPoint, available, tew_mm, rew }) => ({
    wiltingPoint,
    fieldCapacity: wiltingPoint + available,
    tew_mm,
    rew_mm: tew_mm * rew,
  }));

const mulch = fc.option(
  fc.record({
    cut: within(0, 1),
    fullDepth_mm: fc.constantFrom(0, 50),
    cover: share,
    depth_mm: within(0, 150),
  }),
);

const obstructions = fc.array(
  fc.record({
    fromAzimuth_deg: within(0, 359),
    toAzimuth_deg: within(0, 359),
    elevation_deg: within(0, 90),
  }),
  { maxLength: 3 },
);

function watering(tanks: readonly string[]) {
  return fc.record({
    drip: fc.boolean(),
    efficiency: within(0.3, 1),
    wettedShare: within(0.1, 1),
    flow_L_min: within(0.1, 80),
    maxMinutes: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), within(0, 120)),
    supply:
      tanks.length > 0
        ? fc.constantFrom("tank-then-mains", "tank-only", "mains-only", "other", "none")
        : fc.constantFrom("mains-only", "other", "none"),
    tank: tanks.length > 0 ? fc.constantFrom(...tanks) : fc.constant(null),
    byHand: fc.boolean(),
    allowedWeekdays: days(7),
    habit: fc.option(fc.record({ minutes: within(0, 120), weekdays: days(7), months: days(12) })),
  });
}

function bed(index: number, tanks: readonly string[]): fc.Arbitrary<Bed> {
  return fc.record({
    id: fc.constant(`bed-${index}`),
    area_m2: within(0.5, 8000),
    plantings,
    leafCover: fc.array(share, { minLength: 12, maxLength: 12 }),
    rootDepth_m: fc.option(within(0.05, 2)),
    depletionFraction: fc.option(within(0.1, 0.8)),
    mulch,
    soil,
    obstructions,
    rainShare: share,
    watering: watering(tanks),
    initial: fc.option(fc.record({ rootDepletion_mm: within(0, 500), surfaceDepletion_mm: within(0, 50) })),
  });
}

function tank(id: string, others: readonly string[]): fc.Arbitrary<Tank> {
  return fc.record({
    id: fc.constant(id),
    capacity_L: within(0, 100_000),
    level_L: fc.option(within(0, 100_000)),
    unusable_L: within(0, 500),
    inUse: fc.boolean(),
    rule: fc.constantFrom("after-spillage", "before-spillage"),
    topUp: fc.option(
      fc.tuple(share, share).map(([a, b]) => ({ belowShare: Math.min(a, b), toShare: Math.max(a, b) })),
    ),
    linked: others.length > 0 ? fc.subarray([...others]) : fc.constant([]),
  });
}

function roof(index: number, tanks: readonly string[]): fc.Arbitrary<Roof> {
  return fc.record({
    id: fc.constant(`roof-${index}`),
    area_m2: within(1, 3000),
    runoff: share,
    firstFlush_mm: within(0, 3),
    share,
    tank: fc.constantFrom(...tanks, null),
  });
}

function draw(index: number, tanks: readonly string[]): fc.Arbitrary<Draw> {
  return fc.record({
    id: fc.constant(`draw-${index}`),
    tank: fc.constantFrom(...tanks),
    litresPerDay: within(0, 3000),
    weekdays: days(7),
    months: days(12),
    order: fc.constantFrom("before-beds", "after-beds"),
    pausesWhenAbsent: fc.boolean(),
  });
}

const absence = fc.record({
  from: fc.constantFrom("12-15", "07-01", "02-29", "2013-05-01"),
  to: fc.constantFrom("01-20", "08-10", "03-01", "2014-02-03"),
  hasCarer: fc.boolean(),
});
const absences = fc.array(absence, { maxLength: 2 }).map((list) =>
  // both ends are of one sort, as surveys are checked for
  list.map((a) => (a.from.length === a.to.length ? a : { ...a, from: "12-15", to: "01-20" })),
);

const place = fc.record({
  latitude_deg: fc.oneof(within(-90, 90), fc.constantFrom(0, 78.2, -37.8)),
  longitude_deg: within(-180, 180),
  elevation_m: within(-400, 5000),
  coastal: fc.boolean(),
  windHeight_m: within(1, 20),
});

export const anyGrounds: fc.Arbitrary<Grounds> = fc.integer({ min: 0, max: 3 }).chain((tankCount) => {
  const tanks = Array.from({ length: tankCount }, (_, k) => `tank-${k}`);
  const list = <T>(most: number, item: (k: number) => fc.Arbitrary<T>) =>
    fc.integer({ min: 0, max: most }).chain((n) => fc.tuple(...Array.from({ length: n }, (_, k) => item(k))));
  return fc.record({
    place,
    beds: list(4, (k) => bed(k, tanks)),
    roofs: tankCount > 0 ? list(3, (k) => roof(k, tanks)) : fc.constant([]),
    tanks: fc.tuple(...tanks.map((id, k) => tank(id, tanks.slice(k + 1)))),
    draws: tankCount > 0 ? list(2, (k) => draw(k, tanks)) : fc.constant([]),
    leaks_L_day: within(0, 1000),
    absences,
  });
});

/** A climate in a few numbers; its days vary by sines and a fixed scatter, so that a failure shrinks to small numbers. */
const climate = fc.record({
  mean_c: within(-40, 38),
  season_c: within(0, 20),
  range_c: within(0, 20),
  wetEvery_d: fc.integer({ min: 1, max: 40 }),
  wet_mm: fc.oneof(within(0, 40), fc.constantFrom(0, 400)),
  columns: fc.constantFrom("temperatures", "wind", "all", "given"),
});

export function anyRecord(lengths: fc.Arbitrary<number>): fc.Arbitrary<WeatherRecord> {
  return fc
    .tuple(
      climate,
      lengths,
      fc.constantFrom(dayNumber(2012, 1, 1), dayNumber(2011, 8, 20), dayNumber(2015, 2, 28)),
    )
    .map(([c, length, firstDay]) => {
      const series = (of: (i: number) => number) => Float64Array.from({ length }, (_, i) => of(i));
      const scatter = (i: number) => (((i * 2654435761) >>> 0) % 1000) / 1000;
      const mid = (i: number) =>
        c.mean_c + c.season_c * Math.sin((2 * Math.PI * i) / 365.25) + 4 * (scatter(i) - 0.5);
      const half = (i: number) => (c.range_c * (0.3 + 0.7 * scatter(i + 7))) / 2;
      const rain_mm = series((i) => (i % c.wetEvery_d === 0 ? c.wet_mm * scatter(i + 3) : 0));
      const tmin_c = series((i) => mid(i) - half(i));
      const tmax_c = series((i) => mid(i) + half(i));
      const wind_ms = series((i) => 6 * scatter(i + 11));
      const rhmean_pct = series((i) => 20 + 80 * scatter(i + 17));
      const solar_MJ_m2 = series((i) => 30 * scatter(i + 23));
      const byKind = {
        temperatures: { rain_mm, tmin_c, tmax_c },
        wind: { rain_mm, tmin_c, tmax_c, wind_ms },
        all: { rain_mm, tmin_c, tmax_c, wind_ms, rhmean_pct, solar_MJ_m2 },
        given: { rain_mm, et0_mm: series((i) => 9 * scatter(i + 29)), solar_MJ_m2 },
      };
      return { firstDay, days: length, columns: byKind[c.columns as keyof typeof byKind] };
    });
}
