import { count } from "./count.ts";

/** What is said of a file that cannot be read. */
export const inputWords = {
  missing: "There is no such file. Give the path of one that exists.",
  folder: "This is a folder. Give the path of a file.",
  empty: "The file is empty.",
  notText: "The file is not UTF-8 text.",
  notAllowed: "This account may not read the file.",
  notOpened: (code: string) => `The file could not be opened (${code}).`,
  notWritten: (code: string) => `The file could not be written (${code}).`,
  tooLarge: (found_MB: number, most_MB: number) =>
    `The file must be at most ${count(most_MB)} MB. It has ${count(Math.ceil(found_MB))} MB or more.`,
} as const;
