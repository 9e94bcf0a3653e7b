import type { ClockReading } from "./calendar.ts";

/** A change of a zone's offset from UTC, read off the clock as it changes. */
export interface ZoneRule {
  at: ClockReading;
  from_min: number;
  to_min: number;
  isDaylight: boolean;
}

/** A zone's part of a calendar, each change of its clock on its own. @source RFC 5545, 3.6.5 */
export function vtimezone(id: string, rules: readonly ZoneRule[]): string {
  return [
    "BEGIN:VTIMEZONE",
    `TZID:${id}`,
    ...rules.flatMap(({ at, from_min, to_min, isDaylight }) => {
      const kind = isDaylight ? "DAYLIGHT" : "STANDARD";
      return [
        `BEGIN:${kind}`,
        `DTSTART:${reading(at)}`,
        `TZOFFSETFROM:${offset(from_min)}`,
        `TZOFFSETTO:${offset(to_min)}`,
        `END:${kind}`,
      ];
    }),
    "END:VTIMEZONE",
  ].join("\r\n");
}

function reading({ year, month, day, hour, minute }: ClockReading): string {
  const two = (n: number) => String(n).padStart(2, "0");
  return `${String(year).padStart(4, "0")}${two(month)}${two(day)}T${two(hour)}${two(minute)}00`;
}

function offset(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (n: number) => String(n).padStart(2, "0");
  return `${minutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}${two(size % 60)}`;
}
