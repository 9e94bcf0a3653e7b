import { parseIso } from "../engine/weather/dates.ts";
import type { GroundsRounds } from "../report/rounds-schema.ts";
import type { RoundsWeek } from "../report/week-schema.ts";
import type { UnitSystem } from "../units.ts";
import { minutesWords, roundsText } from "../words/en/rounds.ts";
import { type RoundAmounts, roundAmounts } from "../words/en/rounds-amounts.ts";
import { dayWords, weekText } from "../words/en/rounds-week.ts";

type NameOf = (id: string) => string;

interface Names {
  bed: NameOf;
  tank: NameOf;
}

/** A week's round for people, as lines. */
export function weekLines(
  document: GroundsRounds,
  week: RoundsWeek,
  names: Names,
  units: UnitSystem,
): string[] {
  const bedName = names.bed;
  const say = roundAmounts(units);
  const from = parseIso(week.from)!;
  return [
    roundsText.title(document.survey),
    weekText.title(from, from + 6),
    ...week.days.flatMap(({ date, left, help }) => dayLines(week, { date, left, help }, bedName, say)),
    "",
    weekText.leave,
    ...week.beds.flatMap(({ id, leave }) => (leave ? [`  ${bedName(id)}: ${leave.sentence}`] : [])),
    ...tankLines(week, names, say),
    ...week.holidays.flatMap(({ name, from: first, to, firstDayBack, beds }) => [
      "",
      `${weekText.holidays} ${name}`,
      ...beds.map(({ sentence }) => `  ${sentence}`),
      `  ${weekText.away(parseIso(first)!, parseIso(to)!, parseIso(firstDayBack)!)}`,
    ]),
    ...doneLines(week, bedName, say),
    "",
    roundsText.cautions,
    ...document.cautions.map((caution) => `  ${caution}`),
  ];
}

function dayLines(
  week: RoundsWeek,
  { date, left, help }: Pick<RoundsWeek["days"][number], "date" | "left" | "help">,
  nameOf: NameOf,
  say: RoundAmounts,
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
          `  ☐ ${weekText.times(watering.runs)}  ${nameOf(bed.id)}: ${minutesWords(watering)}, ${say.litres(watering.litres)}. ${watering.sentence}`,
      ),
    ...(left.length > 0 ? [`  ${weekText.doesNotFit(left.map(nameOf))} ${help ?? ""}`] : []),
  ];
}

function tankLines({ tanks, order }: RoundsWeek, names: Names, say: RoundAmounts): string[] {
  if (tanks.length === 0) return [];
  const isShort = tanks.some(({ mainsToKeepAll_L }) => mainsToKeepAll_L >= 1);
  return [
    "",
    weekText.tanks,
    ...tanks.flatMap(({ sentence, id, rations }) => [
      `  ${sentence}`,
      ...(isShort
        ? rations.map((row) => `    ${names.bed(row.id)} (${names.tank(id)}): ${weekText.ration(row, say)}`)
        : []),
    ]),
    ...(isShort
      ? [weekText.order, ...order.map(({ id, sentence }) => `  ${names.bed(id)}: ${sentence}`)]
      : []),
  ];
}

function doneLines({ done }: RoundsWeek, nameOf: NameOf, say: RoundAmounts): string[] {
  if (done.length === 0) return [];
  return [
    "",
    weekText.done,
    ...done.map(
      ({ id, month, planned_L, done_L }) =>
        `  ${month} ${nameOf(id)}: ${weekText.doneRow(planned_L, done_L, say)}`,
    ),
  ];
}
