import type { WorkedOut } from "../report/work-out.ts";

/** Addresses of the figures that an answer opens with: where every walk down begins. */
export function headlines({ ready, outcome }: WorkedOut): string[] {
  const years = outcome.mains.byYear.map(({ year }) => String(year));
  const mains = ["mains/give-up", "mains/today", "mains/need", "mains/plan", "mains/unknown"];
  const whole =
    years.length > 0 ? ["mains/give-up-p10", "mains/give-up-p90", "mains/dry-year", "mains/wet-year"] : [];
  const beds = ready.beds.flatMap(({ grown: { bed }, habit_L }) => {
    const at = (what: string) => `bed/${bed.id}/${what}`;
    const lasting = ["available", "trigger", "mulch", "efficiency", "rate", "flow", "area"].map(at);
    const water = ["need", "supplied", "net", "etc", "drainage", "rain-used", "stress"].map(at);
    return [...water, ...(habit_L ? [at("habit"), at("short")] : []), ...lasting];
  });
  const tanks = ready.tanks.flatMap(({ group }) => {
    const flows = ["inflow", "draw", "new-draw", "yield", "spill", "topup", "short"];
    return [...flows, "reliability", "volumetric-reliability"].map((what) => `tank/${group.id}/${what}`);
  });
  if (tanks.length > 0) mains.push("mains/tanks");
  const roofs = ready.grounds.roofs.map(({ id }) => `roof/${id}/inflow`);
  const lost = ready.grounds.leaks_L_day > 0 ? ["leaks"] : [];
  return [...mains, ...whole, ...beds, ...tanks, ...roofs, ...lost, "rain", "et0"];
}

/** What each bed takes in each month of a mean year that the record has days of, and in a week of it. */
export function monthFigures({ ready, weather }: WorkedOut): string[] {
  const months = [...new Set(weather.calendar.month)].map((month) => String(month + 1).padStart(2, "0"));
  return ready.beds.flatMap(({ grown: { bed } }) =>
    months.flatMap((month) => [`bed/${bed.id}/need/${month}`, `bed/${bed.id}/need/week/${month}`]),
  );
}
