import table from "../../data/methods.json" with { type: "json" };
import { citedRows, rowOf, type Table, type Value } from "./table.ts";

/** A way of watering. */
export interface Method {
  method: string;
  /** Water comes in under the leaves. */
  drip: boolean;
  /** By hand where the survey does not say. */
  byHand: boolean;
  /** Net over gross. */
  efficiency: Value;
  /** Share of the surface that a watering wets. */
  wettedShare: Value;
  /** For what is laid out over a bed; the others have a flow. */
  application_mm_h?: Value;
  flow_L_min?: Value;
  note?: string;
}

export const methods: readonly Method[] = citedRows(table as Table<Method>);

export function method(name: string): Method {
  return rowOf(methods, "method", name);
}

/**
 * Flow that stands in for one not measured, L/min: the method's own, or its application rate over the bed
 * (1 mm/h on 1 m² is 1/60 L/min).
 */
export function standInFlow(name: string, area_m2: number): Value {
  const { flow_L_min, application_mm_h } = method(name);
  if (flow_L_min) return flow_L_min;
  if (!application_mm_h) throw new RangeError(`The methods table has neither flow nor rate for ${name}.`);
  const flow = (rate_mm_h: number): number => (rate_mm_h * area_m2) / 60;
  const { low, middle, high } = application_mm_h;
  return { ...application_mm_h, low: flow(low), middle: flow(middle), high: flow(high) };
}
