import { errorOfReading } from "../../tables/reading-errors.ts";
import type { Figure } from "./figure.ts";
import { meanOfReadings } from "./repeats.ts";
import { type Impossible, type Instrument, impossible, type Read, type Slot } from "./way.ts";

/** How many readings each blank takes from a row of them; null where they do not fit. */
export function countsOf(
  slots: readonly Slot[],
  readings: number,
  counts: readonly number[] | null,
): readonly number[] | null {
  if (counts) return counts.length === slots.length ? counts : null;
  const lists = slots.filter(({ list }) => list).length;
  const single = slots.length - lists;
  if (lists > 1 || readings < single || (lists === 0 && readings !== single)) return null;
  return slots.map(({ list }) => (list ? readings - single : 1));
}

/** Deals readings out to the blanks of a way. `instead` reads lengths with another instrument. */
export function dealt(
  slots: readonly Slot[],
  counts: readonly number[],
  readings: readonly number[],
  instead: Instrument | null = null,
): Read | Impossible {
  const rows = new Map<string, { slot: Slot; values: readonly number[] }>();
  let from = 0;
  for (const [i, slot] of slots.entries()) {
    const values = readings.slice(from, from + counts[i]!);
    from += counts[i]!;
    const short = values.length < counts[i]! || values.length === 0;
    if (short && !slot.list) return impossible("reading-missing", { slot: slot.name });
    if (values.length % (slot.together ?? 1) !== 0) return impossible("reading-missing", { slot: slot.name });
    if (!values.every(Number.isFinite)) return impossible("not-a-number", { slot: slot.name });
    const wrong = values.find((value) => value < 0 && !slot.signed);
    if (wrong !== undefined) return impossible("below-nothing", { slot: slot.name, found: wrong });
    rows.set(slot.name, { slot, values });
  }
  const row = (name: string) => rows.get(name)!;
  const errorOf = (slot: Slot, value: number) => {
    const by = slot.unit === "m" && instead ? instead : slot.by;
    return by ? errorOfReading(by, value) : 0;
  };
  return {
    of(name): Figure {
      const { slot, values } = row(name);
      return meanOfReadings(values, errorOf(slot, Math.max(...values)));
    },
    each: (name) => {
      const { slot, values } = row(name);
      return values.map((figure) => ({ figure, standardError: errorOf(slot, figure) }));
    },
    raw: (name) => row(name).values,
  };
}
