import type { FaultCollector } from "../collector.ts";
import { has, numberAt, type Row, rowAt, rowsAt, textAt, textsAt } from "./loose.ts";

export function checkWater(survey: Row, faults: FaultCollector): void {
  const tanks = rowsAt(survey, "tanks");
  for (const tank of tanks) checkTank(tank, faults);
  for (const measure of rowsAt(survey, "measures")) {
    const added = rowAt(measure, "addTank");
    if (added) checkTank(added, faults);
    checkResize(rowAt(measure, "resizeTank"), tanks, faults);
  }
  for (const tap of rowsAt(survey, "taps")) checkTap(tap, tanks, faults);
}

function checkTank(tank: Row, faults: FaultCollector): void {
  const capacity = numberAt(tank, "capacity_L");
  for (const name of ["level_L", "unusable_L"]) {
    const found = numberAt(tank, name);
    if (capacity !== null && found !== null && found > capacity)
      faults.add([...tank.path, name], "above-capacity", { found, capacity });
  }
  const topUp = rowAt(tank, "topUp");
  const below = topUp && numberAt(topUp, "belowShare");
  const to = topUp && numberAt(topUp, "toShare");
  if (topUp && below !== null && to !== null && to < below)
    faults.add([...topUp.path, "toShare"], "top-up-order", { below, found: to });
  const id = textAt(tank, "id");
  for (const { text, path } of textsAt(tank, "linked"))
    if (text === id) faults.add(path, "linked-to-itself", { id });
}

function checkResize(resize: Row | null, tanks: Row[], faults: FaultCollector): void {
  const capacity = resize && numberAt(resize, "capacity_L");
  const tank = resize && tanks.find((row) => textAt(row, "id") === textAt(resize, "tank"));
  const unusable = tank && numberAt(tank, "unusable_L");
  if (resize && unusable && capacity !== null && capacity < unusable)
    faults.add([...resize.path, "capacity_L"], "below-outlet", { found: capacity, unusable });
}

/** Flow by level belongs to a tap that draws from a tank, and each level is given once. */
function checkTap(tap: Row, tanks: Row[], faults: FaultCollector): void {
  if (!has(tap, "flowAt")) return;
  const source = textAt(tap, "source");
  if (source === "mains" || source === "other")
    faults.add([...tap.path, "flowAt"], "flow-at-no-tank", { source });
  const tank = tanks.find((row) => textAt(row, "id") === source);
  const capacity = tank ? numberAt(tank, "capacity_L") : null;
  const seen = new Set<number>();
  for (const point of rowsAt(tap, "flowAt")) {
    const level = numberAt(point, "level_L");
    const path = [...point.path, "level_L"];
    if (level === null) continue;
    if (capacity !== null && level > capacity) faults.add(path, "above-capacity", { found: level, capacity });
    if (seen.has(level)) faults.add(path, "level-twice", { found: level });
    seen.add(level);
  }
}
