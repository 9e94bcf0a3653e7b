/** What is missing in a record, and what filling it will do. */
import { formatIso } from "../../engine/weather/dates.ts";
import { fillGaps, UnfillableGap } from "../../engine/weather/gaps.ts";
import { type WeatherRecord, weatherColumns } from "../../engine/weather/record.ts";
import { unfillableGap } from "./weather.ts";
import { importWords } from "./weather-import.ts";

/** Share of filled days, and days of record, past which a report says so (method, section 1). */
const manyFilled = 0.1;
const year_days = 365;

/** Gaps that nothing fills, listed one by one up to this many. */
const shownGaps = 10;

/** What is missing in the record, and what filling it will do. */
export function gapLines(record: WeatherRecord): string[] {
  const lines = weatherColumns.flatMap((column) => {
    const { missing, longest } = gapsOf(record.columns[column]);
    return missing === 0 ? [] : [importWords.gaps(column, missing, longest)];
  });
  if (lines.length === 0) lines.push(importWords.noGaps);
  else lines.push(...fillingLines(record));
  if (record.days < year_days) lines.push(importWords.shortRecord);
  return lines;
}

function fillingLines(record: WeatherRecord): string[] {
  try {
    const { filledDays, shareFilled } = fillGaps(record);
    const filled = importWords.filled(filledDays, shareFilled);
    return shareFilled > manyFilled ? [filled, importWords.manyFilled] : [filled];
  } catch (error) {
    if (!(error instanceof UnfillableGap)) throw error;
    const gaps = error.gaps.map((gap) =>
      unfillableGap(gap.column, formatIso(gap.fromDay), formatIso(gap.toDay)),
    );
    const more = gaps.length > shownGaps ? [importWords.moreGaps(gaps.length - shownGaps)] : [];
    return [importWords.cannotFill, ...gaps.slice(0, shownGaps), ...more];
  }
}

function gapsOf(values: Float64Array | undefined): { missing: number; longest: number } {
  let missing = 0;
  let longest = 0;
  let run = 0;
  for (const value of values ?? []) {
    run = Number.isNaN(value) ? run + 1 : 0;
    if (run > 0) missing += 1;
    if (run > longest) longest = run;
  }
  return { missing, longest };
}
