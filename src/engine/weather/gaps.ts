import { type CalendarDate, dayNumber, formatIso, fromDay, isLeap } from "./dates.ts";
import { type WeatherColumn, type WeatherRecord, weatherColumns } from "./record.ts";

/** The longest gap, in days, that a straight line between its neighbours may bridge. */
export const longestLine_days = 7;

/** Days on end, both included, on which a column has no value and nothing can stand in. */
export interface OpenGap {
  column: WeatherColumn;
  fromDay: number;
  toDay: number;
}

/** Thrown where a record has gaps that nothing in it can fill; it lists every one. */
export class UnfillableGap extends Error {
  override readonly name = "UnfillableGap";
  readonly gaps: readonly OpenGap[];

  constructor(gaps: readonly OpenGap[]) {
    super(gaps.map((gap) => `${gap.column} ${formatIso(gap.fromDay)} to ${formatIso(gap.toDay)}`).join("; "));
    this.gaps = gaps;
  }
}

export interface FilledRecord {
  firstDay: number;
  days: number;
  /** The record's columns, with no NaN in them. */
  columns: WeatherRecord["columns"];
  /** Days on which at least one column was filled. */
  filledDays: number;
  shareFilled: number;
  /** 1 on a filled day, 0 on a day as recorded. */
  flags: Uint8Array;
}

/**
 * Fills every gap of a record. Rain takes the same date's rain from the nearest year; the other columns a
 * straight line over up to seven days, else the mean of that date over the other years.
 * Only recorded values fill gaps, so the outcome does not depend on the order of filling.
 * @throws UnfillableGap
 */
export function fillGaps(record: WeatherRecord): FilledRecord {
  const { firstDay, days } = record;
  const flags = new Uint8Array(days);
  const columns: WeatherRecord["columns"] = { rain_mm: fillRain(record, flags) };
  for (const column of weatherColumns) {
    const recorded = record.columns[column];
    if (column !== "rain_mm" && recorded) columns[column] = fillSteady(recorded, firstDay, flags);
  }
  const open = weatherColumns.flatMap((column) => openGaps(column, columns[column], firstDay));
  if (open.length > 0) throw new UnfillableGap(open);
  uncross(record, columns);
  let filledDays = 0;
  for (const flag of flags) filledDays += flag;
  return { firstDay, days, columns, filledDays, shareFilled: filledDays / days, flags };
}

/** Same date, nearest year, the earlier of two as near; 29 February without any: that year's 28 February. */
function fillRain(record: WeatherRecord, flags: Uint8Array): Float64Array {
  const recorded = record.columns.rain_mm;
  const filled = recorded.slice();
  for (let slot = 0; slot < filled.length; slot++) {
    if (!Number.isNaN(recorded[slot]!)) continue;
    flags[slot] = 1;
    const date = fromDay(record.firstDay + slot);
    filled[slot] = nearestYear(recorded, record.firstDay, date);
    if (Number.isNaN(filled[slot]!) && isLeapDay(date) && slot > 0) filled[slot] = filled[slot - 1]!;
  }
  return filled;
}

function nearestYear(recorded: Float64Array, firstDay: number, { year, month, day }: CalendarDate): number {
  const firstYear = fromDay(firstDay).year;
  const lastYear = fromDay(firstDay + recorded.length - 1).year;
  for (let away = 1; year - away >= firstYear || year + away <= lastYear; away++) {
    for (const other of [year - away, year + away]) {
      const value = valueOn(recorded, firstDay, other, month, day);
      if (!Number.isNaN(value)) return value;
    }
  }
  return Number.NaN;
}

/** Columns that change steadily from day to day: all but rain. */
function fillSteady(recorded: Float64Array, firstDay: number, flags: Uint8Array): Float64Array {
  const filled = recorded.slice();
  for (let slot = 0; slot < filled.length; slot++) {
    if (!Number.isNaN(recorded[slot]!)) continue;
    let end = slot;
    while (end < filled.length && Number.isNaN(recorded[end]!)) end++;
    const before = slot - 1;
    const bridged = before >= 0 && end < filled.length && end - slot <= longestLine_days;
    for (let at = slot; at < end; at++) {
      flags[at] = 1;
      filled[at] = bridged
        ? recorded[before]! + ((recorded[end]! - recorded[before]!) * (at - before)) / (end - before)
        : otherYearsMean(recorded, firstDay, fromDay(firstDay + at));
    }
    slot = end;
  }
  return filled;
}

/** Mean of a date over the other years; 29 February where no other year has one: of 28 February. */
function otherYearsMean(recorded: Float64Array, firstDay: number, date: CalendarDate): number {
  const mean = meanOfDate(recorded, firstDay, date);
  return Number.isNaN(mean) && isLeapDay(date) ? meanOfDate(recorded, firstDay, { ...date, day: 28 }) : mean;
}

function meanOfDate(recorded: Float64Array, firstDay: number, date: CalendarDate): number {
  const lastYear = fromDay(firstDay + recorded.length - 1).year;
  let sum = 0;
  let count = 0;
  for (let year = fromDay(firstDay).year; year <= lastYear; year++) {
    if (year === date.year) continue;
    const value = valueOn(recorded, firstDay, year, date.month, date.day);
    if (Number.isNaN(value)) continue;
    sum += value;
    count += 1;
  }
  return count === 0 ? Number.NaN : sum / count;
}

/** What was recorded on a date; NaN where nothing was, the record does not reach, or the year has no such date. */
function valueOn(recorded: Float64Array, firstDay: number, year: number, month: number, day: number): number {
  if (month === 2 && day === 29 && !isLeap(year)) return Number.NaN;
  return recorded[dayNumber(year, month, day) - firstDay] ?? Number.NaN;
}

function isLeapDay({ month, day }: CalendarDate): boolean {
  return month === 2 && day === 29;
}

/** A filled tmin above tmax takes tmax, a filled tmax below a recorded tmin takes tmin. */
function uncross(record: WeatherRecord, { tmin_c, tmax_c }: WeatherRecord["columns"]): void {
  const { tmin_c: recordedMin, tmax_c: recordedMax } = record.columns;
  if (!tmin_c || !tmax_c || !recordedMin || !recordedMax) return;
  for (let slot = 0; slot < tmin_c.length; slot++) {
    if (tmin_c[slot]! <= tmax_c[slot]!) continue;
    if (Number.isNaN(recordedMin[slot]!)) tmin_c[slot] = tmax_c[slot]!;
    else if (Number.isNaN(recordedMax[slot]!)) tmax_c[slot] = tmin_c[slot]!;
  }
}

function openGaps(column: WeatherColumn, filled: Float64Array | undefined, firstDay: number): OpenGap[] {
  const gaps: OpenGap[] = [];
  for (let slot = 0; filled && slot < filled.length; slot++) {
    if (!Number.isNaN(filled[slot]!)) continue;
    const start = slot;
    while (slot + 1 < filled.length && Number.isNaN(filled[slot + 1]!)) slot++;
    gaps.push({ column, fromDay: firstDay + start, toDay: firstDay + slot });
  }
  return gaps;
}
