import { formatIso } from "../../engine/weather/dates.ts";
import { type WeatherColumn, type WeatherRecord, weatherColumns } from "../../engine/weather/record.ts";
import type { Fault } from "../faults.ts";
import { marksIn } from "./column-values.ts";
import { RecordDraft } from "./draft.ts";
import { layOut } from "./layout.ts";
import type { Cells, FieldMapping, Mapping, Note } from "./mapping.ts";
import { recordLimits } from "./ranges.ts";
import { cellNumber, isMissing, isTrace } from "./source-cells.ts";
import { rowDay } from "./source-dates.ts";
import { type SourceUnit, unitNamed } from "./source-units.ts";

export type Applied = { text: string; record: WeatherRecord; notes: Note[] } | { faults: Fault[] };

/** A cell on its way into the record: its value in the record's unit, and how it stood in the file. */
interface MappedCell {
  /** NaN for a missing value, null for text where a number is wanted. */
  value: number | null;
  text: string;
  unit: SourceUnit;
}

/** Values that were converted are written to the third decimal. */
const thousand = 1000;

/** Instruments overshoot: shares of humidity up to this count as 100 %. */
const humidityOvershoot_pct = 105;

/** Makes the record of a file by its mapping: the CSV text of the record with what is worth knowing, or every fault. */
export function applyMapping(rows: Cells, mapping: Mapping): Applied {
  const layout = layOut(rows);
  const { dates, where } = mapping;
  if (!layout || !dates) return { faults: [{ path: "file", code: "record-no-date", facts: {} }] };
  const body = where ? layout.body.filter((row) => rows[row]![where.at] === where.value) : layout.body;
  const columns = weatherColumns.filter((column) => mapping.fields[column]);
  const readers = columns.map(
    (column) => new FieldReader(column, mapping.fields[column]!, rows, body, mapping.decimalComma),
  );
  const dateHeader = dates.kind === "column" ? dates.header : "date";
  const draft = new RecordDraft({
    columns,
    read: (cell) => (cell as MappedCell).value,
    dateOrder: dates.kind === "column" ? dates.order : dates.kind,
    shown: (cell) => shownCell(cell as MappedCell),
    path: (row, name) =>
      name === undefined ? `row ${row}` : `row ${row}, ${headerOf(mapping, name, dateHeader)}`,
  });
  const lines: { day: number; text: string }[] = [];
  if (body.length > recordLimits.rows)
    draft.fault("file", "record-too-many-rows", { rows: recordLimits.rows });
  for (const at of body.slice(0, recordLimits.rows)) {
    const row = rows[at]!;
    if (row.length < layout.width || row.slice(layout.headers.length).some((cell) => cell !== "")) {
      draft.fault(`row ${at + 1}`, "record-row-cells", { found: row.length, wanted: layout.width });
      continue;
    }
    const day = rowDay(row, dates);
    const cells = readers.map((reader) => reader.read(row));
    draft.addDay(at + 1, day, day === null ? dateText(row, mapping) : "", cells);
    if (day !== null) lines.push({ day, text: [formatIso(day), ...cells.map(written)].join(",") });
  }
  const outcome = draft.finish();
  if ("faults" in outcome) return outcome;
  lines.sort((a, b) => a.day - b.day);
  const text = `${[["date", ...columns].join(","), ...lines.map((line) => line.text)].join("\n")}\n`;
  const left = rowsLeftOut(rows, layout.body);
  const wind: Note[] = outcome.record.columns.wind_ms ? [{ code: "import-wind-height", facts: {} }] : [];
  const notes = [
    ...wind,
    ...readers.flatMap((reader) => reader.notes()),
    ...(left > 0 ? [{ code: "import-left-out", facts: { rows: left } }] : []),
  ];
  return { text, record: outcome.record, notes };
}

/** Reads one field's cells, and counts what it took for missing, for a trace of rain, or held back to 100 %. */
class FieldReader {
  readonly #column: WeatherColumn;
  readonly #field: FieldMapping;
  readonly #unit: SourceUnit;
  readonly #decimalComma: boolean;
  readonly #marks: ReadonlySet<number>;
  readonly #isHumidity: boolean;
  #missing = new Map<string, number>();
  #traces = 0;
  #overshoots = 0;

  constructor(
    column: WeatherColumn,
    field: FieldMapping,
    rows: Cells,
    body: readonly number[],
    decimalComma: boolean,
  ) {
    this.#column = column;
    this.#field = field;
    this.#unit = unitNamed(column, field.unit)!;
    this.#decimalComma = decimalComma;
    this.#isHumidity = column.startsWith("rh");
    this.#marks = marksIn(this.#numbers(rows, body), column, this.#unit);
  }

  read(row: readonly string[]): MappedCell {
    const text = row[this.#field.at] ?? "";
    const unit = this.#unit;
    if (isMissing(text)) return this.#miss(text);
    if (this.#column === "rain_mm" && isTrace(text)) {
      this.#traces += 1;
      return { value: 0, text: "0", unit };
    }
    const number = cellNumber(text, this.#decimalComma);
    if (Number.isNaN(number)) return { value: null, text, unit };
    if (this.#marks.has(number)) return this.#miss(text);
    const value = number * unit.factor + unit.offset;
    if (!this.#isHumidity || value <= 100 || value > humidityOvershoot_pct) return { value, text, unit };
    this.#overshoots += 1;
    return { value: 100, text: "100", unit };
  }

  notes(): Note[] {
    const column = this.#column;
    const { header } = this.#field;
    const notes: Note[] = [];
    for (const [mark, count] of this.#missing)
      notes.push({ code: "import-missing", facts: { column, header, mark, count } });
    if (this.#traces > 0) notes.push({ code: "import-trace", facts: { header, count: this.#traces } });
    if (this.#overshoots > 0)
      notes.push({ code: "import-overshoot", facts: { header, count: this.#overshoots } });
    return notes;
  }

  #miss(mark: string): MappedCell {
    if (mark !== "") this.#missing.set(mark, (this.#missing.get(mark) ?? 0) + 1);
    return { value: Number.NaN, text: "", unit: this.#unit };
  }

  *#numbers(rows: Cells, body: readonly number[]): Generator<number> {
    for (const at of body) yield cellNumber(rows[at]![this.#field.at] ?? "", this.#decimalComma);
  }
}

/** A value as the record writes it: as it stood where nothing had to be converted, else rounded. */
function written({ value, text, unit }: MappedCell): string {
  if (value === null || Number.isNaN(value)) return "";
  const untouched = unit.factor === 1 && unit.offset === 0 && /^-?\d+([.,]\d+)?$/.test(text);
  if (!untouched) return String(Math.round(value * thousand) / thousand);
  const point = text.replace(",", ".");
  return Number(point) === value ? point : String(value);
}

function shownCell({ value, text, unit }: MappedCell): string {
  return value === null || (unit.factor === 1 && unit.offset === 0) ? text : `${text} ${unit.id}`;
}

function headerOf(mapping: Mapping, name: string, dateHeader: string): string {
  return name === "date" ? dateHeader : (mapping.fields[name as WeatherColumn]?.header ?? name);
}

function dateText(row: readonly string[], { dates }: Mapping): string {
  if (!dates) return "";
  if (dates.kind === "column") return row[dates.at] ?? "";
  const ats = dates.kind === "parts" ? [dates.year, dates.month, dates.day] : [dates.year, dates.day];
  return ats.map((at) => row[at] ?? "").join(" ");
}

/** Lines below the first row of days that hold something and were read as notes. */
function rowsLeftOut(rows: Cells, body: readonly number[]): number {
  const read = new Set(body);
  let left = 0;
  for (let at = body[0] ?? rows.length; at < rows.length; at++)
    if (!read.has(at) && rows[at]!.some((cell) => cell !== "")) left += 1;
  return left;
}
