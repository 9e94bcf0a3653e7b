import type { FaultCollector } from "../collector.ts";
import { checkForms } from "./forms.ts";
import { has, numberAt, type Row, rowAt, rowsAt, textAt } from "./loose.ts";

const soilForms = [
  ["texture"],
  ["sand_pct", "clay_pct"],
  ["fieldCapacity", "wiltingPoint", "tew_mm", "rew_mm"],
] as const;

/** A third typed three times as 0.333333 is near enough, its last binary place included. */
const shareTolerance = 1e-6 + 1e-12;

export function checkBeds(survey: Row, faults: FaultCollector): void {
  for (const bed of rowsAt(survey, "beds")) {
    checkShares(bed, faults);
    checkSoil(rowAt(bed, "soil"), faults);
    checkObstructions(bed, faults);
    const watering = rowAt(bed, "watering");
    if (watering) checkSupply(watering, faults);
  }
}

/** The shares of a bed's plantings add to 1. */
export function checkShares(row: Row, faults: FaultCollector): void {
  const plantings = rowsAt(row, "plantings");
  const shares = plantings.map((planting) => numberAt(planting, "share"));
  if (shares.length === 0 || shares.includes(null)) return;
  const sum = shares.reduce<number>((total, share) => total + share!, 0);
  if (Math.abs(sum - 1) > shareTolerance)
    faults.add([...row.path, "plantings"], "shares-sum", { sum: Number(sum.toPrecision(8)) });
}

function checkSoil(soil: Row | null, faults: FaultCollector): void {
  if (!soil) return;
  checkForms(soil, soilForms, "soil", faults);
  const sand = numberAt(soil, "sand_pct");
  const clay = numberAt(soil, "clay_pct");
  if (sand !== null && clay !== null && sand + clay > 100)
    faults.add([...soil.path, "clay_pct"], "soil-over-whole", { sand, clay });
  const capacity = numberAt(soil, "fieldCapacity");
  const wilting = numberAt(soil, "wiltingPoint");
  if (capacity !== null && wilting !== null && wilting >= capacity)
    faults.add([...soil.path, "wiltingPoint"], "soil-wilting", { wilting, capacity });
}

/** A sector has a width; it may pass north, and 0 to 360 is all round. */
function checkObstructions(bed: Row, faults: FaultCollector): void {
  for (const obstruction of rowsAt(bed, "obstructions")) {
    const from = numberAt(obstruction, "fromAzimuth_deg");
    const to = numberAt(obstruction, "toAzimuth_deg");
    if (from === null || to === null || (from === 0 && to === 360)) continue;
    if (from % 360 === to % 360)
      faults.add([...obstruction.path, "toAzimuth_deg"], "sector-empty", { from, to });
  }
}

/** Method none asks for supply none, and a supply from a tank for the tank. */
export function checkSupply(watering: Row, faults: FaultCollector, tankComes = false): void {
  const supply = textAt(watering, "supply");
  if (supply === null) return;
  if (textAt(watering, "method") === "none" && supply !== "none")
    faults.add([...watering.path, "supply"], "none-is-none", { supply });
  const fromTank = supply === "tank-then-mains" || supply === "tank-only";
  if (fromTank && !has(watering, "tank") && !tankComes)
    faults.add([...watering.path, "tank"], "tank-wanted", { supply });
}
