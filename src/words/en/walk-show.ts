import type { Unit } from "../../quantities.ts";

/** Writes a figure in SI as people read it, rounded, with its unit. */
export type Show = (value: number, si: Unit) => string;

const numbers = new Intl.NumberFormat("en", { maximumSignificantDigits: 3 });
const percent = new Intl.NumberFormat("en", { style: "percent", maximumFractionDigits: 0 });

/** Metric, to three figures. */
export const showMetric: Show = (value, si) =>
  si === "share" ? percent.format(value) : `${numbers.format(value)} ${si}`;
