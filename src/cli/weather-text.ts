import { inputWords } from "../words/en/input.ts";
import { Refused, readBytes } from "./input.ts";

/** The largest weather file read; a century of days with ten columns has about 3 MB. */
const most_MB = 64;

/**
 * Reads a weather file as text: UTF-8, or UTF-16 where a byte-order mark says so, or else Windows-1252, which
 * spreadsheets and older loggers write and which holds all of Latin-1.
 * @throws Refused where it is missing, a folder, too large, empty or not text
 */
export function readWeatherText(path: string): string {
  const bytes = readBytes(path, most_MB);
  if (bytes.length === 0) throw new Refused([`${path}: ${inputWords.empty}`]);
  const wide =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "utf-16le"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "utf-16be"
        : null;
  if (wide) return new TextDecoder(wide).decode(bytes);
  if (!looksLikeText(bytes)) throw new Refused([`${path}: ${inputWords.notText}`]);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** Text has no zero bytes, and hardly any other control character but tabs and line ends. */
function looksLikeText(bytes: Uint8Array): boolean {
  const start = bytes.subarray(0, 65_536);
  const strange = start.filter(
    (byte) => byte < 32 && byte !== 9 && byte !== 10 && byte !== 12 && byte !== 13 && byte !== 26,
  );
  return !bytes.includes(0) && strange.length < start.length / 200;
}
