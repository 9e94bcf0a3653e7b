import * as air from "../../src/engine/air.ts";
import { hargreaves_mm, mmPerMJ_m2, penmanMonteith_mm } from "../../src/engine/et0.ts";
import * as sun from "../../src/engine/radiation.ts";
import { dayNumber, dayOfYear } from "../../src/engine/weather/dates.ts";
import type { Inputs, Working } from "./figures.ts";

const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A table by latitude of a figure on the middle day of each month. */
function byLatitude(figure: (latitude_deg: number, day: number) => number, key: string): Working {
  return (inputs, expected) => {
    const wanted = expected[key] as Record<string, number[]>;
    const days = inputs.list("dayOfYearMidMonth");
    return {
      [key]: Object.fromEntries(
        Object.entries(wanted).map(([latitude, row]) => [
          latitude,
          row.map((_, month) => figure(Number(latitude), days[month]!)),
        ]),
      ),
    };
  };
}

/** A day of Eq. 6 with every step on the way. */
function et0Steps(
  i: Inputs,
  wind_ms: number,
  vapour_kPa: number,
  solar_MJ_m2: number,
): Record<string, number> {
  const [tmin_c, tmax_c, elevation_m] = [i.n("tmin_C"), i.n("tmax_C"), i.n("elevation_m")];
  const ra = sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear"));
  const rso = sun.clearSky_MJ_m2(elevation_m, ra);
  const rnl = sun.netLongwave_MJ_m2(tmin_c, tmax_c, vapour_kPa, sun.relativeShortwave(solar_MJ_m2, rso));
  const net_MJ_m2 = sun.netShortwave_MJ_m2(solar_MJ_m2) - rnl;
  const pressure = air.pressure_kPa(elevation_m);
  return {
    u2_m_s: wind_ms,
    pressure_kPa: pressure,
    delta_kPa_per_C: air.saturationSlope_kPa_C((tmin_c + tmax_c) / 2),
    gamma_kPa_per_C: air.psychrometric_kPa_C(pressure),
    es_kPa: air.meanSaturation_kPa(tmin_c, tmax_c),
    ea_kPa: vapour_kPa,
    ra_MJ_m2_d: ra,
    daylight_h: sun.daylight_h(i.n("latitude_deg"), i.n("dayOfYear")),
    rs_MJ_m2_d: solar_MJ_m2,
    rso_MJ_m2_d: rso,
    rnl_MJ_m2_d: rnl,
    rn_MJ_m2_d: net_MJ_m2,
    et0_mm_d: penmanMonteith_mm({
      tmin_c,
      tmax_c,
      vapour_kPa,
      wind_ms,
      net_MJ_m2,
      soilHeat_MJ_m2: 0,
      elevation_m,
    }),
  };
}

const solarFromRange = (i: Inputs) =>
  sun.solarFromTemperature_MJ_m2(
    i.n("tmin_C"),
    i.n("tmax_C"),
    sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear")),
    i.n("kRs"),
  );

const fromRange = (i: Inputs) =>
  air.vapourFromRange_kPa(i.n("tmin_C"), i.n("tmax_C"), i.n("rhmin_pct"), i.n("rhmax_pct"));

export const airAndSun: Record<string, Working> = {
  "fao56-ex02-atmospheric-parameters": (i) => ({
    pressure_kPa: air.pressure_kPa(i.n("elevation_m")),
    psychrometricConstant_kPa_per_C: air.psychrometric_kPa_C(air.pressure_kPa(i.n("elevation_m"))),
  }),
  "fao56-ex03-saturation-vapour-pressure": (i) => ({
    esTmax_kPa: air.saturation_kPa(i.n("tmax_C")),
    esTmin_kPa: air.saturation_kPa(i.n("tmin_C")),
    es_kPa: air.meanSaturation_kPa(i.n("tmin_C"), i.n("tmax_C")),
    esAtTmean_kPa: air.saturation_kPa((i.n("tmin_C") + i.n("tmax_C")) / 2),
  }),
  "fao56-ex04-psychrometer": (i) => ({
    pressure_kPa: air.pressure_kPa(i.n("elevation_m")),
    esWetBulb_kPa: air.saturation_kPa(i.n("wetBulb_C")),
    ea_kPa: air.vapourFromBulbs_kPa(
      i.n("dryBulb_C"),
      i.n("wetBulb_C"),
      air.pressure_kPa(i.n("elevation_m")),
      i.n("psychrometerCoefficient_per_C"),
    ),
  }),
  "fao56-ex05-ea-from-humidity": (i) => ({
    esTmin_kPa: air.saturation_kPa(i.n("tmin_C")),
    esTmax_kPa: air.saturation_kPa(i.n("tmax_C")),
    ea_kPa: fromRange(i),
    eaFromMeanHumidityEq19_kPa: air.vapourFromMean_kPa(
      i.n("tmin_C"),
      i.n("tmax_C"),
      (i.n("rhmin_pct") + i.n("rhmax_pct")) / 2,
    ),
  }),
  "fao56-ex06-vapour-pressure-deficit": (i) => ({
    vpd_kPa: air.meanSaturation_kPa(i.n("tmin_C"), i.n("tmax_C")) - fromRange(i),
  }),
  "fao56-ex08-extraterrestrial-radiation": (i) => ({
    inverseRelativeDistance: sun.inverseDistance(i.n("dayOfYear")),
    declination_rad: sun.declination_rad(i.n("dayOfYear")),
    sunsetHourAngle_rad: sun.sunsetAngle_rad(i.n("latitude_deg"), i.n("dayOfYear")),
    ra_MJ_m2_d: sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear")),
    ra_mm_d: mmPerMJ_m2 * sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear")),
  }),
  "fao56-ex09-daylight-hours": (i) => ({ daylight_h: sun.daylight_h(i.n("latitude_deg"), i.n("dayOfYear")) }),
  "fao56-ex10-solar-radiation-from-sunshine": (i) => {
    const ra = sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear"));
    const daylight = sun.daylight_h(i.n("latitude_deg"), i.n("dayOfYear"));
    const sunshine = i.n("sunshine_h_in_May") / 31;
    const rs = sun.solarFromSunshine_MJ_m2(sunshine, daylight, ra);
    return {
      ra_MJ_m2_d: ra,
      daylight_h: daylight,
      sunshine_h_d: sunshine,
      rs_MJ_m2_d: rs,
      rs_mm_d: mmPerMJ_m2 * rs,
    };
  },
  "fao56-ex12-net-radiation": (i) => {
    const rns = sun.netShortwave_MJ_m2(i.n("rs_MJ_m2_d"));
    const rn = rns - i.n("rnl_MJ_m2_d");
    return { rns_MJ_m2_d: rns, rn_MJ_m2_d: rn, rn_mm_d: mmPerMJ_m2 * rn };
  },
  "fao56-ex13-soil-heat-flux-month": (i) => {
    const g = sun.monthlySoilHeat_MJ_m2(i.n("tPrevMonth_C"), i.n("tNextMonth_C"));
    return { g_MJ_m2_d: g, g_mm_d: mmPerMJ_m2 * g };
  },
  "fao56-ex14-wind-to-2m": (i) => ({
    factor: air.windAt2m_ms(1, i.n("height_m")),
    u2_m_s: air.windAt2m_ms(i.n("wind_m_s"), i.n("height_m")),
  }),
  "fao56-ex15-rs-from-temperature": (i) => ({
    ra_MJ_m2_d: sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear")),
    rs_MJ_m2_d: solarFromRange(i),
    rs_mm_d: mmPerMJ_m2 * solarFromRange(i),
  }),
  "fao56-ex18-et0-day-uccle": (i) => {
    const [latitude_deg, day] = [i.n("latitude_deg"), i.n("dayOfYear")];
    const solar_MJ_m2 = sun.solarFromSunshine_MJ_m2(
      i.n("sunshine_h"),
      sun.daylight_h(latitude_deg, day),
      sun.extraterrestrial_MJ_m2(latitude_deg, day),
    );
    return et0Steps(i, air.windAt2m_ms(i.n("wind10m_km_h") / 3.6, 10), fromRange(i), solar_MJ_m2);
  },
  "fao56-ex20-et0-temperature-only-lyon": (i) => {
    const {
      u2_m_s: _,
      pressure_kPa: __,
      daylight_h: ___,
      gamma_kPa_per_C: ____,
      ...steps
    } = et0Steps(i, i.n("u2_m_s_assumed"), air.saturation_kPa(i.n("tmin_C")), solarFromRange(i));
    return steps;
  },
  "fao56-ex20-hargreaves": (i) => ({
    et0_mm_d: hargreaves_mm(
      i.n("tmin_C"),
      i.n("tmax_C"),
      sun.extraterrestrial_MJ_m2(i.n("latitude_deg"), i.n("dayOfYear")),
    ),
  }),
  "fao56-table-2-6-ra": byLatitude(sun.extraterrestrial_MJ_m2, "ra"),
  "fao56-table-2-7-daylight": byLatitude(sun.daylight_h, "n"),
  "fao56-table-2-7-latitude-48N-part": byLatitude(sun.daylight_h, "n"),
  "fao56-table-2-1-pressure": (i) => ({ pressure_kPa: i.list("elevation_m").map(air.pressure_kPa) }),
  "fao56-table-2-2-psychrometric": (i) => ({
    gamma_kPa_per_C: i.list("elevation_m").map((z) => air.psychrometric_kPa_C(air.pressure_kPa(z))),
  }),
  "fao56-table-2-3-saturation-vapour-pressure": (i) => ({ es_kPa: i.list("t_C").map(air.saturation_kPa) }),
  "fao56-table-2-4-slope": (i) => ({ delta_kPa_per_C: i.list("t_C").map(air.saturationSlope_kPa_C) }),
  // Eq. 39 gives σT⁴ itself where its other two factors are 1: ea 0 kPa makes the second 0.34.
  "fao56-table-2-8-sigmaT4": (i) => ({
    sigmaT4_MJ_m2_d: i.list("t_C").map((t) => sun.netLongwave_MJ_m2(t, t, 0, 1) / 0.34),
  }),
  "fao56-table-2-9-wind-factor": (i) => ({ factor: i.list("height_m").map((z) => air.windAt2m_ms(1, z)) }),
  "fao56-table-2-5-day-of-year": (i) => ({
    j: i.words("dates").map((date) => {
      const [day, month] = date.split(" ");
      return dayOfYear(dayNumber(2023, months.indexOf(month!) + 1, Number(day)));
    }),
  }),
  "fao56-table-3-unit-conversions": () => ({ mm_per_MJ_m2: mmPerMJ_m2 }),
};
