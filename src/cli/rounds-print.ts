import type { GroundsRounds } from "../report/rounds-schema.ts";
import type { UnitSystem } from "../units.ts";
import { minutesWords, roundsText, whenWords } from "../words/en/rounds.ts";
import { roundAmounts } from "../words/en/rounds-amounts.ts";

/** The month table for people, as lines. */
export function roundsLines(
  document: GroundsRounds,
  nameOf: (bed: string) => string,
  units: UnitSystem,
): string[] {
  const say = roundAmounts(units);
  const lines = [
    roundsText.title(document.survey),
    roundsText.years(document.years.middle, document.years.dry),
  ];
  for (const { month, beds } of document.months) {
    const rows = beds.filter(({ minutes, dry }) => minutes > 0 || (dry?.minutes ?? 0) > 0);
    lines.push("", roundsText.month(month));
    if (rows.length === 0) lines.push(`  ${roundsText.nothing}`);
    for (const row of rows) {
      const dry = row.dry ? ` (${minutesWords(row.dry)}, ${whenWords(row.dry)})` : "";
      const rain =
        row.leaveAfterRain_mm === null ? "" : `; ${roundsText.leaveOut(row.leaveAfterRain_mm, say)}`;
      const litres = row.minutes > 0 ? `, ${say.litres(row.litres)}` : "";
      lines.push(`  ${nameOf(row.id)}: ${minutesWords(row)}, ${whenWords(row)}${litres}${rain}${dry}`);
    }
  }
  lines.push("", roundsText.rounding);
  for (const { id, allYears, within } of document.rounding) {
    const { need_L_year, given_L_year, stressDays_year, needStressDays_year } = allYears;
    const over = need_L_year > 0 ? Math.round(100 * (given_L_year / need_L_year - 1)) : 0;
    const days = Math.round(stressDays_year - needStressDays_year);
    lines.push(`  ${nameOf(id)}: ${roundsText.roundingRow(over, days, within)}`);
  }
  lines.push(`  ${roundsText.bounds(document.bounds.overShare, document.bounds.stressDays_year)}`);
  if (document.conflicts.length > 0)
    lines.push("", roundsText.conflicts, ...document.conflicts.map(({ sentence }) => `  ${sentence}`));
  lines.push("", roundsText.cautions, ...document.cautions.map((caution) => `  ${caution}`));
  return lines;
}
