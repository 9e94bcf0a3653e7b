/**
 * When a bed is watered in a month, as a person keeps it: days of the week, one or two of a weekday's turns in
 * the month, or dates of the month where odd or even dates rule.
 */
export type Pattern =
  | { kind: "none" }
  | { kind: "week"; weekdays: readonly boolean[] }
  | { kind: "turns"; weekday: number; turns: readonly number[] }
  | { kind: "dates"; dates: readonly number[] };

/** Mean length of a month. */
const month_days = 365.25 / 12;

/** Whether a pattern falls on a day. @param weekday 0–6 from Monday */
export function fallsOn(pattern: Pattern, weekday: number, dayOfMonth: number): boolean {
  switch (pattern.kind) {
    case "none":
      return false;
    case "week":
      return pattern.weekdays[weekday]!;
    case "turns":
      return weekday === pattern.weekday && pattern.turns.includes(Math.ceil(dayOfMonth / 7));
    case "dates":
      return pattern.dates.includes(dayOfMonth);
  }
}

/** Waterings in a mean month. */
export function timesInMonth(pattern: Pattern): number {
  switch (pattern.kind) {
    case "none":
      return 0;
    case "week":
      return (countOf(pattern.weekdays) * month_days) / 7;
    case "turns":
      return pattern.turns.length;
    case "dates":
      return pattern.dates.length;
  }
}

/** Days from one watering to the next, on average; null without any. */
export function everyDays(pattern: Pattern): number | null {
  switch (pattern.kind) {
    case "none":
      return null;
    case "week":
      return tenth(7 / countOf(pattern.weekdays));
    case "turns":
      return tenth(month_days / pattern.turns.length);
    case "dates":
      return tenth(month_days / pattern.dates.length);
  }
}

function tenth(days: number): number {
  return Math.round(10 * days) / 10;
}

function countOf(weekdays: readonly boolean[]): number {
  return weekdays.filter(Boolean).length;
}

/** Patterns that the open weekdays allow, the rarest first: once a month, twice, then one to seven days a week. */
export function weeklyPatterns(openWeekdays: readonly boolean[]): Pattern[] {
  const open = countOf(openWeekdays);
  if (open === 0) return [{ kind: "none" }];
  const weekday = openWeekdays.indexOf(true);
  const rare: Pattern[] = [
    { kind: "turns", weekday, turns: [2] },
    { kind: "turns", weekday, turns: [1, 3] },
  ];
  const often = Array.from({ length: open }, (_, k): Pattern => {
    return { kind: "week", weekdays: spreadWeekdays(openWeekdays, k + 1) };
  });
  return [...rare, ...often];
}

/**
 * So many of the open weekdays with waits between them as short and even as can be; of those as good the
 * earliest in the week, so that beds share their days.
 */
export function spreadWeekdays(openWeekdays: readonly boolean[], wanted: number): readonly boolean[] {
  const key = `${openWeekdays.map(Number).join("")}${wanted}`;
  const known = spreads.get(key) ?? widestSpread(openWeekdays, wanted);
  spreads.set(key, known);
  return known;
}

/** At most 128 × 7 choices of weekdays, each looked for once. */
const spreads = new Map<string, readonly boolean[]>();

function widestSpread(openWeekdays: readonly boolean[], wanted: number): boolean[] {
  let best: boolean[] = [...openWeekdays];
  let leastUneven = Number.POSITIVE_INFINITY;
  for (let bits = 1; bits < 128; bits++) {
    const days = Array.from({ length: 7 }, (_, k) => (bits & (1 << k)) > 0);
    if (countOf(days) !== wanted || days.some((day, k) => day && !openWeekdays[k])) continue;
    const uneven = waits(days).reduce((sum, wait) => sum + wait ** 3, 0);
    if (uneven < leastUneven) {
      best = days;
      leastUneven = uneven;
    }
  }
  return best;
}

/** Days from a chosen weekday to the next chosen one, at most. */
export function longestWait(weekdays: readonly boolean[]): number {
  return Math.max(...waits(weekdays));
}

function waits(weekdays: readonly boolean[]): number[] {
  const on = weekdays.flatMap((day, k) => (day ? [k] : []));
  return on.map((day, k) => (k + 1 < on.length ? on[k + 1]! - day : on[0]! + 7 - day));
}

/** Dates of one parity, from one a month to every one: 2, 4, 6… or 1, 3, 5…, spread over the month. */
export function datePatterns(parity: "odd" | "even"): Pattern[] {
  const first = parity === "odd" ? 1 : 2;
  const all = Array.from({ length: 15 }, (_, k) => first + 2 * k);
  const counts = [1, 2, 3, 4, 5, 8, 15];
  return counts.map((count): Pattern => {
    const step = Math.ceil(all.length / count);
    const start = count === 1 ? 7 : 0;
    return {
      kind: "dates",
      dates: all.filter((_, k) => k >= start && (k - start) % step === 0).slice(0, count),
    };
  });
}
