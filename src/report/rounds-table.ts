import type { GroundsRounds } from "./rounds-schema.ts";

export const roundsColumns = [
  "month",
  "id",
  "minutes",
  "everyDays",
  "days",
  "turns",
  "dates",
  "cycles",
  "soak_min",
  "litres",
  "net_mm",
  "wetted_m",
  "leaveAfterRain_mm",
  "month_L",
  "dry_minutes",
  "dry_everyDays",
  "dry_days",
  "dry_litres",
] as const;

/** The month table as rows of text, a bed and month each; lists are parted by spaces. */
export function roundsRows({ months }: GroundsRounds): string[][] {
  const joined = (items: readonly (string | number)[] | null) => items?.join(" ") ?? "";
  return months.flatMap(({ month, beds }) =>
    beds.map((bed) => [
      String(month),
      bed.id,
      String(bed.minutes),
      String(bed.everyDays ?? ""),
      joined(bed.days),
      joined(bed.turns),
      joined(bed.dates),
      String(bed.cycles),
      String(bed.soak_min),
      String(bed.litres),
      String(bed.net_mm),
      String(bed.wetted_m),
      String(bed.leaveAfterRain_mm ?? ""),
      String(bed.month_L),
      String(bed.dry?.minutes ?? ""),
      String(bed.dry?.everyDays ?? ""),
      joined(bed.dry?.days ?? null),
      String(bed.dry?.litres ?? ""),
    ]),
  );
}
