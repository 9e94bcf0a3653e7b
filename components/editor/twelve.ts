import { html } from "lit";
import { keyOf, valueIn } from "../../src/survey/edit/document.ts";
import type { Writing } from "../fields/writing/writing.ts";
import type { Drawn } from "./control.ts";
import { faultsIn } from "./editing.ts";
import { monthName } from "./shown.ts";

/** Multipliers that leave a month as it is, where nothing was said of it. */
const multipliers: ReadonlySet<string> = new Set(["monthly", "leafCoverMonthly"]);

/** A figure for each month. */
export function twelve({ editing, address, path, sort, label, hint, blank, below }: Drawn, writing: Writing) {
  const value = valueIn(editing.draft, address);
  const values: readonly unknown[] = Array.isArray(value) ? value : [];
  const begun = multipliers.has(String(path[path.length - 1])) ? 1 : "";
  const marked = faultsIn(editing, address).flatMap(({ address: at, isSoft }) => {
    const month = at[address.length];
    return typeof month === "number" && !isSoft ? [month] : [];
  });
  const put = (month: number, text: string) => {
    const reading = writing.read(text);
    const next = "value" in reading ? (reading.value ?? begun) : text;
    const all = Array.from({ length: 12 }, (_, at) => (at === month ? next : (values[at] ?? begun)));
    // all blank again is left out, where it may be
    editing.put(address, blank && all.every((one) => one === "") ? undefined : all);
  };
  const scale = sort.sort === "twelve" ? heights(values) : [];
  return html`<gwb-twelve
    data-at=${keyOf(address)}
    .label=${label}
    .hint=${hint}
    .error=${below.error}
    .standing=${below.standing}
    .source=${below.source}
    .origin=${below.origin}
    .texts=${values.map((one) => writing.show(one === "" ? undefined : one))}
    .heights=${values.length === 12 ? scale : Array(12).fill(begun === 1 ? 0.6 : null)}
    .names=${Array.from({ length: 12 }, (_, month) => ({
      long: monthName(month, editing.locale, "long"),
      short: monthName(month, editing.locale, "short"),
    }))}
    .unit=${writing.unit}
    .blank=${blank}
    .isOut=${value === undefined}
    .marked=${marked}
    @change=${(event: CustomEvent<{ month: number; text: string } | { texts: null }>) => {
      if ("texts" in event.detail) editing.put(address, undefined);
      else put(event.detail.month, event.detail.text);
    }}
  ></gwb-twelve>`;
}

/** Bars from the least (or 0) to the most; a month without a figure has none. */
function heights(values: readonly unknown[]): (number | null)[] {
  const numbers = values.filter((one) => typeof one === "number");
  const low = Math.min(0, ...numbers);
  const high = Math.max(low + 1e-9, ...numbers);
  return values.map((one) => (typeof one === "number" ? (one - low) / (high - low) : null));
}
