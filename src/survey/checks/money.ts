import type { FaultCollector } from "../collector.ts";
import { has, numberAt, type Row, rowAt, rowsAt } from "./loose.ts";

/** One price, or steps that begin at 0 kL and rise. */
export function checkTariff(survey: Row, faults: FaultCollector): void {
  const tariff = rowAt(survey, "tariff");
  if (!tariff) return;
  const single = has(tariff, "perKL");
  const stepped = has(tariff, "steps");
  if (!single && !stepped) faults.add(tariff.path, "price-none");
  if (single && stepped) faults.add(tariff.path, "price-many");
  let before: number | null = null;
  rowsAt(tariff, "steps").forEach((step, at) => {
    const from = numberAt(step, "fromKL");
    const path = [...step.path, "fromKL"];
    if (from !== null && at === 0 && from !== 0) faults.add(path, "steps-start", { found: from });
    if (from !== null && before !== null && from <= before)
      faults.add(path, "not-rising", { found: from, before });
    before = from;
  });
}
