/** What is said where the file that everything is kept in cannot be used. */
export const storeWords = {
  noFolder: (folder: string, code: string) =>
    `The data folder ${folder} could not be made (${code}). Choose one that this account may write: --data FOLDER`,
  cannotOpen: (path: string, code: string) =>
    `The file ${path} could not be opened (${code}). Nothing was changed in it.`,
  notOurs: (path: string) =>
    `The file ${path} is not one that this program made. Choose another data folder: --data FOLDER`,
  newer: (path: string, found: number, known: number) =>
    `The file ${path} was written by a newer version of this program (file version ${found}; this program knows ${known}). Update the program. Nothing was changed in the file.`,
  damaged: (path: string) =>
    `The file ${path} is damaged. Keep a copy of it, then bring back the last backup: npm run restore -- --data FOLDER --from BACKUP`,
} as const;
