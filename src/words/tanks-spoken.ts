import type { TankStory, TanksView } from "../report/tanks-view.ts";
import type { Sentence, Slot } from "./en/page.ts";
import { tanks as words } from "./en/tanks.ts";
import type { Formatter } from "./format.ts";

export interface SpokenTanks {
  headline: Sentence;
  after: readonly Sentence[];
}

const sum = <T>(items: readonly T[], figure: (item: T) => number) =>
  items.reduce((all, item) => all + figure(item), 0);

/** The page's first sentences: what comes in, what is given, what spills, and what could come. */
export function speakTanks(view: TanksView, say: Formatter): SpokenTanks {
  const slot = (at: string, litres: number): Slot => ({ at, text: say.yearly(litres / 1000) });
  const free = view.roofs.filter(({ tank }) => tank === null);
  const could_L = sum(free, ({ sends_L_year }) => sends_L_year);
  const could = could_L >= 1 ? slot("all/could", could_L) : null;
  if (view.tanks.length === 0) return { headline: words.noTank(could), after: [] };
  const inflow_L = sum(view.tanks, ({ inflow_L_year }) => inflow_L_year);
  const claims = view.tanks.flatMap((tank) => tank.claims);
  const draws = claims.filter(({ kind, got_L_year }) => kind === "draw" && got_L_year >= 1);
  const beds_L = sum(
    claims.filter(({ kind }) => kind === "bed"),
    ({ got_L_year }) => got_L_year,
  );
  const flush_L = sum(
    view.roofs.filter(({ tank, idle }) => tank !== null && !idle),
    ({ firstFlush_L_year }) => firstFlush_L_year,
  );
  const after: Sentence[] = [
    draws.length > 0
      ? words.drawsTake(
          draws.map(({ name }) => name),
          slot(
            "all/draws",
            sum(draws, ({ got_L_year }) => got_L_year),
          ),
        )
      : [],
    beds_L >= 1 ? words.bedsTake(slot("all/beds", beds_L)) : [],
    flush_L >= 1 ? words.flush(slot("all/flush", flush_L)) : [],
    could
      ? words.unconnected(
          free.map(({ name }) => name),
          could,
        )
      : [],
  ];
  if (inflow_L < 1) return { headline: [words.headlineDry], after };
  const headline = (view.tanks.length === 1 ? words.headlineOne : words.headline)(
    slot("all/sent", inflow_L),
    slot(
      "all/given",
      sum(view.tanks, ({ yield_L_year }) => yield_L_year),
    ),
    slot(
      "all/spilled",
      sum(view.tanks, ({ spill_L_year }) => spill_L_year),
    ),
  );
  return { headline, after };
}

/** What is said of one tank: what flows, how far it is to be relied on, both ways, in words. */
export function speakTank(tank: TankStory, say: Formatter): Sentence[] {
  const figure = (what: string, text: string): Slot => ({ at: `tank/${tank.id}/${what}`, text });
  if (!tank.inUse) return [words.tank.notUsed(tank.name)];
  const flows = words.tank.flows(
    figure("inflow", say.litres(tank.inflow_L_year)),
    figure("yield", say.litres(tank.yield_L_year)),
    figure("spill", say.litres(tank.spill_L_year)),
  );
  if (tank.capacity_L <= 0) return [words.tank.noSize(tank.name)];
  if (!tank.asked) return [words.tank.nothingAsked(tank.name), flows];
  const topUp =
    tank.topUp_L_year >= 1 ? words.tank.topUp(figure("topup", say.litres(tank.topUp_L_year))) : [];
  if (tank.shortDays_year < 0.005) return [flows, topUp, [words.tank.always]];
  const inHundred = (share: number) => say.number(100 * share, share > 0.99 ? 1 : 0);
  return [
    flows,
    topUp,
    words.tank.shortDays(figure("short", daysText(tank.shortDays_year, say))),
    words.tank.reliable(
      figure("reliability", inHundred(tank.reliability)),
      say.volumeUnit,
      figure("volumetric-reliability", inHundred(tank.volumetricReliability)),
    ),
  ];
}

export function daysText(days: number, say: Formatter): string {
  const shown = days < 10 ? Math.round(days * 10) / 10 : Math.round(days);
  return shown === 1 ? words.tank.oneDay : words.tank.days(say.number(shown, 1));
}
