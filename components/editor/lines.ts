import { html, nothing } from "lit";
import type { Address, Step } from "../../src/survey/edit/document.ts";
import { faultWords } from "./below.ts";
import { type Editing, faultsOn, type Shown } from "./editing.ts";

/** The address of a field, named with dots, below another; itself where the name is blank. */
export function below(at: Address, name: string): Address {
  return name === "" ? at : [...at, ...name.split(".").map((step): Step => step)];
}

/** Faults of a group or list as a whole, as they stand above it. */
export function faultLines(editing: Editing, at: Address): Shown {
  const faults = faultsOn(editing, at);
  if (faults.length === 0) return nothing;
  return html`${faults.map(
    (fault) => html`<p class=${fault.isSoft ? "wanted" : "fault"}>${faultWords(editing, fault, null)}</p>`,
  )}`;
}
