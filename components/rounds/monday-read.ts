import type { LastRound } from "../../src/engine/rounds/week-facts.ts";
import { toSI, type UnitSystem } from "../../src/units.ts";
import { mondayWords } from "../../src/words/en/rounds-page.ts";
import type { Formatter } from "../../src/words/format.ts";
import { readNumber } from "../fields/writing/number.ts";
import { blankMonday, type Monday } from "./monday.ts";

/** Monday's entries as they stand on their lines. */
export interface MondayTyped {
  rain: string;
  rainDays: string;
  lastRound: LastRound;
  dips: Readonly<Record<string, string>>;
  heat: Monday["heat"];
  tmin: string;
  tmax: string;
  forecast: Monday["forecast"];
  forecastIn: number;
  forecastRain: string;
  chance: number;
}

export const mondayBlank: MondayTyped = {
  rain: "",
  rainDays: "7",
  lastRound: "unknown",
  dips: {},
  heat: "usual",
  tmin: "",
  tmax: "",
  forecast: "none",
  forecastIn: 2,
  forecastRain: "",
  chance: 0.7,
};

export interface MondayRead {
  monday: Monday;
  /** What is wrong, by line: rain, rainDays, tmin, tmax, forecastRain, dip:ID. */
  wrong: Readonly<Record<string, string>>;
}

const rainUnit = { metric: "mm", us: "in" } as const;
const volumeUnit = { metric: "L", us: "gal" } as const;
const heatUnit = { metric: "°C", us: "°F" } as const;

/** The entries in SI; a line that cannot be read counts as blank and says why. */
export function readMonday(
  typed: MondayTyped,
  tanks: readonly { id: string; capacity_L: number }[],
  say: Formatter,
  locale?: string,
): MondayRead {
  const wrong: Record<string, string> = {};
  const read = (
    line: string,
    text: string,
    most: number,
    toSi: (x: number) => number,
    show: (x: number) => string,
    least = 0,
  ) => {
    if (text.trim() === "") return null;
    const number = readNumber(text, locale);
    if (number === null) {
      wrong[line] = mondayWords.notNumber(text.trim());
      return null;
    }
    const value = toSi(number);
    if (value < least || value > most * (1 + 1e-9)) {
      wrong[line] = mondayWords.range(show(least), show(most), text.trim());
      return null;
    }
    return Math.min(value, most);
  };
  const depth = (x: number) => toSI(x, rainUnit[say.system], "mm")!;
  const volume = (x: number) => toSI(x, volumeUnit[say.system], "L")!;
  const heat = (x: number) => toSI(x, heatUnit[say.system], "°C")!;
  const plain = (x: number) => say.number(x, 0);
  const degrees = (x: number) => showDegrees(x, say.system);
  const levels: Record<string, number> = {};
  for (const { id, capacity_L } of tanks) {
    const shown = (x: number) => `${say.litresBare(x)} ${say.volumeSymbol}`;
    const level = read(`dip:${id}`, typed.dips[id] ?? "", capacity_L, volume, shown);
    if (level !== null) levels[id] = level;
  }
  const tmin_c = read("tmin", typed.tmin, 60, heat, degrees, -60);
  const tmax_c = read("tmax", typed.tmax, 60, heat, degrees, -60);
  if (tmin_c !== null && tmax_c !== null && tmin_c > tmax_c) wrong.tmin = mondayWords.coldFirst;
  const monday: Monday = {
    ...blankMonday,
    rain_mm: read("rain", typed.rain, 2000, depth, say.depth),
    rainDays: Math.round(read("rainDays", typed.rainDays, 60, (x) => x, plain, 1) ?? 7),
    lastRound: typed.lastRound,
    levels,
    heat: typed.heat,
    tmin_c: typed.heat === "typed" ? tmin_c : null,
    tmax_c: typed.heat === "typed" ? tmax_c : null,
    forecast: typed.forecast,
    forecastIn: typed.forecastIn,
    forecast_mm: read("forecastRain", typed.forecastRain, 2000, depth, say.depth),
    chance: typed.chance,
  };
  return { monday, wrong };
}

function showDegrees(x_c: number, system: UnitSystem): string {
  return system === "us" ? `${Math.round(1.8 * x_c + 32)} °F` : `${Math.round(x_c)} °C`;
}
