import type { BedDays } from "../engine/bed-day.ts";
import { blankDays, runBed } from "../engine/bed-run.ts";
import type { ReadyBed, ReadyGrounds } from "../engine/prepare.ts";
import { type BedRun, runToNeed, type SiteRun } from "../engine/site-run.ts";
import { runTank, type TankRun, thirstyBed } from "../engine/tank-run.ts";
import { tankSeries } from "../engine/tanks.ts";
import { grossFromNet_L } from "../engine/watering.ts";
import type { WorkedOut } from "../report/work-out.ts";
import type { Resolved } from "../survey/resolve.ts";
import type { Survey } from "../survey/survey.ts";
import type { Run } from "./address.ts";

/** One run of the whole site. */
export interface RunBook {
  name: "need" | "today" | "plan";
  survey: Survey;
  resolved: Resolved;
  ready: ReadyGrounds;
  site: SiteRun;
  /** Beds watered to need in it; as today has its days only where a bed hangs on its tank alone. */
  beds: readonly BedRun[];
}

/** A bed's days in one run. */
export interface History {
  days: BedDays;
  /** Gross litres that it got on each day. */
  got_L: Float64Array;
  /** What decides its water: its own soil, its tank as well, or rain alone. */
  by: "need" | "tank" | "rain";
}

/** The runs behind a survey worked out, with their days: made when first asked for, and kept. */
export class Book {
  readonly worked: WorkedOut;
  private readonly runs = new Map<string, RunBook>();
  private readonly kept = new Map<string, unknown>();

  constructor(worked: WorkedOut) {
    this.worked = worked;
  }

  /** The site's run that figures under a run's name come from. */
  run(name: Run): RunBook {
    const wanted =
      name === "plan" || name === "plan-with-water" ? "plan" : name === "today" ? "today" : "need";
    const found = this.runs.get(wanted);
    if (found) return found;
    const made = this.make(wanted);
    this.runs.set(wanted, made);
    return made;
  }

  /** Works something out once. */
  once<T>(key: string, work: () => T): T {
    if (!this.kept.has(key)) this.kept.set(key, work());
    return this.kept.get(key) as T;
  }

  /** A bed's days; null where its soil is not followed in that run, as under today's habit. */
  history(name: Run, k: number): History | null {
    return this.once(`history ${name} ${k}`, () => this.historyOf(name, k));
  }

  private make(name: RunBook["name"]): RunBook {
    const { worked } = this;
    const { survey, resolved, ready } = worked;
    if (name === "today")
      return { name, survey, resolved, ready, site: worked.today, beds: this.run("need").beds };
    if (name === "plan" && worked.planned && worked.intended) {
      const site = runToNeed(worked.planned, true, true);
      return { name, ...worked.intended, ready: worked.planned, site, beds: site.beds };
    }
    if (name === "plan") return { ...this.run("need"), name };
    const hasDays = worked.need.beds.every(({ days }) => days !== null);
    const site = hasDays ? worked.need : runToNeed(ready, true, true);
    return { name, survey, resolved, ready, site, beds: site.beds };
  }

  private historyOf(name: Run, k: number): History | null {
    if (name === "today") return this.todayHistories().get(k) ?? null;
    const bed = this.run(name).beds[k];
    if (!bed?.days) return null;
    const { supply } = bed.ready.grown.bed.watering;
    const always = name === "with-water" || name === "plan-with-water";
    if (always && (supply === "none" || supply === "tank-only")) return withWater(bed.ready);
    const by = supply === "none" ? "rain" : supply === "tank-only" ? "tank" : "need";
    return { days: bed.days, got_L: bed.suppliedByDay_L, by };
  }

  /** Beds that only a tank waters and whose habit is not known: their need stands in, stepped with today's tank. */
  private todayHistories(): ReadonlyMap<number, History> {
    return this.once("today's beds on a tank", () => {
      const { ready } = this.worked;
      const found = new Map<number, History>();
      for (const tank of ready.tanks) {
        const thirsty = tank.beds.filter(isThirstyToday);
        if (thirsty.length === 0) continue;
        const claimants = new Map(
          thirsty.map((bed) => [bed, thirstyBed(bed.grown, bed.open, blankDays(bed.open.length))]),
        );
        const known = (asks_L: Float64Array, restFromMains: boolean) => ({
          kind: "known" as const,
          asks_L,
          restFromMains,
        });
        const need = new Map(this.run("need").beds.map((run) => [run.ready, run.needByDay_L]));
        runTank(
          tank.group,
          [
            ...tank.before.map(({ asks_L }) => known(asks_L, true)),
            ...tank.beds.map((bed) => claimants.get(bed) ?? known(bed.habit_L ?? need.get(bed)!, true)),
            ...tank.after.map(({ asks_L }) => known(asks_L, true)),
          ],
          tankSeries(tank.inflow_L),
          new Float64Array(ready.weather.calendar.days),
        );
        for (const [bed, { net_mm, keep }] of claimants)
          found.set(ready.beds.indexOf(bed), { days: keep!, got_L: grossOf(bed, net_mm), by: "tank" });
      }
      return found;
    });
  }
}

function isThirstyToday({ grown, habit_L }: ReadyBed): boolean {
  return grown.bed.watering.supply === "tank-only" && habit_L === null;
}

function withWater(ready: ReadyBed): History {
  const net_mm = new Float64Array(ready.open.length);
  const days = blankDays(net_mm.length);
  runBed(ready.grown, ready.open, net_mm, days);
  return { days, got_L: grossOf(ready, net_mm), by: "need" };
}

function grossOf({ grown: { bed } }: ReadyBed, net_mm: Float64Array): Float64Array {
  return net_mm.map((net) => grossFromNet_L(net, bed.area_m2, bed.watering.efficiency));
}

const books = new WeakMap<WorkedOut, Book>();

export function bookOf(worked: WorkedOut): Book {
  const found = books.get(worked);
  if (found) return found;
  const made = new Book(worked);
  books.set(worked, made);
  return made;
}

/** A tank's run, by the place of its group. */
export function tankRun(run: RunBook, k: number): TankRun {
  return run.site.tanks[k]!;
}
