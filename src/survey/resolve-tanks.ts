import type { Draw, Roof, Tank } from "../engine/grounds.ts";
import { defaultChoice, defaultNumber } from "../tables/defaults.ts";
import { roofMaterial } from "../tables/roofs.ts";
import type { Stands } from "./resolve-assumed.ts";
import { monthFlags, weekdayFlags } from "./resolve-days.ts";
import type { SurveyDraw, SurveyRoof, SurveyTank } from "./survey.ts";

/** A roof, its runoff from its material where not surveyed. */
export function resolveRoof(roof: SurveyRoof, where: string, stands: Stands): Roof {
  const material = roofMaterial(roof.material);
  const row = `roofs.${roof.material}`;
  return {
    id: roof.id,
    area_m2: roof.area_m2,
    runoff: stands.number(roof.runoff, `${where}.runoff`, material.runoff, `${row}.runoff`),
    firstFlush_mm: stands.number(
      roof.firstFlush_mm,
      `${where}.firstFlush_mm`,
      material.firstFlush_mm,
      `${row}.firstFlush_mm`,
    ),
    share: stands.number(roof.share, `${where}.share`, defaultNumber("roof.share")),
    tank: roof.tank ?? null,
  };
}

export function resolveTank(tank: SurveyTank, where: string, stands: Stands): Tank {
  return {
    id: tank.id,
    capacity_L: tank.capacity_L,
    level_L: tank.level_L ?? null,
    unusable_L: stands.number(tank.unusable_L, `${where}.unusable_L`, defaultNumber("tank.unusable_L")),
    inUse: stands.choice(tank.inUse, `${where}.inUse`, defaultChoice("tank.inUse")),
    rule: stands.choice(tank.rule, `${where}.rule`, defaultChoice("tank.rule")),
    topUp: tank.topUp ?? null,
    linked: tank.linked ?? [],
  };
}

export function resolveDraw(draw: SurveyDraw, where: string, stands: Stands): Draw {
  return {
    id: draw.id,
    tank: draw.tank,
    litresPerDay: draw.litresPerDay,
    weekdays: weekdayFlags(draw.days),
    months: monthFlags(draw.months),
    order: stands.choice(draw.order, `${where}.order`, defaultChoice("draw.order")),
    pausesWhenAbsent: stands.choice(
      draw.pausesWhenAbsent,
      `${where}.pausesWhenAbsent`,
      defaultChoice("draw.pausesWhenAbsent"),
    ),
  };
}
