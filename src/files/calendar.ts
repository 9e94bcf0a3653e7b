import ical, {
  escape as escapeText,
  ICalAlarmType,
  ICalCalendarMethod,
  type ICalDayJsStub,
  ICalEventStatus,
} from "ical-generator";
import { vtimezone, type ZoneRule } from "./vtimezone.ts";

/** A clock reading of the calendar's place. */
export interface ClockReading {
  year: number;
  /** 1–12 */
  month: number;
  day: number;
  hour: number;
  minute: number;
}

/** An entry of a calendar; the same uid in a later file changes it, `isCancelled` takes it away. */
export interface CalendarEntry {
  uid: string;
  start: ClockReading;
  end: ClockReading;
  summary: string;
  description: string;
  isCancelled: boolean;
}

export interface CalendarFile {
  name: string;
  entries: readonly CalendarEntry[];
  /** Counts up from file to file, so that a later one wins. */
  sequence: number;
  /** When the file was made. */
  stamp_ms: number;
  /** null: times of the clock on the wall, whatever its zone. */
  zone: { id: string; rules: readonly ZoneRule[] } | null;
  /** Minutes before an entry at which it rings; null: it does not. */
  alarm_min: number | null;
}

/**
 * Writes an iCalendar file, lines of 75 octets at most, each ended by CR LF.
 * @source RFC 5545
 */
export function writeCalendar({ name, entries, sequence, stamp_ms, zone, alarm_min }: CalendarFile): string {
  const calendar = ical({
    name: escapeText(name, false),
    prodId: { company: "Grounds Water Balance", product: "Rounds", language: "EN" },
    method: ICalCalendarMethod.PUBLISH,
    timezone: zone && { name: null, generator: () => vtimezone(zone.id, zone.rules) },
  });
  for (const { uid, start, end, summary, description, isCancelled } of entries) {
    const event = calendar.createEvent({
      id: uid,
      sequence,
      stamp: new Date(stamp_ms),
      start: wallClock(start),
      end: wallClock(end),
      timezone: zone?.id ?? null,
      floating: zone === null,
      summary,
      description,
      status: isCancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
    });
    if (alarm_min !== null && !isCancelled)
      event.createAlarm({ type: ICalAlarmType.display, triggerBefore: 60 * alarm_min, description: summary });
  }
  return `${calendar.toString()}\r\n`;
}

/**
 * A clock reading as the calendar's writer takes times: it writes what the reading says, by no zone but its own.
 * A Date would pass through the zone of whatever computer this runs on.
 */
function wallClock({ year, month, day, hour, minute }: ClockReading): ICalDayJsStub {
  const two = (n: number) => String(n).padStart(2, "0");
  const utc = () => new Date(Date.UTC(year, month - 1, day, hour, minute));
  const reading: ICalDayJsStub = {
    format: (form) =>
      form === "YYYYMMDD"
        ? `${String(year).padStart(4, "0")}${two(month)}${two(day)}`
        : `${two(hour)}${two(minute)}00`,
    isValid: () => true,
    toDate: utc,
    toJSON: () => utc().toISOString(),
    tz: () => reading,
  };
  return reading;
}
