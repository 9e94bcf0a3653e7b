import { readNumber, showNumber } from "./number.ts";
import { blank, isBlank, type Writing } from "./writing.ts";

/**
 * Latitude or longitude: −34.9, 34.9 S, 34° 54′ 12″ S. Letters of the compass give the sign.
 * @param letters the positive end, then the negative one: NS, EW
 */
export function angleWriting(letters: "NS" | "EW", locale?: string): Writing {
  return {
    read: (text) => {
      if (isBlank(text)) return blank;
      const found = new RegExp(`^\\s*([${letters}])?\\s*(.*?)\\s*([${letters}])?\\s*$`, "iu").exec(text);
      const [, before, middle = "", behind] = found ?? [];
      const degrees = readDegrees(middle, locale);
      const letter = (before ?? behind ?? "").toUpperCase();
      if (degrees === null || (before && behind) || (letter !== "" && degrees < 0))
        return { wrong: "unreadable" };
      return { value: letter === letters[1] ? -degrees : degrees };
    },
    show: (value) => (typeof value === "number" ? showNumber(value, 10, locale) : String(value ?? "")),
    unit: "°",
    inputMode: "text",
    width: 14,
  };
}

/** 34.9, 34°54′, 34° 54' 12", 34 54 12. */
function readDegrees(text: string, locale?: string): number | null {
  const plain = readNumber(text.replace(/[°\s]+$/u, ""), locale);
  if (plain !== null && !/\d\s+\d/.test(text)) return plain;
  const [whole, ...parts] = text.split(/[°'′"″\s]+/u).filter((part) => part !== "");
  const numbers = [whole ?? "", ...parts].map((part) => readNumber(part, locale));
  if (numbers.length < 2 || numbers.length > 3 || numbers.includes(null)) return null;
  const [degrees = 0, minutes = 0, seconds = 0] = numbers as number[];
  if (minutes < 0 || minutes >= 60 || seconds < 0 || seconds >= 60) return null;
  const size = Math.abs(degrees) + minutes / 60 + seconds / 3600;
  return Number((text.trim().startsWith("-") || degrees < 0 ? -size : size).toFixed(7));
}
