import { blank, isBlank, type Writing } from "./writing.ts";

/** A time on the clock: 7:30, 7.30, 19h30, 7 pm, 24:00. */
export function timeWriting(): Writing {
  return {
    read: (text) => {
      if (isBlank(text)) return blank;
      const value = readTime(text);
      return value === null ? { wrong: "unreadable" } : { value };
    },
    show: (value) => String(value ?? ""),
    unit: "",
    inputMode: "text",
    width: 7,
  };
}

/** As HH:MM on the 24-hour clock; null where the text is no time. */
export function readTime(text: string): string | null {
  const found = /^\s*(\d{1,2})(?:\s*[:.h]\s*(\d{2})?|(\d{2}))?\s*(?:([ap])\.?m\.?)?\s*$/i.exec(text);
  if (!found) return null;
  const [, hourText = "", minutesAfter, minutesTogether, half] = found;
  const minute = Number(minutesAfter ?? minutesTogether ?? 0);
  let hour = Number(hourText);
  if (half) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half.toLowerCase() === "p" ? 12 : 0);
  }
  const isTime = minute < 60 && (hour < 24 || (hour === 24 && minute === 0));
  return isTime ? `${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")}` : null;
}
