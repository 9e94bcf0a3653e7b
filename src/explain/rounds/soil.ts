import type { WeekBed } from "../../engine/rounds/week-facts.ts";
import { parseIso } from "../../engine/weather/dates.ts";
import { roundNotes, roundSources, roundSteps, roundTitles } from "../../words/en/explain-rounds.ts";
import { roundAt } from "../../words/round-at.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { nameOf, opens, pageOf, pointSteps, type RoundBook, type RoundPage, workedOut } from "./book.ts";

/** A bed of the week as it was before its tank cut it. */
export function weekBedOf({ week }: RoundBook, id: string): WeekBed | null {
  return week?.round.beds.find((bed) => bed.id === id) ?? null;
}

const spreadPoints = [
  { share: 0.1, words: roundSteps.low },
  { share: 0.9, words: roundSteps.high },
  { share: 0.5, words: roundSteps.middle },
];

/** Each soil's name: the year whose weather it has, and what was done of the last round. */
function soilNames({ since: { soils } }: WeekBed): string[] {
  const answers = soils.filter(({ year }) => year === soils[0]?.year).length;
  return soils.map(({ year }, k) => roundSteps.answer(year, k % answers, answers));
}

/** Water missing from a bed's roots as the week begins: low, high and middle over years and answers. */
export function soilNow(book: RoundBook, id: string): Working | null {
  const bed = weekBedOf(book, id);
  if (!bed || bed.since.soils.length === 0) return null;
  const page = pageOf(book, roundAt.soil(id));
  const names = soilNames(bed);
  const parts = bed.since.soils.map(
    ({ depletion_mm }, k): Part => ({ ...opens(depletion_mm, roundAt.soilOf(id, k)), name: names[k]! }),
  );
  return points(page, parts, roundTitles.soil(nameOf(book, id)));
}

/** The same on the morning of a watering. */
export function soilOnDay(book: RoundBook, id: string, date: string): Working | null {
  const bed = weekBedOf(book, id);
  const watering = bed?.waterings.find(({ day }) => day === parseIso(date));
  if (!bed || !watering || watering.ofSoils_mm.length === 0) return null;
  if (watering.day === book.week!.ask.firstDay) {
    const today = soilNow(book, id);
    return today && { ...today, at: roundAt.run(id, date, "missing") };
  }
  const page = pageOf(book, roundAt.run(id, date, "missing"));
  const names = soilNames(bed);
  const parts = watering.ofSoils_mm.map(
    (mm, k): Part => ({ ...workedOut(mm, roundSources.engineDays), name: names[k]! }),
  );
  return points(page, parts, roundTitles.run("missing", nameOf(book, id), book.say.date(watering.day)));
}

function points(page: RoundPage, parts: readonly Part[], title: string): Working {
  pointSteps(page, "gone", "mm", parts, spreadPoints);
  const heat = page.week!.facts.heat;
  page.sheet.note(roundNotes.heat, page.say.number(heat, 2), {
    provenance: "assumed",
    source: roundSources.heat,
  });
  return page.sheet.done(page.at, title);
}

/** The balance of one soil since something was last known of it. */
export function soilOfYear(book: RoundBook, id: string, place: number): Working | null {
  const bed = weekBedOf(book, id);
  const soil = bed?.since.soils[place];
  if (!bed || !soil) return null;
  const { sheet, at } = pageOf(book, roundAt.soilOf(id, place));
  const inDays = (value: number) => workedOut(value, roundSources.engineDays);
  sheet.step(
    "soilSince",
    {
      soilStart: workedOut(soil.start_mm, roundSources.memberStart),
      rainSince: workedOut(soil.rain_mm, roundSources.gauge),
      netSince: workedOut(soil.net_mm, roundSources.log),
      etcSince: inDays(soil.etc_mm),
      drainedSince: inDays(soil.drainage_mm),
    },
    soil.depletion_mm,
  );
  sheet.note(roundNotes.since, book.say.number(bed.since.days), {
    provenance: "worked-out",
    source: roundSources.log,
  });
  return sheet.done(at, roundTitles.soilOf(nameOf(book, id), soilNames(bed)[place]!));
}
