import { dayWriting, showDay } from "./day.ts";
import type { Writing } from "./writing.ts";

/** Dates, one a line; days of the week that stand in the same list are left to another field. */
export function datesWriting(locale?: string): Writing {
  const one = dayWriting("date", locale);
  return {
    read: (text) => {
      const lines = text.split(/[\n;]/).filter((line) => line.trim() !== "");
      const read = lines.map((line) => one.read(line));
      const values = read.flatMap((reading) => ("value" in reading ? [reading.value] : []));
      return values.length === read.length ? { value: values } : { wrong: "unreadable" };
    },
    show: (value) =>
      Array.isArray(value)
        ? value.map((date) => showDay(String(date), locale)).join("\n")
        : String(value ?? ""),
    unit: "",
    inputMode: "text",
    width: 20,
    lines: 3,
  };
}
