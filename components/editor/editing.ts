import type { nothing, TemplateResult } from "lit";
import {
  type Address,
  addressOfText,
  type Draft,
  keyOf,
  pathOf,
  valueIn,
} from "../../src/survey/edit/document.ts";
import type { Session } from "../../src/survey/edit/session.ts";
import type { Fault } from "../../src/survey/faults.ts";
import { pathText } from "../../src/survey/path.ts";
import type { Assumed } from "../../src/survey/resolve.ts";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import type { Node } from "./layout/nodes.ts";

/** Something drawn, or nothing. */
export type Shown = TemplateResult | typeof nothing;

/** A fault with the address of what it is about. `isSoft`: nothing is wrong, something is still wanted. */
export interface PlacedFault {
  fault: Fault;
  address: Address;
  key: string;
  isSoft: boolean;
}

/** What the parts of the editor read and do. */
export interface Editing {
  session: Session;
  draft: Draft;
  right: Survey;
  faults: readonly PlacedFault[];
  /** What stands in for blanks of the survey that counts, by path. */
  assumed: ReadonlyMap<string, Assumed>;
  system: UnitSystem;
  locale: string | undefined;
  /** What is opened or unfolded, by key. */
  opened: ReadonlySet<string>;
  /** Puts a value, with the text that was typed for it. */
  put(address: Address, value: unknown, text?: string): void;
  /** Keeps what was typed where it could not be put; undefined forgets it. */
  note(key: string, text: string | undefined): void;
  /** Changes the survey otherwise; `said` is spoken, then a screen opened or a field of this one gone to. */
  act(change: (draft: Draft) => Draft, said?: string, goTo?: string, focus?: string): void;
  /** Adds an entry and opens it at its name. */
  add(change: (draft: Draft) => Draft, list: string, id: string): void;
  /** What an entry was called when it was opened: the same after its id changed. */
  identity(id: string): string;
  /** Opens a screen, and goes to a field on it. */
  go(at: string, key?: string): void;
  href(at: string): string;
  open(key: string, isOpen: boolean): void;
  /** Draws what stands below an address. */
  show(nodes: readonly Node[], at: Address): Shown[];
}

/** Faults where what stands is no mistake: it is not there yet. */
const wanting: ReadonlySet<string> = new Set([
  "missing",
  "soil-none",
  "price-none",
  "change-none",
  "reading-none",
  "normals-short",
  "normals-pair",
  "watering-unchanged",
  "tank-wanted",
  "end-wanted",
]);

export function placed(draft: Draft, faults: readonly Fault[]): PlacedFault[] {
  return faults.map((fault) => {
    const address = addressOfText(draft, fault.path);
    const isBlank = fault.facts.found === "" || (fault.code === "too-few" && fault.facts.length === 0);
    return { fault, address, key: keyOf(address), isSoft: isBlank || wanting.has(fault.code) };
  });
}

/** Faults of a field, and of the parts within it. */
export function faultsIn({ faults }: Editing, address: Address): PlacedFault[] {
  const key = keyOf(address);
  return faults.filter((fault) => fault.key === key || fault.key.startsWith(`${key}/`));
}

/** Faults of a group of fields or a list as a whole. */
export function faultsOn({ faults }: Editing, address: Address): PlacedFault[] {
  const key = keyOf(address);
  return faults.filter((fault) => fault.key === key);
}

/** The path of an address in the survey that counts; null where it is not in that. */
export function countingPath({ right }: Editing, address: Address): string | null {
  const path = pathOf(right, address);
  return path === null ? null : pathText(path);
}

/** Whether the entry that an address begins with is in the survey that counts. */
export function isCounted({ right }: Editing, address: Address): boolean {
  const at = address.findIndex((step) => typeof step === "object");
  return at === -1 || valueIn(right, address.slice(0, at + 1)) !== undefined;
}
