/** What a chart is to the plate that frames it: words, readings, a table, and a way to be drawn. */

export type Cell = string | number;

export interface Column {
  name: string;
  /** How a number of this column is shown; text columns have none. */
  show?: (value: number) => string;
}

export interface ChartTable {
  columns: readonly Column[];
  rows: readonly (readonly Cell[])[];
}

/** Where things lie on a drawing, for the ruler that reads it. */
export interface Drawn {
  height: number;
  /** The horizontal run that the ruler covers, and the height of its edge. */
  ruler: { left: number; right: number; y: number };
  /** Where reading i stands. */
  at(i: number): number;
  /** The reading nearest to a place along the ruler. */
  nearest(x: number): number;
  /** Whether readings stand at uneven distances: the mark then goes to each, and the drawing is what is dragged along. */
  isUneven?: boolean;
  /** The vertical run of the reading line. */
  line: { top: number; bottom: number };
  /** Whether parts that come out the same may stay in the drawing: all that `follow` moves differs from what is fresh. */
  keepsParts?: boolean;
  /** Lets a drawing follow the ruler, as a tank's section does; `reading` once somebody has moved it. */
  follow?(i: number, reading: boolean): void;
}

/** A list of sentences, or one that writes each when it is read. */
export interface Readings {
  readonly length: number;
  at(i: number): string | undefined;
}

/** Readings written one by one as they are read: a drawing that is redrawn often has hundreds. */
export function readingsOf(length: number, write: (i: number) => string): Readings {
  return { length, at: (i) => (i >= 0 && i < length ? write(i) : undefined) };
}

export interface Chart {
  /** Names the CSV file. */
  id: string;
  finding: string;
  /** What a person who does not see the drawing should know is in it. */
  about: string;
  /** One sentence a reading, spoken and shown; none where there is nothing to read along. */
  readings: Readings;
  /** Shorter ones to show where the drawing itself writes the rest. */
  shown?: readonly string[];
  /** The reading that the ruler stands at first. */
  start: number;
  table: ChartTable;
  draw(svg: SVGSVGElement, width: number): Drawn;
}
