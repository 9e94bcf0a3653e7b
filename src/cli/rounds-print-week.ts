import { parseIso } from "../engine/weather/dates.ts";
import type { GroundsRounds } from "../report/rounds-schema.ts";
import type { RoundsWeek } from "../report/week-schema.ts";
import { count } from "../words/en/count.ts";
import { minutesWords, roundsText } from "../words/en/rounds.ts";
import { dayWords, weekText } from "../words/en/rounds-week.ts";

type NameOf = (id: string) => string;

/** A week's round for people, as lines. */
export function weekLines(
  document: GroundsRounds,
  week: RoundsWeek,
  bedName: NameOf,
  tankName: NameOf,
): string[] {
  const from = parseIso(week.from)!;
  return [
    roundsText.title(document.survey),
    weekText.title(from, from + 6),
    ...week.days.flatMap(({ date, left, help }) => dayLines(week, date, left, help, bedName)),
    "",
    weekText.leave,
    ...week.beds.flatMap(({ id, leave }) => (leave ? [`  ${bedName(id)}: ${leave.sentence}`] : [])),
    ...tankLines(week, bedName, tankName),
    ...week.holidays.flatMap(({ name, beds }) => [
      "",
      `${weekText.holidays} ${name}`,
      ...beds.map(({ sentence }) => `  ${sentence}`),
    ]),
    ...doneLines(week, bedName),
    "",
    roundsText.cautions,
    ...document.cautions.map((caution) => `  ${caution}`),
  ];
}

function dayLines(
  week: RoundsWeek,
  date: string,
  left: readonly string[],
  help: string | null,
  nameOf: NameOf,
): string[] {
  const rows = week.beds.flatMap((bed) =>
    bed.waterings.filter((watering) => watering.date === date).map((watering) => ({ bed, watering })),
  );
  if (rows.length === 0) return [];
  return [
    "",
    dayWords(parseIso(date)!),
    ...rows
      .sort((a, b) => (a.watering.runs[0]?.from ?? "z").localeCompare(b.watering.runs[0]?.from ?? "z"))
      .map(
        ({ bed, watering }) =>
          `  ☐ ${weekText.times(watering.runs)}  ${nameOf(bed.id)}: ${minutesWords(watering)}, ${count(Math.round(watering.litres))} L. ${watering.sentence}`,
      ),
    ...(left.length > 0 ? [`  ${weekText.doesNotFit(left.map(nameOf))} ${help ?? ""}`] : []),
  ];
}

function tankLines({ tanks, order }: RoundsWeek, bedName: NameOf, tankName: NameOf): string[] {
  if (tanks.length === 0) return [];
  const isShort = tanks.some(({ mainsToKeepAll_L }) => mainsToKeepAll_L >= 1);
  return [
    "",
    weekText.tanks,
    ...tanks.flatMap(({ sentence, id, rations }) => [
      `  ${sentence}`,
      ...(isShort
        ? rations.map((row) => `    ${bedName(row.id)} (${tankName(id)}): ${weekText.ration(row)}`)
        : []),
    ]),
    ...(isShort ? [weekText.order, ...order.map(({ id, sentence }) => `  ${bedName(id)}: ${sentence}`)] : []),
  ];
}

function doneLines({ done }: RoundsWeek, nameOf: NameOf): string[] {
  if (done.length === 0) return [];
  return [
    "",
    weekText.done,
    ...done.map(
      ({ id, month, planned_L, done_L }) =>
        `  ${month} ${nameOf(id)}: ${weekText.doneRow(planned_L, done_L)}`,
    ),
  ];
}
