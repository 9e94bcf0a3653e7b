import { readNumber, showNumber } from "./number.ts";
import { blank, isBlank, type Writing } from "./writing.ts";

/** Words on one line. */
export function textWriting(width = 28): Writing {
  return {
    read: (text) => (isBlank(text) ? blank : { value: text.trim() }),
    show: (value) => String(value ?? ""),
    unit: "",
    inputMode: "text",
    width,
  };
}

/** A code in capital letters, as currencies have. */
export function codeWriting(): Writing {
  return {
    ...textWriting(9),
    read: (text) => (isBlank(text) ? blank : { value: text.trim().toUpperCase() }),
  };
}

/** A number where it is one, else words; yes and no where the field may hold them. */
export function looseWriting(yes: string, no: string, locale?: string): Writing {
  return {
    ...textWriting(20),
    read: (text) => {
      if (isBlank(text)) return blank;
      const word = text.trim().toLowerCase();
      if (word === yes || word === no) return { value: word === yes };
      return { value: readNumber(text, locale) ?? text.trim() };
    },
    show: (value) => {
      if (typeof value === "number") return showNumber(value, 12, locale);
      if (typeof value === "boolean") return value ? yes : no;
      return String(value ?? "");
    },
  };
}
