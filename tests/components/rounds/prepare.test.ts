import { beforeAll, describe, expect, test } from "vitest";
import { partRules, partStyle } from "../../../components/look/print-pages.ts";
import { bedFacts } from "../../../components/rounds/bed-facts.ts";
import {
  coolWindows,
  withHours,
  withoutRestriction,
  withRestriction,
} from "../../../components/rounds/hours.ts";
import { lineOf, newestFirst, plannedOn } from "../../../components/rounds/log-lines.ts";
import { BrowserLogStore, PassingLogStore, stillWaiting } from "../../../components/rounds/log-store.ts";
import { blankMonday, mondayLog, weekSaid } from "../../../components/rounds/monday.ts";
import { mondayBlank, readMonday } from "../../../components/rounds/monday-read.ts";
import { withMoved, withoutOrder } from "../../../components/rounds/order.ts";
import { monthAhead } from "../../../components/rounds/paper-part.ts";
import { soilsNow } from "../../../components/rounds/soil.ts";
import { minutesOf, weekDrawn } from "../../../components/rounds/week-days.ts";
import { dayNumber } from "../../../src/engine/weather/dates.ts";
import { type RoundsWorked, workOutRounds } from "../../../src/report/rounds-work.ts";
import { weekDocument } from "../../../src/report/week.ts";
import { workOutWeek } from "../../../src/report/week-work.ts";
import { readSurvey } from "../../../src/survey/read.ts";
import type { LogEntry } from "../../../src/survey/schema/log.ts";
import { formatter } from "../../../src/words/format.ts";
import { weekWordsIn } from "../../../src/words/rounds-said.ts";
import { demoRecord, demoSurvey } from "../../helpers/demo-rounds.ts";

const monday = dayNumber(2026, 7, 6);
const metric = formatter("metric", "en-GB");
const us = formatter("us", "en-US");
const survey = demoSurvey();

let worked: RoundsWorked;
beforeAll(() => {
  worked = workOutRounds(survey, demoRecord());
});

function week(said = weekSaid(blankMonday, monday, [])) {
  const ask = { ...said, level_L: new Map(Object.entries(said.levels)) };
  return weekDocument(worked, workOutWeek(worked, ask), weekWordsIn("metric"));
}

describe("Monday's entries", () => {
  const tanks = [{ id: "t", capacity_L: 1000 }];

  test("blank lines say nothing", () => {
    const { monday: read, wrong } = readMonday(mondayBlank, tanks, metric);
    expect(wrong).toEqual({});
    expect(mondayLog(read, monday)).toEqual([]);
    expect(weekSaid(read, monday, [])).toMatchObject({ lastRound: "unknown", heat: "usual", forecast: [] });
  });

  test("inches, gallons and degrees Fahrenheit become SI", () => {
    const typed = {
      ...mondayBlank,
      rain: "1",
      dips: { t: "100" },
      heat: "typed" as const,
      tmin: "50",
      tmax: "86",
    };
    const { monday: read } = readMonday(typed, tanks, us);
    expect(read.rain_mm).toBeCloseTo(25.4, 6);
    expect(read.levels.t).toBeCloseTo(378.541, 3);
    expect(read.tmin_c).toBeCloseTo(10, 6);
    expect(read.tmax_c).toBeCloseTo(30, 6);
  });

  test("what cannot be read, or is more than the tank holds, is said and counts as blank", () => {
    const { monday: read, wrong } = readMonday(
      { ...mondayBlank, rain: "much", dips: { t: "1200" } },
      tanks,
      metric,
    );
    expect(wrong.rain).toContain("You entered much");
    expect(wrong["dip:t"]).toContain("1,000 L");
    expect(read.rain_mm).toBeNull();
    expect(read.levels).toEqual({});
  });

  test("nights warmer than days are refused, and the heat stays usual", () => {
    const typed = { ...mondayBlank, heat: "typed" as const, tmin: "30", tmax: "10" };
    const { monday: read, wrong } = readMonday(typed, tanks, metric);
    expect(wrong.tmin).toBeDefined();
    expect(weekSaid(read, monday, []).heat).toBe("usual");
  });

  test("a gauge read this morning holds the days up to yesterday and stands in for the log's rain of them", () => {
    const log: LogEntry[] = [
      { date: "2026-07-02", kind: "rain", rain_mm: 3 },
      { date: "2026-06-20", kind: "rain", rain_mm: 9 },
    ];
    const said = weekSaid({ ...blankMonday, rain_mm: 12, rainDays: 7 }, monday, log);
    expect(said.log).toEqual([log[1], { date: "2026-07-05", kind: "rain", rain_mm: 12, days: 7 }]);
  });
});

describe("the week as it is drawn", () => {
  test("every watering of the round is a stop with its minutes, in the order in which they begin", () => {
    const document = week();
    const { days } = weekDrawn(document, bedFacts(survey));
    const minutes = days.flatMap(({ stops }) => stops.map((stop) => stop.minutes)).reduce((a, b) => a + b, 0);
    const planned = document.beds.flatMap(({ waterings }) => waterings.map((one) => one.minutes));
    expect(minutes).toBe(planned.reduce((a, b) => a + b, 0));
    expect(minutes).toBeGreaterThan(0);
    for (const { stops } of days) {
      const begins = stops.flatMap(({ runs }) => (runs[0] ? [runs[0].from_min] : []));
      expect(begins).toEqual([...begins].sort((a, b) => a - b));
    }
  });

  test("only what is done by hand is walked to", () => {
    const facts = bedFacts(survey);
    for (const { stops } of weekDrawn(week(), facts).days)
      for (const { id, step } of stops) expect(step !== null).toBe(facts.get(id)!.byHand);
  });

  test("a bed gets mains water for what its tank cannot give", () => {
    const low = weekSaid({ ...blankMonday, levels: { "hall-tank": 1000 }, lastRound: "none" }, monday, []);
    const document = week(low);
    const ration = document.tanks.flatMap(({ rations }) => rations).find(({ id }) => id === "kitchen")!;
    const stop = weekDrawn(document, bedFacts(survey))
      .days.flatMap(({ stops }) => stops)
      .find(({ id }) => id === "kitchen")!;
    expect(ration.fromMains_L).toBeGreaterThan(0);
    expect(stop.tankShare).toBeCloseTo(ration.fromTank_L / ration.asks_L, 9);
  });

  test("clocks are read to the minute; none is none", () => {
    expect(minutesOf("05:30")).toBe(330);
    expect(minutesOf(null)).toBeNull();
  });

  test("a soil's water lies between nothing and full, sure below likely below most", () => {
    const soils = soilsNow(week());
    expect(soils).toHaveLength(survey.beds.length);
    for (const { low, middle, high } of soils) {
      expect(low).toBeGreaterThanOrEqual(0);
      expect(middle).toBeGreaterThanOrEqual(low);
      expect(high).toBeGreaterThanOrEqual(middle);
      expect(high).toBeLessThanOrEqual(1);
    }
  });
});

describe("order, hours and restrictions leave a survey that reads without faults", () => {
  const whole = (changed: unknown) => readSurvey(JSON.parse(JSON.stringify(changed)));

  test("a bed moved up goes before the one that was before it", () => {
    const moved = withMoved(survey, ["kitchen", "orchard", "oval"], "orchard", -1);
    const priority = (id: string) => moved.beds.find((bed) => bed.id === id)!.priority!;
    expect(priority("orchard")).toBeLessThan(priority("kitchen"));
    expect(priority("kitchen")).toBeLessThan(priority("oval"));
    expect(whole(moved)).toHaveProperty("survey");
    expect(whole(withoutOrder(moved))).toHaveProperty("survey");
  });

  test("the hours about dawn keep the days on which somebody was there", () => {
    const [dawn, dusk] = coolWindows(survey, monday);
    expect(dawn!.from < dawn!.to && dawn!.to < dusk!.from).toBe(true);
    const changed = withHours(survey, dawn!);
    expect(changed.site.hours).toEqual([
      { days: ["mon", "tue", "wed", "thu", "fri"], fromTime: dawn!.from, toTime: dawn!.to },
    ]);
    expect(whole(changed)).toHaveProperty("survey");
  });

  test("a restriction gets an id of its own, and goes again", () => {
    const once = withRestriction(survey, { name: "Council rule", days: ["mon"], parity: "odd" });
    const twice = withRestriction(once, { name: "Council rule", fromTime: "10:00", toTime: "16:00" });
    const ids = twice.restrictions!.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(whole(twice)).toHaveProperty("survey");
    expect(withoutRestriction(twice, ids.at(-1)!).restrictions).toEqual(once.restrictions);
  });
});

describe("the log", () => {
  const done: LogEntry = { date: "2026-07-06", kind: "watering", id: "oval", minutes: 30 };

  test("what is planned for a day is there until it is written down", () => {
    const document = week();
    const before = plannedOn(document, [], monday);
    expect(before.length).toBeGreaterThan(0);
    const { id } = before[0]!;
    const after = plannedOn(document, [{ ...done, id, minutes: 0 }], monday);
    expect(after.find((row) => row.id === id)!.written).toBe(0);
  });

  test("a line lacks what was not entered", () => {
    const blank = { bed: "oval", tank: "hall-tank", minutes: null, rain_mm: null, days: 1, level_L: null };
    expect(lineOf({ ...blank, kind: "watering" }, monday)).toEqual({ lacks: "minutes" });
    expect(lineOf({ ...blank, kind: "rain", rain_mm: 4 }, monday)).toEqual({
      entry: { date: "2026-07-06", kind: "rain", rain_mm: 4, days: 1 },
    });
    expect(lineOf({ ...blank, kind: "dip", level_L: -1 }, monday)).toEqual({ lacks: "level" });
  });

  test("lines wait until the log has as many of them", () => {
    expect(stillWaiting([done, done], [{ ...done }])).toEqual([done]);
    const store = new PassingLogStore();
    store.add([done]);
    store.taken([done]);
    expect(store.waiting()).toEqual([]);
  });

  test("a browser closed and opened again still has them; one without room keeps them while it is open", () => {
    const kept = new Map<string, string>();
    const storage = {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, text: string) => void kept.set(key, text),
    };
    new BrowserLogStore(storage, "a").add([done]);
    expect(new BrowserLogStore(storage, "a").waiting()).toEqual([done]);
    expect(new BrowserLogStore(storage, "b").waiting()).toEqual([]);
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error("no room");
      },
    };
    const store = new BrowserLogStore(full, "a");
    store.add([done]);
    expect(store.waiting()).toEqual([done]);
  });

  test("the newest day comes first, of one day the line written last", () => {
    const log: LogEntry[] = [done, { ...done, minutes: 10 }, { ...done, date: "2026-07-01" }];
    expect(newestFirst(log, 2)).toEqual([log[1], log[0]]);
  });
});

test("the month so many on passes the year's end", () => {
  expect(monthAhead(2026, 11, 3)).toEqual({ year: 2027, month: 2 });
});

test("sheets are parted from their style, and the style from the page's size", () => {
  const { look, rest } = partStyle(
    "<head><style>@page { size: A4; }\nbody { color: #000; }</style></head><p>x</p>",
  );
  expect(rest).toBe("<head></head><p>x</p>");
  expect(partRules(look)).toEqual({ pages: "@page { size: A4; }", rest: "\nbody { color: #000; }" });
});
