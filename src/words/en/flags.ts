import { count } from "./count.ts";

/** What every command says of arguments that it does not understand. */
export const flagWords = {
  oneSurvey: (command: string) =>
    `Give one survey file: npm run --silent ${command} -- SURVEY.json --weather RECORD.csv`,
  units: (found: string) => `--units: Give metric or us. You entered ${found}.`,
  lang: (found: string) => `--lang: Give a language tag such as en or en-US. You entered ${found}.`,
  whole: (flag: string, found: string, low: number, high: number) =>
    `${flag}: Give a whole number from ${count(low)} to ${count(high)}. You entered ${found}.`,
  unknown: (found: string, known: readonly string[]) =>
    `${found}: There is no such option. There are ${known.join(", ")}.`,
  withoutValue: "An option that takes a value was given without one. See --help.",
  working: "Working it out …",
} as const;
