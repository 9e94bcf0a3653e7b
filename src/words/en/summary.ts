/** What the answer says in a terminal besides the sentences that it shares with the page. */
export const summaryWords = {
  of: (site: string, from: string, to: string) =>
    `${site}: grounds water, by the weather of ${from} to ${to}.`,
  byMonth: (unit: string) => `${capital(unit)} a week to let out, in a mean year (k is a thousand)`,
  bed: "Bed",
  againstNeed: (unit: string) => `Today against need, ${unit} in a mean year`,
  againstNeedColumns: ["Bed", "today", "need", "too much", "too little", "thirsty days"],
  notKnown: "not known",
  rainOnly: "rain only",
  tanks: (unit: string) => `Tanks watered to need, ${unit} in a mean year`,
  tankColumns: ["Tank", "comes in", "given", "spills", "days short"],
  outOfUse: (name: string) => `${name} (not in use)`,
  assumed: (count: number) =>
    count === 1
      ? "One value that the survey leaves out was taken from a table; --json lists it."
      : `${count} values that the survey leaves out were taken from tables; --json lists them.`,
} as const;

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
