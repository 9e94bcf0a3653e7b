import { roofInflow_L, stepTank, type TankGroup, tankGroups, tankSeries } from "../../src/engine/tanks.ts";
import { efficiencyFromUniformity } from "../../src/engine/uniformity.ts";
import { applicationRate_mm_h, cyclesAndSoaks, grossFromNet_L } from "../../src/engine/watering.ts";
import { drip_L_day, drop_mL, leak_L_day } from "../../src/survey/measuring/drips.ts";
import { tapDrop_mL } from "../../src/tables/drops.ts";
import { method } from "../../src/tables/methods.ts";
import { fromSI, toSI } from "../../src/units.ts";
import type { Inputs, Working } from "./figures.ts";

function tenDays(rule: TankGroup["rule"]): Working {
  return (i: Inputs) => {
    const [tank] = tankGroups([
      {
        id: "tank",
        capacity_L: i.n("capacity_L"),
        level_L: i.n("start_L"),
        unusable_L: 0,
        inUse: true,
        rule,
        topUp: null,
        linked: [],
      },
    ]);
    const series = tankSeries(Float64Array.from(i.list("inflow_L")), Float64Array.from(i.list("demand_L")));
    let level_L = i.n("start_L");
    for (let day = 0; day < series.inflow_L.length; day++) level_L = stepTank(tank!, series, day, level_L);
    const sum = (values: Float64Array) => values.reduce((total, value) => total + value, 0);
    return {
      yield_L: [...series.yield_L],
      overflow_L: [...series.spill_L],
      storage_L: [...series.level_L],
      waterSavingEfficiency: sum(series.yield_L) / sum(series.draw_L),
    };
  };
}

export const water: Record<string, Working> = {
  "tank-yas-ten-days": tenDays("after-spillage"),
  "tank-ybs-ten-days": tenDays("before-spillage"),
  "roof-yield-botswana": (i) => ({
    yield_L: roofInflow_L(
      {
        id: "roof",
        area_m2: i.n("roof_m2"),
        runoff: i.n("runoffFactor"),
        firstFlush_mm: 0,
        share: 1,
        tank: "tank",
      },
      Float64Array.of(i.n("annualRain_mm")),
      0,
    ),
  }),
  "run-time-multiplier-from-du": (i) => ({
    multiplier: i.list("duLq").map((du) => 1 / efficiencyFromUniformity(du)),
  }),
  "precipitation-rate-us-units": (i) => ({
    rate_in_h: fromSI(
      applicationRate_mm_h(toSI(i.n("flow_gpm"), "gal/min", "L/min")!, toSI(i.n("area_ft2"), "ft²", "m²")!),
      "mm",
      "in",
    ),
  }),
  "cycle-and-soak-rule": (i) => {
    const { cycles, longestCycle_min } = cyclesAndSoaks(
      i.n("depth_mm"),
      i.n("rate_mm_h"),
      i.n("intake_mm_h"),
      i.n("surfaceStorage_mm"),
    );
    return { maxCycle_min: longestCycle_min, cycles, depthPerCycle_mm: i.n("depth_mm") / cycles };
  },
  "landscape-volume-identity": (i) => {
    const net_mm = i.n("et0_mm") * i.n("plantFactor") - i.n("effectiveRain_mm");
    return {
      gross_mm: grossFromNet_L(net_mm, 1, i.n("efficiency")),
      volume_L: grossFromNet_L(net_mm, i.n("area_m2"), i.n("efficiency")),
      gal_per_ft2_in: fromSI(grossFromNet_L(25.4, toSI(1, "ft²", "m²")!, 1), "L", "gal"),
    };
  },
  "uc-guide-total-water-case1": (i) => ({
    totalWater_in_month: grossFromNet_L(i.n("etl_in_month"), 1, i.n("irrigationEfficiency")),
  }),
  "first-flush-depth-rules": (i) => ({
    volumeAt0p5mm_L:
      roofInflow_L(
        { id: "roof", area_m2: i.n("roof_m2"), runoff: 1, firstFlush_mm: 0, share: 1, tank: "tank" },
        Float64Array.of(10),
        0,
      ) -
      roofInflow_L(
        { id: "roof", area_m2: i.n("roof_m2"), runoff: 1, firstFlush_mm: 0.5, share: 1, tank: "tank" },
        Float64Array.of(10),
        0,
      ),
  }),
  // FAO's sprinkler is a laid-out system, the table's rotor; a sprinkler on a hose's end does worse.
  "fao-application-efficiency": () => ({
    fieldApplicationEfficiency_pct: {
      sprinkler: 100 * method("rotor").efficiency.middle,
      drip: 100 * method("drip").efficiency.middle,
    },
  }),
  "fao56-table-20-wetted-fraction": () => ({
    fw: {
      sprinkler: method("sprinkler").wettedShare.middle,
      "trickle/drip": [method("drip").wettedShare.low, method("drip").wettedShare.high],
    },
  }),
  "usgs-drip-volume": (i) => ({
    litres_per_day: i.list("drips_per_min").map((drips) => drip_L_day(drips, i.n("drop_mL"))),
    gallons_per_year_at_60: fromSI(365 * drip_L_day(60, tapDrop_mL.low), "L", "gal"),
  }),
  "epa-drip-statements": (i, { gallons_per_year }) => ({
    litres_per_day: i.list("drips_per_min").map((drips) => drip_L_day(drips, tapDrop_mL.high)),
    impliedDrop_mL: i
      .list("drips_per_min")
      .map((drips, k) => drop_mL(toSI((gallons_per_year as number[])[k]!, "gal", "L")! / 365, drips)),
  }),
  "steady-leak-year": (i) => ({
    L_per_day: leak_L_day(i.n("leak_L_min")),
    kL_per_year: (365 * leak_L_day(i.n("leak_L_min"))) / 1000,
  }),
};
