import { type Address, type Draft, keyOf, rowsOf, valueIn } from "../../src/survey/edit/document.ts";
import { same } from "../../src/survey/edit/heal.ts";
import type { Sort } from "../../src/survey/edit/sorts.ts";
import { type Path, pathText } from "../../src/survey/path.ts";
import { unitsFor } from "../../src/units.ts";
import { editorWords, standingWords } from "../../src/words/en/editor.ts";
import { editorFault, unknownUnit } from "../../src/words/en/editor-faults.ts";
import type { Origin } from "../fields/field.ts";
import { showDay } from "../fields/writing/day.ts";
import { readQuantity, unitsOf } from "../fields/writing/quantity.ts";
import type { Writing } from "../fields/writing/writing.ts";
import { countingPath, type Editing, faultsIn, isCounted, type PlacedFault } from "./editing.ts";
import { shownValue } from "./shown.ts";

/** What stands below a field: what is wrong, what counts meanwhile, and where that comes from. */
export interface Below {
  error: string;
  standing: string;
  source: string;
  origin: Origin;
}

export function belowOf(
  editing: Editing,
  address: Address,
  path: Path,
  sort: Sort,
  writing: Writing | null,
): Below {
  const faults = faultsIn(editing, address);
  const hard = faults.find(({ isSoft }) => !isSoft);
  const value = valueIn(editing.draft, address);
  const isBlank = value === undefined || value === "";
  const finding = isBlank ? undefined : findingOf(editing, path);
  const origin = finding ? "measured" : isBlank ? "assumed" : "entered";
  const nothing = { error: "", standing: "", source: "", origin } as const;
  if (hard)
    return {
      ...nothing,
      error: faultWords(editing, hard, writing),
      standing: counts(editing, address, path),
    };
  if (faults.length > 0)
    return { ...nothing, standing: `${editorWords.wanted} ${counts(editing, address, path)}`.trim() };
  if (isHeld(editing, address)) return { ...nothing, standing: counts(editing, address, path) };
  if (isBlank) return { ...nothing, ...standIn(editing, address, path) };
  const other = typedOtherwise(editing, address, path, sort, value);
  return { ...nothing, standing: other || (finding ? measuredWords(finding, editing.locale) : "") };
}

/** The sentence of a fault as its field shows it. */
export function faultWords(editing: Editing, { fault, key }: PlacedFault, writing: Writing | null): string {
  const typed = editing.session.typed.get(key)?.text;
  const { facts } = fault;
  const found = typeof facts.found === "string" ? facts.found : undefined;
  const unit = String(facts.unit ?? "");
  const entered =
    typed ?? found ?? (typeof facts.found === "number" ? writing?.show(facts.found) : undefined);
  if (fault.code === "not-number" && writing && entered !== undefined) {
    const field = {
      unit,
      system: editing.system,
      locale: editing.locale,
      isShare: writing.unit === "%" && unit === "",
    };
    const reading = readQuantity(entered, field);
    if ("wrong" in reading && reading.wrong === "unit")
      return unknownUnit(
        fault.path,
        reading.unit,
        unitsFor(unitsOf(field).si).map((one) => one),
      );
  }
  const as = writing && { unit: writing.unit, shown: (bound: number) => writing.show(bound) };
  return editorFault(fault, as, entered);
}

function counts(editing: Editing, address: Address, path: Path): string {
  if (!isCounted(editing, address)) return standingWords.entryWaits;
  const value = valueIn(editing.right, address);
  return value === undefined ? standingWords.leftOut : standingWords.counts(shownValue(editing, path, value));
}

/** Held back though nothing is wrong with it: something it belongs to is not finished. */
function isHeld(editing: Editing, address: Address): boolean {
  const { draft, right } = editing;
  return editing.faults.length > 0 && !same(valueIn(draft, address), valueIn(right, address));
}

function standIn(editing: Editing, address: Address, path: Path): Partial<Below> {
  const where = countingPath(editing, address);
  const assumed = where === null ? undefined : editing.assumed.get(where);
  if (!assumed) return {};
  return {
    standing: standingWords.standsIn(shownValue(editing, path, assumed.value)),
    source: assumed.source,
  };
}

/** The value in the unit shown, where it was typed in another. */
function typedOtherwise(editing: Editing, address: Address, path: Path, sort: Sort, value: unknown): string {
  const typed = editing.session.typed.get(keyOf(address));
  const hasUnit = sort.sort === "number" && typed && same(typed.value, value) && /\p{L}/u.test(typed.text);
  if (!hasUnit || typeof value !== "number") return "";
  const shown = shownValue(editing, path, Number(value.toPrecision(4)));
  return typed.text.replace(/\s/g, "") === shown.replace(/\s/g, "") ? "" : standingWords.isSI(shown);
}

/** The finding that a field rests on; undefined where it was not measured. */
function findingOf({ draft }: Editing, path: Path): Draft | undefined {
  const at = pathText(path);
  return rowsOf(draft, "found").findLast((finding) => finding.at === at && finding.used === true);
}

function measuredWords(finding: Draft, locale: string | undefined): string {
  return standingWords.measured(
    String(finding.how ?? ""),
    showDay(String(finding.when ?? "").slice(0, 10), locale),
  );
}
