import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import { inputWords } from "../words/en/input.ts";

/** Input that is refused: one line a fault, exit status 2. */
export class Refused extends Error {
  override name = "Refused";
  readonly lines: readonly string[];
  constructor(lines: readonly string[]) {
    super(lines.join("\n"));
    this.lines = lines;
  }
}

const megabyte = 1024 * 1024;

/**
 * Reads a text file no larger than `most_MB`, as UTF-8.
 * @throws Refused where it is missing, a folder, too large, empty or not text
 */
export function readTextFile(path: string, most_MB: number): string {
  const bytes = readBytes(path, most_MB);
  if (bytes.length === 0) throw new Refused([`${path}: ${inputWords.empty}`]);
  if (bytes.includes(0)) throw new Refused([`${path}: ${inputWords.notText}`]);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    throw new Refused([`${path}: ${inputWords.notText}`]);
  }
}

/** @throws Refused where it is missing, a folder or too large */
export function readBytes(path: string, most_MB: number): Uint8Array {
  let file: number;
  try {
    file = openSync(path, "r");
  } catch (error) {
    throw new Refused([`${path}: ${openFault(error)}`]);
  }
  try {
    const stat = fstatSync(file);
    if (stat.isDirectory()) throw new Refused([`${path}: ${inputWords.folder}`]);
    if (stat.size > most_MB * megabyte)
      throw new Refused([`${path}: ${inputWords.tooLarge(stat.size / megabyte, most_MB)}`]);
    return readUpTo(file, path, most_MB);
  } finally {
    closeSync(file);
  }
}

/** Reads to the end, and stops past the limit: a pipe has no size to look at first. */
function readUpTo(file: number, path: string, most_MB: number): Uint8Array {
  const chunks: Uint8Array[] = [];
  let total = 0;
  for (;;) {
    const chunk = new Uint8Array(megabyte);
    const read = readSync(file, chunk, 0, megabyte, null);
    if (read === 0) return Buffer.concat(chunks);
    chunks.push(chunk.subarray(0, read));
    total += read;
    if (total > most_MB * megabyte)
      throw new Refused([`${path}: ${inputWords.tooLarge(total / megabyte, most_MB)}`]);
  }
}

function openFault(error: unknown): string {
  const code = (error as NodeJS.ErrnoException).code;
  if (code === "ENOENT" || code === "ENOTDIR") return inputWords.missing;
  return code === "EACCES" ? inputWords.notAllowed : inputWords.notOpened(String(code));
}
