import * as plants from "../../src/engine/plants.ts";
import { textureWater } from "../../src/engine/soil-texture.ts";
import * as soil from "../../src/engine/soil-water.ts";
import { climateTerm } from "../../src/engine/weather/series.ts";
import { mulchMaterial } from "../../src/tables/mulches.ts";
import { soils } from "../../src/tables/soils.ts";
import { type Inputs, published, type Working } from "./figures.ts";

const climateOf = (i: Inputs) => climateTerm(i.n("u2_m_s"), i.n("rhmin_pct"));

/** Repeats a day's step over days, collecting what each gives. */
function overDays(days: number, step: () => Record<string, number>): Record<string, number[]> {
  const columns: Record<string, number[]> = {};
  for (let day = 0; day < days; day++)
    for (const [name, value] of Object.entries(step())) columns[name] = [...(columns[name] ?? []), value];
  return columns;
}

export const soilAndPlants: Record<string, Working> = {
  "fao56-ex27-kcmid-climate": (i) => ({
    kcMid: i
      .rows("cases")
      .map((c) =>
        plants.climateAdjustedKcb(i.n("kcMidTable"), climateTerm(c.u2_m_s!, c.rhmin_pct!), i.n("height_m")),
      ),
  }),
  "fao56-box15-kcmid-bean": (i) => ({
    kcMid: plants.climateAdjustedKcb(i.n("kcMidTable"), climateOf(i), i.n("height_m")),
    kcEnd: plants.climateAdjustedKcb(i.n("kcEndTable"), climateOf(i), i.n("height_m")),
  }),
  "fao56-ex29-kcb-adjust": (i) => {
    const [kcbIni, kcbMid, kcbEnd] = i
      .list("kcbTable")
      .map((kcb) => plants.climateAdjustedKcb(kcb, climateOf(i), i.n("height_m")));
    return { kcbIni, kcbMid, kcbEnd };
  },
  "fao56-ex31-bare-soil-drying": (i) => {
    let depletion_mm = i.n("deStart_mm");
    return overDays(i.n("days"), () => {
      const kr = soil.evaporationReduction(depletion_mm, i.n("TEW_mm"), i.n("REW_mm"));
      const ke = soil.evaporationCoefficient(0, kr, i.n("kcMax"), i.n("kcb"), i.n("few"));
      const evap_mm_d = ke * i.n("et0_mm_d");
      depletion_mm += evap_mm_d / i.n("few");
      return { kr, ke, evap_mm_d, deEnd_mm: depletion_mm, etc_mm_d: (i.n("kcb") + ke) * i.n("et0_mm_d") };
    });
  },
  "fao56-ex32-kc-sprinkler": (i, expected) => {
    const kcb = i.n("kcb");
    const kcMax = plants.kcMax(climateOf(i), plants.kcMaxHeightTerm(i.n("height_m")), kcb);
    const few = soil.exposedWetted(expected.fc as number, i.n("fw"), false);
    const ke = soil.evaporationCoefficient(0, i.n("kr"), kcMax, kcb, few);
    return { kcMax, few, ke, kc: kcb + ke };
  },
  "fao56-ex36-taw-raw": (_, expected) => {
    const { soils: grounds, plants: crops } = exampleOf("fao56-ex36-taw-raw");
    return {
      tawRaw_mm: Object.fromEntries(
        Object.keys(expected.tawRaw_mm as object).map((crop) => [
          crop,
          Object.fromEntries(
            Object.entries(grounds).map(([texture, { thetaFC, thetaWP }]) => {
              const taw = soil.totalAvailable_mm(thetaFC!, thetaWP!, crops[crop]!.root_m!);
              return [texture, [taw, crops[crop]!.p! * taw]];
            }),
          ),
        ]),
      ),
    };
  },
  "fao56-ex37-stress-ten-days": (i) => {
    const taw = soil.totalAvailable_mm(i.n("thetaFC"), i.n("thetaWP"), i.n("root_m"));
    let depletion_mm = i.n("drStart_mm");
    const days = overDays(i.n("days"), () => {
      const ks = soil.stress(depletion_mm, i.n("p"), taw);
      const etcAdj_mm_d = ks * i.n("kc") * i.n("et0_mm_d");
      depletion_mm += etcAdj_mm_d;
      return { ks, etcAdj_mm_d, drEnd_mm: depletion_mm };
    });
    return { taw_mm: taw, raw_mm: i.n("p") * taw, ...days };
  },
  "fao56-p-adjustment": (i) => ({
    p: i.list("pTable").map((p, k) => soil.adjustedFraction(p, i.list("etc_mm_d")[k]!)),
  }),
  "fao56-organic-mulch-rule": (i) => {
    const { cut, fullDepth_mm } = mulchMaterial("wood-chip");
    const reduction = soil.mulchCut({
      cut: cut.middle,
      fullDepth_mm: fullDepth_mm.middle,
      cover: i.n("coverFraction"),
      depth_mm: 75,
    });
    const open = soil.evaporationCoefficient(0, 1, 1.2, 0.5, 0.4);
    return {
      evaporationReduction: reduction,
      keFactor: soil.evaporationCoefficient(reduction, 1, 1.2, 0.5, 0.4) / open,
      tewFactorNonGrowingSeason: 1 - reduction,
    };
  },
  "allen-pereira-2009-density-coefficient": (i) => {
    const kd = i.rows("cases").map((c) => plants.density(c.fcEff!, c.height_m!, c.ML!));
    const [kcMin, kcbFull] = [i.n("kcMin"), i.n("kcbFull")];
    return { kd, kcb: kd.map((share) => kcMin + share * (kcbFull - kcMin)) };
  },
  "saxton-rawls-2006-texture-table": (i) => {
    const rows = i.list("sand_pct").map((sand, k) => textureWater(sand / 100, i.list("clay_pct")[k]! / 100));
    return {
      thetaWP: rows.map((row) => row.wiltingPoint),
      thetaFC: rows.map((row) => row.fieldCapacity),
      saturation: rows.map((row) => row.saturation),
      ks_mm_h: rows.map((row) => row.saturatedConductivity_mm_h),
    };
  },
  "fao56-table-19-soil-water": (_, expected) => ({
    rows: (expected.rows as { texture: string }[]).map(({ texture }) => {
      const row = soils.find((s) => s.texture === texture.replaceAll(" ", "-"))!;
      return {
        texture,
        thetaFC: [row.fieldCapacity.low, row.fieldCapacity.high],
        REW_mm: [row.rew_mm.low, row.rew_mm.high],
        TEW_mm: [row.tew_mm.low, row.tew_mm.high],
      };
    }),
  }),
};

function exampleOf(id: string) {
  const entry = published.find((e) => e.id === id)!;
  return entry.inputs as Record<"soils" | "plants", Record<string, Record<string, number>>>;
}
