import type { Heat } from "../engine/rounds/heat.ts";
import type { Forecast } from "../engine/rounds/soil-now.ts";
import { parseIso } from "../engine/weather/dates.ts";
import { readLog } from "../files/log.ts";
import type { WeekAsk } from "../report/week-ask.ts";
import { shown } from "../survey/record/draft.ts";
import type { LogEntry } from "../survey/schema/log.ts";
import type { Survey } from "../survey/survey.ts";
import { faultWords } from "../words/en/faults.ts";
import { roundsRequestWords as words } from "../words/en/rounds-request.ts";
import type { Read } from "./parts.ts";
import type { Fault } from "./problem.ts";

const members = ["from", "log", "level_L", "lastRound", "heat", "temperatures", "forecast", "hotSpell"];
const answers = ["all", "some", "none", "unknown"] as const;
const heats = ["cooler", "usual", "hotter"] as const;
const mostForecasts = 30;

type Fields = Readonly<Record<string, unknown>>;

/** Reads the week's facts of a request, every fault with its path. */
export function readWeek(week: unknown, { tanks }: Survey): Read<WeekAsk> {
  if (!isFields(week)) return { ok: false, faults: [{ path: "week", sentence: words.weekForm }] };
  const faults: Fault[] = [];
  const fault = (field: string, sentence: string) => {
    faults.push({ path: `week.${field}`, sentence });
  };
  for (const name of Object.keys(week)
    .filter((key) => !members.includes(key))
    .slice(0, 20))
    fault(shown(name), words.unknownWeekMember(members));
  const firstDay = typeof week.from === "string" ? parseIso(week.from) : null;
  if (firstDay === null) fault("from", words.from(shown(week.from)));
  const lastRound = answers.find((answer) => answer === (week.lastRound ?? "unknown"));
  if (!lastRound) fault("lastRound", words.oneOf(answers, shown(week.lastRound)));
  const heat = heatOf(week, fault);
  const log = logOf(week.log ?? null, fault);
  const level_L = levelsOf(week.level_L ?? {}, tanks, fault);
  const forecast = forecastsOf(week.forecast ?? [], fault);
  const { hotSpell = null } = week;
  const isChance = hotSpell === null || isBetween(hotSpell, 0, 1);
  if (!isChance) fault("hotSpell", words.hotSpell(shown(hotSpell)));
  if (faults.length > 0 || firstDay === null || !lastRound || !isChance) return { ok: false, faults };
  return { ok: true, value: { firstDay, log, level_L, lastRound, heat, forecast, hotSpell } };
}

type Tell = (field: string, sentence: string) => void;

function isFields(value: unknown): value is Fields {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function isBetween(value: unknown, low: number, high: number): value is number {
  return typeof value === "number" && value >= low && value <= high;
}

function heatOf({ heat = "usual", temperatures }: Fields, fault: Tell): Heat {
  if (temperatures !== undefined && temperatures !== null) {
    const { tmin_c, tmax_c } = isFields(temperatures) ? temperatures : {};
    if (isBetween(tmin_c, -60, 60) && isBetween(tmax_c, -60, 60) && tmin_c <= tmax_c)
      return { tmin_c, tmax_c };
    fault("temperatures", words.temperatures);
  }
  const word = heats.find((one) => one === heat);
  if (!word) fault("heat", words.oneOf(heats, shown(heat)));
  return word ?? "usual";
}

function logOf(log: unknown, fault: Tell): readonly LogEntry[] {
  if (log === null) return [];
  if (typeof log !== "string") {
    fault("log", words.log);
    return [];
  }
  const read = readLog(log);
  if ("entries" in read) return read.entries;
  for (const one of read.faults) fault(`log, ${one.path}`, faultWords(one));
  return [];
}

function levelsOf(levels: unknown, tanks: Survey["tanks"], fault: Tell): Map<string, number> {
  const known = new Map<string, number>();
  if (!isFields(levels)) fault("level_L", words.levels);
  else
    for (const [id, litres] of Object.entries(levels)) {
      const tank = tanks.find((one) => one.id === id);
      const at = `level_L.${shown(id)}`;
      if (!tank) fault(at, words.noTank);
      else if (!isBetween(litres, 0, Number.MAX_VALUE)) fault(at, words.level(shown(litres)));
      else if (litres > tank.capacity_L) fault(at, words.aboveTank(tank.capacity_L, litres));
      else known.set(id, litres);
    }
  return known;
}

function forecastsOf(forecasts: unknown, fault: Tell): Forecast[] {
  if (!Array.isArray(forecasts) || forecasts.length > mostForecasts) {
    fault("forecast", words.forecast);
    return [];
  }
  return forecasts.flatMap((one: unknown, k): Forecast[] => {
    const { date, rain_mm, chance } = isFields(one) ? one : {};
    const day = typeof date === "string" ? parseIso(date) : null;
    if (day !== null && isBetween(rain_mm, 0, 2000) && isBetween(chance, 0, 1))
      return [{ day, rain_mm, chance }];
    fault(`forecast[${k}]`, words.forecast);
    return [];
  });
}
