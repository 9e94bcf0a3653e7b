import type { WeatherQuestion } from "../../src/report/choices-weather.ts";

/** The user's own weather, as factors. */
export interface OwnWeather {
  /** Rain of December to February, March to May, June to August, September to November, over what it was. */
  rain: readonly [number, number, number, number];
  warmer_c: number;
  /** Mean length of dry spells over what it was, 1 or more. */
  spells: number;
}

/** What of the screen an address holds, so that a link opens it again. */
export interface ScreenState {
  /** Ids of the measures of the plan; null: as the survey has it. */
  plan: readonly string[] | null;
  /** null: as the survey has it. */
  budget: number | null;
  tank: string | null;
  own: OwnWeather;
}

export const noOwnWeather: OwnWeather = { rain: [1, 1, 1, 1], warmer_c: 0, spells: 1 };
export const noState: ScreenState = { plan: null, budget: null, tank: null, own: noOwnWeather };

const most = { rain: 3, warmer_c: 10, spells: 5, budget: 1e9 };

/** Reads `#plan=a,b&budget=9000&tank=t&rain=80,100,60,90&warmer=2&spells=1.5`; what cannot be read is left out. */
export function readState(hash: string): ScreenState {
  const from = new URLSearchParams(hash.replace(/^#/, ""));
  const number = (name: string, low: number, high: number) => {
    const text = from.get(name);
    const value = Number(text);
    return text !== null && text.trim() !== "" && value >= low && value <= high ? value : null;
  };
  const rain = (from.get("rain") ?? "").split(",").map((text) => Number(text) / 100);
  const isRain = rain.length === 4 && rain.every((factor) => factor >= 0 && factor <= most.rain);
  return {
    plan: from.has("plan") ? from.get("plan")!.split(",").filter(Boolean) : null,
    budget: number("budget", 0, most.budget),
    tank: from.get("tank"),
    own: {
      rain: isRain ? [rain[0]!, rain[1]!, rain[2]!, rain[3]!] : noOwnWeather.rain,
      warmer_c: number("warmer", -most.warmer_c, most.warmer_c) ?? 0,
      spells: number("spells", 1, most.spells) ?? 1,
    },
  };
}

/** The address's part after the hash sign; empty where nothing differs from the survey. */
export function writeState({ plan, budget, tank, own }: ScreenState): string {
  const said = [
    ...(plan ? [`plan=${plan.map(encodeURIComponent).join(",")}`] : []),
    ...(budget === null ? [] : [`budget=${budget}`]),
    ...(tank === null ? [] : [`tank=${encodeURIComponent(tank)}`]),
    ...(own.rain.some((factor) => factor !== 1) ? [`rain=${own.rain.map(percent).join(",")}`] : []),
    ...(own.warmer_c === 0 ? [] : [`warmer=${own.warmer_c}`]),
    ...(own.spells === 1 ? [] : [`spells=${own.spells}`]),
  ];
  return said.join("&");
}

function percent(factor: number): string {
  return String(Math.round(factor * 1000) / 10);
}

/** Season of each month, January first. */
const seasonOf = [0, 0, 1, 1, 1, 2, 2, 2, 3, 3, 3, 0] as const;

/** What is asked of the weather beside the usual. */
export function questionsOf({ rain, warmer_c, spells }: OwnWeather): WeatherQuestion[] {
  return [
    ...(rain.some((factor) => factor !== 1)
      ? [{ code: "own-rain", change: { kind: "rain" as const, byMonth: seasonOf.map((s) => rain[s]) } }]
      : []),
    ...(warmer_c === 0 ? [] : [{ code: "own-warmer", change: { kind: "warmer" as const, by_c: warmer_c } }]),
    ...(spells === 1
      ? []
      : [{ code: "own-dry-spells", change: { kind: "longer-dry-spells" as const, times: spells, seed: 1 } }]),
  ];
}

export { most as mostOwn };
