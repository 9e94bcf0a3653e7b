import ICAL from "ical.js";
import nodeIcal from "node-ical";
import { describe, expect, test } from "vitest";
import { writeCalendar } from "../../src/files/calendar.ts";
import { monthCalendar, weekCalendar } from "../../src/report/rounds-calendar.ts";
import { workOutRounds } from "../../src/report/rounds-work.ts";
import { momentOf } from "../../src/report/time-zone.ts";
import { workOutWeek } from "../../src/report/week-work.ts";
import { calendarWordsIn } from "../../src/words/en/rounds.ts";
import { demoRecord, demoSurvey } from "../helpers/demo-rounds.ts";

const worked = workOutRounds(demoSurvey(), demoRecord());
const ask = { now_ms: Date.UTC(2026, 5, 28, 9), alarm_min: null };
const july = writeCalendar(monthCalendar(worked, 2026, 7, calendarWordsIn("metric"), ask));

interface Seen {
  uid: string;
  start_ms: number;
  end_ms: number;
  status: string;
}

function readByIcalJs(text: string): Seen[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  ICAL.TimezoneService.reset();
  for (const zone of calendar.getAllSubcomponents("vtimezone"))
    ICAL.TimezoneService.register(new ICAL.Timezone(zone), String(zone.getFirstPropertyValue("tzid")));
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      start_ms: event.startDate.toJSDate().getTime(),
      end_ms: event.endDate.toJSDate().getTime(),
      status: String(component.getFirstPropertyValue("status")),
    };
  });
}

function readByNodeIcal(text: string): Seen[] {
  return Object.values(nodeIcal.sync.parseICS(text)).flatMap((entry) =>
    entry?.type === "VEVENT"
      ? [
          {
            uid: entry.uid,
            start_ms: entry.start.getTime(),
            end_ms: entry.end!.getTime(),
            status: String(entry.status),
          },
        ]
      : [],
  );
}

const sorted = (seen: Seen[]) => [...seen].sort((a, b) => a.uid.localeCompare(b.uid));

describe("two readers that know nothing of each other", () => {
  test("find the same entries at the same moments", () => {
    const one = sorted(readByIcalJs(july));
    expect(one.length).toBeGreaterThan(20);
    expect(sorted(readByNodeIcal(july))).toEqual(one);
  });

  test("also find a week's over the change to summer time, and over New Year in the southern half", () => {
    for (const firstDay of [Date.UTC(2026, 2, 4), Date.UTC(2026, 11, 29)].map((ms) => ms / 86_400_000)) {
      const week = workOutWeek(worked, {
        firstDay,
        log: [],
        level_L: new Map(),
        lastRound: "none",
        heat: { tmin_c: 20, tmax_c: 40 },
        forecast: [],
      });
      const text = writeCalendar(weekCalendar(worked, week, calendarWordsIn("metric"), ask));
      expect(sorted(readByNodeIcal(text))).toEqual(sorted(readByIcalJs(text)));
    }
  });
});

test("entries lie where the site's clock says, whatever the computer's", () => {
  const { entries } = monthCalendar(worked, 2026, 7, calendarWordsIn("metric"), ask);
  const seen = new Map(readByIcalJs(july).map((one) => [one.uid, one]));
  for (const { uid, start } of entries) {
    const day = Math.floor(Date.UTC(start.year, start.month - 1, start.day) / 86_400_000);
    const moment = momentOf(
      { day, minutes: 60 * start.hour + start.minute },
      { latitude: 0, longitude: 0, timeZone: "America/Los_Angeles" },
    );
    expect(seen.get(uid)!.start_ms).toBe(moment);
  }
});

test("a new month moves the old entries, and cancels what it has no use for", () => {
  const later = { now_ms: Date.UTC(2026, 8, 1), alarm_min: null };
  const october = writeCalendar(monthCalendar(worked, 2026, 10, calendarWordsIn("metric"), later));
  const before = readByIcalJs(july).filter(({ status }) => status === "CONFIRMED");
  const after = new Map(readByIcalJs(october).map((one) => [one.uid, one]));
  for (const { uid } of before) expect(after.has(uid)).toBe(true);
  const kept = [...after.values()].filter(({ status }) => status === "CONFIRMED");
  expect(kept.length).toBeLessThan(before.length);
  for (const { start_ms } of kept) expect(start_ms).toBeGreaterThanOrEqual(Date.UTC(2026, 9, 1));
  const sequence = (text: string) => Number(/SEQUENCE:(\d+)/.exec(text)![1]);
  expect(sequence(october)).toBeGreaterThan(sequence(july));
});

test("making the same month again gives the same uids", () => {
  const again = writeCalendar(
    monthCalendar(worked, 2026, 7, calendarWordsIn("metric"), { ...ask, now_ms: ask.now_ms + 86_400_000 }),
  );
  expect(readByIcalJs(again).map(({ uid }) => uid)).toEqual(readByIcalJs(july).map(({ uid }) => uid));
});

test("no line is longer than 75 octets, each ends with CR LF, and the stamp is in UTC", () => {
  const lines = july.split("\r\n");
  expect(lines.at(-1)).toBe("");
  for (const line of lines) {
    expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(line).not.toContain("\n");
  }
  expect(july).toMatch(/DTSTAMP:20260628T090000Z/);
  expect(july).toContain("BEGIN:VTIMEZONE");
});

test("alarms ring where they are wanted", () => {
  const ringing = writeCalendar(
    monthCalendar(worked, 2026, 7, calendarWordsIn("metric"), { ...ask, alarm_min: 30 }),
  );
  expect(july).not.toContain("BEGIN:VALARM");
  const confirmed = readByIcalJs(ringing).filter(({ status }) => status === "CONFIRMED");
  expect(ringing.split("BEGIN:VALARM").length - 1).toBe(confirmed.length);
  expect(ringing).toContain("TRIGGER:-PT30M");
});

test("a place without a time zone has times of the clock on the wall", () => {
  const survey = demoSurvey((demo) => {
    demo.site.timeZone = undefined;
  });
  const text = writeCalendar(
    monthCalendar(workOutRounds(survey, demoRecord()), 2026, 7, calendarWordsIn("metric"), ask),
  );
  expect(text).not.toContain("VTIMEZONE");
  expect(text).toMatch(/DTSTART:202607\d\dT\d{6}\r\n/);
});

test("in February of a leap year the 29th has its turn", () => {
  const survey = demoSurvey((demo) => {
    demo.site.latitude = -33;
    demo.site.timeZone = "Australia/Adelaide";
    demo.site.absences = undefined;
    demo.restrictions = undefined;
    for (const bed of demo.beds) bed.leafCoverMonthly = undefined;
    demo.beds[0]!.watering.allowedDays = ["tue"];
    demo.beds[0]!.dryOn = undefined;
  });
  const record = demoRecord();
  const southern = workOutRounds(survey, { ...record, firstDay: record.firstDay + 182 });
  const text = writeCalendar(monthCalendar(southern, 2028, 2, calendarWordsIn("metric"), ask));
  expect(text).toMatch(/DTSTART;TZID=Australia\/Adelaide:20280229T/);
  expect(sorted(readByNodeIcal(text))).toEqual(sorted(readByIcalJs(text)));
});
