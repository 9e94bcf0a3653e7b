import type { Absence, Bed, Watering } from "./grounds.ts";
import { parseIso } from "./weather/dates.ts";
import type { Calendar } from "./weather/series.ts";

/** Litres a minute from a jug filled under the tap. Bucket test, common practice. */
export function flowFromJug_L_min(litres: number, seconds: number): number {
  return (60 * litres) / seconds;
}

/** Depth of water an hour over the area that a watering wets, mm/h; 1 mm on 1 m² is 1 L. */
export function applicationRate_mm_h(flow_L_min: number, wetted_m2: number): number {
  return (60 * flow_L_min) / wetted_m2;
}

/** Gross litres for a net depth over a bed. */
export function grossFromNet_L(net_mm: number, area_m2: number, efficiency: number): number {
  return (net_mm / efficiency) * area_m2;
}

/** Net depth over a bed of litres put on it. */
export function netFromGross_mm(gross_L: number, area_m2: number, efficiency: number): number {
  return (gross_L / area_m2) * efficiency;
}

/** The most that one day's watering can give, net mm over the bed; Infinity where nothing limits it. */
export function mostNet_mm({ maxMinutes, flow_L_min, efficiency }: Watering, area_m2: number): number {
  return netFromGross_mm(maxMinutes * flow_L_min, area_m2, efficiency);
}

export interface CyclesAndSoaks {
  cycles: number;
  /** Longest run before water stands and runs off; Infinity where the soil takes it as fast as it comes. */
  longestCycle_min: number;
}

/**
 * Splits a watering that comes faster than the soil takes it.
 * @source cycle-and-soak arithmetic, common practice: surface storage ÷ (rate − intake)
 */
export function cyclesAndSoaks(
  depth_mm: number,
  rate_mm_h: number,
  intake_mm_h: number,
  surfaceStorage_mm: number,
): CyclesAndSoaks {
  if (rate_mm_h <= intake_mm_h) return { cycles: 1, longestCycle_min: Number.POSITIVE_INFINITY };
  const longestCycle_min = (60 * surfaceStorage_mm) / (rate_mm_h - intake_mm_h);
  const minutes = (60 * depth_mm) / rate_mm_h;
  return { cycles: Math.max(1, Math.ceil(minutes / longestCycle_min - 1e-9)), longestCycle_min };
}

/** Which days nobody is there: for a draw that pauses (any absence), and for hand watering (no carer). */
export interface AbsentDays {
  any: Uint8Array;
  withoutCarer: Uint8Array;
}

/** Marks a record's days of absence. An absence without a carer counts though another with one covers the day. */
export function absentDays(absences: readonly Absence[], calendar: Calendar): AbsentDays {
  const marks = { any: new Uint8Array(calendar.days), withoutCarer: new Uint8Array(calendar.days) };
  for (const absence of absences) {
    const within = absenceTest(absence);
    for (let i = 0; i < calendar.days; i++) {
      if (!within(calendar, i)) continue;
      marks.any[i] = 1;
      if (!absence.hasCarer) marks.withoutCarer[i] = 1;
    }
  }
  return marks;
}

function absenceTest({ from, to }: Absence): (calendar: Calendar, i: number) => boolean {
  const first = parseIso(from);
  const last = parseIso(to);
  if (first !== null && last !== null)
    return ({ firstDay }, i) => firstDay + i >= first && firstDay + i <= last;
  const start = monthDayCode(from);
  const end = monthDayCode(to);
  return ({ month, dayOfMonth }, i) => {
    const code = 100 * (month[i]! + 1) + dayOfMonth[i]!;
    return start <= end ? code >= start && code <= end : code >= start || code <= end;
  };
}

/** MM-DD as a number that sorts through the year. */
function monthDayCode(monthDay: string): number {
  const [month, day] = monthDay.split("-").map(Number);
  return 100 * month! + day!;
}

/** 1 on each day on which the bed may be watered: an allowed weekday, and somebody there if it is done by hand. */
export function openDays(
  { byHand, allowedWeekdays }: Watering,
  calendar: Calendar,
  absent: AbsentDays,
): Uint8Array {
  const open = new Uint8Array(calendar.days);
  for (let i = 0; i < open.length; i++)
    open[i] = allowedWeekdays[calendar.weekday[i]!] && !(byHand && absent.withoutCarer[i]) ? 1 : 0;
  return open;
}

/** Gross litres of today's habit on each day; null where it is not known. */
export function habitByDay_L(bed: Bed, calendar: Calendar, absent: AbsentDays): Float64Array | null {
  const { habit, flow_L_min, byHand } = bed.watering;
  if (!habit) return null;
  const { weekdays, months, minutes } = habit;
  const litres = minutes * flow_L_min;
  const habit_L = new Float64Array(calendar.days);
  for (let i = 0; i < habit_L.length; i++)
    if (weekdays[calendar.weekday[i]!] && months[calendar.month[i]!] && !(byHand && absent.withoutCarer[i]))
      habit_L[i] = litres;
  return habit_L;
}
