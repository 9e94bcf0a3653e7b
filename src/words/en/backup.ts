/** What the backup and restore commands say. */
import { count } from "./count.ts";

const sites = (n: number) => (n === 1 ? "1 site" : `${count(n)} sites`);

export const backupWords = {
  backupHelp: [
    "npm run backup -- [--data FOLDER] --out FILE",
    "",
    "Writes everything that is kept into one file, while the server may go on.",
    "  --data FOLDER  the data folder (grounds-data)",
    "  --out FILE     the file to write; one of that name is replaced when the new one is whole",
  ].join("\n"),
  restoreHelp: [
    "npm run restore -- [--data FOLDER] --from FILE",
    "",
    "Puts what a backup holds in the place of what is kept, which is set aside in the data folder first.",
    "  --data FOLDER  the data folder (grounds-data)",
    "  --from FILE    the backup",
  ].join("\n"),
  unknown: (found: string, known: readonly string[]) =>
    `There is no option ${found}. The options are ${known.join(", ")} and --help.`,
  needsValue: (option: string) => `${option} needs a value.`,
  wanted: (option: string) => `${option} is missing. It must name a file.`,
  nothingKept: (path: string) =>
    `There is nothing to back up: the file ${path} is not there. Name the data folder: --data FOLDER`,
  noBackup: (path: string) => `There is no file ${path}. Name the backup: --from FILE`,
  itself: (path: string) => `${path} is the file that everything is kept in. Choose another name.`,
  notWritten: (path: string, code: string) => `The backup ${path} could not be written (${code}).`,
  notRestored: (code: string) =>
    `The backup could not be put in place (${code}). What was kept before is as it was. If the server is busy, stop it and try again.`,
  written: (path: string, count: number) => `${path}: ${sites(count)}, checked.`,
  restored: (path: string, count: number) => `${path} is in place: ${sites(count)}.`,
  setAside: (path: string) => `What was kept before is in ${path}`,
} as const;
