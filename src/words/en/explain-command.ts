/** What the command `explain` says besides the workings. */
export const explainText = {
  help: `Shows how a figure came about, down to the equation and to where each number comes from.

  npm run --silent explain -- SURVEY.json --weather RECORD.csv --figure ADDRESS

  --figure ADDRESS      the figure, such as mains/give-up, bed/ID/need/2015-07 or
                        bed/ID/ks/2015-07-14; without it the answer's figures
                        are listed with their addresses; of the choices, such
                        as choices/share/ID/water or choices/purse/share/ID/npv
  --weather RECORD.csv  daily weather; without it years are generated from the
                        survey's monthly means, or from those of its place
  --json                print the working as JSON
  --class-sheet OUT.html  write a worked example for a class instead: one bed, one
                        week, blanks on one sheet and the answers on another
  --bed ID              its bed
  --from DATE           its first day (the most telling week)
  --units metric|us     customary units beside the SI ones (metric)
  --lang TAG            how numbers and dates are written (en)
  --help                this page`,
  dateWanted: (found: string) => `--from: Give a date such as 2015-07-06. You entered ${found}.`,
  bedWanted: "--bed: Give the id of the bed that the class sheet is about.",
  noAddress: (found: string) =>
    `--figure: ${found} has not the form of an address, such as bed/oval/ks/2015-07-14. Leave --figure out to see those of the answer.`,
  nowhere: (found: string) =>
    `--figure: ${found} leads nowhere here: no such bed, tank, day or quantity. Leave --figure out to see those of the answer.`,
  noWeek: (bed: string) =>
    `--class-sheet: There is no week to show: no bed ${bed}, or the record has not all seven days.`,
  figures: "Figures of the answer, each with its address:",
  given: "What went in",
  sources: "Sources",
  provenance: { measured: "measured", "worked-out": "worked out", assumed: "assumed" },
  see: (address: string) => `see ${address}`,
} as const;
