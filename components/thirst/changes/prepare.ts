import type { ThirstBed } from "../../../src/report/thirst-view.ts";
import type { Change, Without } from "../../../src/report/without.ts";
import { shortName, thirstWords } from "../../../src/words/en/page.ts";
import { thirst } from "../../../src/words/en/thirst.ts";
import type { Formatter } from "../../../src/words/format.ts";
import type { ChartTable } from "../../charts/chart.ts";

const words = thirst.changes;
/** Less than this share of what the bed takes is no change to speak of. */
const LITTLE = 0.02;

export interface ChangeRow {
  what: string;
  kind: Change["kind"] | "as-is";
  need_L_year: number;
  more_L_year: number;
}

/** A bed as it is, then with one thing changed in each line. */
export interface Changes {
  name: string;
  rows: readonly ChangeRow[];
  most_L: number;
}

export function prepareChanges(bed: ThirstBed, without: readonly Without[]): Changes {
  const asIs: ChangeRow = { what: words.asIs, kind: "as-is", need_L_year: bed.gross_L_year, more_L_year: 0 };
  const rows = without.map(
    ({ change, need_L_year, more_L_year }): ChangeRow => ({
      what: named(change),
      kind: change.kind,
      need_L_year,
      more_L_year,
    }),
  );
  return {
    name: shortName(bed.name),
    rows: [asIs, ...rows],
    most_L: Math.max(bed.gross_L_year, ...rows.map(({ need_L_year }) => need_L_year)),
  };
}

function named(change: Change): string {
  if (change.kind === "soil") return words.soil(change.texture);
  if (change.kind === "thirst") return words.thirst(thirstWords[change.thirst] ?? change.thirst);
  return words[change.kind];
}

/** What about the bed does most for it: its shade or mulch or soil; where none does much, plants that would. */
export function changesFinding({ name, rows, most_L }: Changes, say: Formatter): string {
  const most = (list: readonly ChangeRow[]) =>
    [...list].sort((a, b) => Math.abs(b.more_L_year) - Math.abs(a.more_L_year))[0];
  const isMuch = ({ more_L_year }: ChangeRow) => Math.abs(more_L_year) >= LITTLE * most_L;
  const own = most(rows.filter((row) => isOwn(row.kind) && isMuch(row)));
  const litres = (row: ChangeRow) => say.litres(Math.abs(row.more_L_year));
  if (own && isOwn(own.kind))
    return (own.more_L_year > 0 ? words.finding : words.findingCost)(
      words.saves[own.kind],
      name,
      litres(own),
    );
  const frugal = most(rows.filter((row) => row.kind === "thirst" && row.more_L_year < 0 && isMuch(row)));
  return frugal ? words.findingCould(frugal.what, name, litres(frugal)) : words.findingNone(name);
}

function isOwn(kind: ChangeRow["kind"]): kind is "no-shade" | "no-mulch" | "soil" {
  return kind === "no-shade" || kind === "no-mulch" || kind === "soil";
}

export function moreText(more_L: number, most_L: number, say: Formatter): string {
  if (Math.abs(more_L) < 0.002 * most_L) return words.none;
  return (more_L > 0 ? words.more : words.less)(say.litresBare(Math.abs(more_L)));
}

export function changesTable({ rows }: Changes, say: Formatter): ChartTable {
  const [what, takes, more] = words.columns;
  const show = (x: number) => say.number(x, 0);
  return {
    columns: [
      { name: what! },
      { name: `${takes}, ${say.volumeSymbol}`, show },
      { name: `${more}, ${say.volumeSymbol}`, show },
    ],
    rows: rows.map((row) => [row.what, say.volume(row.need_L_year), say.volume(row.more_L_year)]),
  };
}
