import type { FirstPlace } from "../../src/survey/first/entries.ts";
import { placeEntry } from "../../src/words/en/first.ts";
import { angleWriting } from "../fields/writing/angle.ts";

/**
 * Coordinates as people write them: −34.93, 138.6; 34.93 S 138.6 E; 34° 55′ S, 138° 36′ E.
 * @returns null where the text is a name; "wrong" where it is coordinates of nowhere
 */
export function readCoordinates(text: string, locale?: string): FirstPlace | "wrong" | null {
  if (!/\d/.test(text)) return null;
  const pair = halves(text);
  if (!pair) return null;
  const latitude = angleIn(pair[0], "NS", locale);
  const longitude = angleIn(pair[1], "EW", locale);
  if (latitude === null || longitude === null) return null;
  if (Math.abs(latitude) > 90 || Math.abs(longitude) > 180) return "wrong";
  return { name: positionWords(latitude, longitude), latitude, longitude };
}

/** Rounded to about a hundred metres: more is not wanted of anybody. */
export function positionWords(latitude: number, longitude: number): string {
  const words = (degrees: number, letters: string) =>
    `${Math.abs(degrees)
      .toFixed(3)
      .replace(/\.?0+$/, "")}° ${degrees < 0 ? letters[1] : letters[0]}`;
  return placeEntry.position(words(latitude, "NS"), words(longitude, "EW"));
}

function halves(text: string): [string, string] | null {
  const lettered = /^(.*?[NS])[\s,;]*(.*[EW]\s*)$/iu.exec(text) ?? /^([NS].*?)[\s,;]*([EW].*)$/iu.exec(text);
  if (lettered) return [lettered[1]!, lettered[2]!];
  const parts = text.split(/[;\s]*[;,\s][;\s]*/u).filter((part) => part !== "");
  // a comma may stand for the point: 34,93; 138,6
  const bySign = text.split(";").map((part) => part.trim());
  if (bySign.length === 2) return [bySign[0]!, bySign[1]!];
  return parts.length === 2 ? [parts[0]!, parts[1]!] : null;
}

function angleIn(text: string, letters: "NS" | "EW", locale?: string): number | null {
  const read = angleWriting(letters, locale).read(text);
  return "value" in read && typeof read.value === "number" ? read.value : null;
}
