import { type Facts, type Fault, mostFaults, wholeSurvey } from "./faults.ts";
import { oneLine, type Path, pathText } from "./path.ts";

/** Longest text of a fact. */
const longestText = 120;

/** Faults kept in memory; more are only counted. */
const mostKept = 2_000;

/** Gathers faults, gives them back in the order of the document, and counts what is too much to list. */
export class FaultCollector {
  readonly #order: readonly string[];
  readonly #kept: { section: number; row: number; fault: Fault }[] = [];
  #count = 0;

  /** @param order the document's sections, as they are written */
  constructor(order: readonly string[]) {
    this.#order = order;
  }

  get count(): number {
    return this.#count;
  }

  /** Whether a further fault would be counted only. */
  get full(): boolean {
    return this.#kept.length >= mostKept;
  }

  add(path: Path, code: string, facts: Facts = {}): void {
    this.#count += 1;
    if (this.full) return;
    const [section, row] = path;
    this.#kept.push({
      section: typeof section === "string" ? this.#order.indexOf(section) : -1,
      row: typeof row === "number" ? row : -1,
      fault: { path: pathText(path), code, facts: quotable(facts) },
    });
  }

  /** Faults known to be there, of which no more is to be said. */
  addUncounted(count: number): void {
    this.#count += count;
  }

  list(): Fault[] {
    const sorted = this.#kept
      .sort((a, b) => a.section - b.section || a.row - b.row)
      .map(({ fault }) => fault);
    if (this.#count <= mostFaults) return sorted;
    const listed = sorted.slice(0, mostFaults - 1);
    return [
      ...listed,
      { path: wholeSurvey, code: "more-faults", facts: { count: this.#count - listed.length } },
    ];
  }
}

/** Facts hold what was typed: on one line, and short, before it reaches a terminal or a page. */
function quotable(facts: Facts): Facts {
  const quoted = Object.entries(facts).map(([name, fact]) => {
    if (typeof fact === "string") return [name, oneLine(fact, longestText)];
    if (Array.isArray(fact))
      return [name, fact.map((one) => (typeof one === "string" ? oneLine(one, longestText) : one))];
    return [name, fact];
  });
  return Object.fromEntries(quoted);
}
