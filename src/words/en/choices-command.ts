import { count } from "./count.ts";

/** What the command `choices` says besides its answer, and what is said of what it is asked for. */
export const choicesText = {
  help: `Says what could be done to give up mains water, what each of it saves and
costs, and how sure that is: a brief for a committee.

  npm run --silent choices -- SURVEY.json --weather RECORD.csv

  --weather RECORD.csv  daily weather; without it years are generated from the
                        survey's monthly means, or from those of its place
  --years N             years to generate (50)
  --budget N            what may be spent in all (the survey's own)
  --draws N             draws of what is not known for sure (200; 0 for none)
  --seed N              seed of the draws, and of generated years (1)
  --json                print the decision document and nothing else
  --brief FILE          also write the brief: FILE.md or FILE.html
  --units metric|us     the brief in litres and millimetres (metric), or in gallons
                        and inches
  --help                this page`,
  whole: (found: string, low: number, high: number) =>
    `Give a whole number from ${count(low)} to ${count(high)}. You entered ${found}.`,
  amount: (found: string) =>
    `Give an amount of money, 0 or more, in the survey's currency. You entered ${found}.`,
  briefForm: (found: string) => `Give a file name that ends in .md or .html. You entered ${found}.`,
  tooManyDraws: (draws: number, beds: number, days: number) =>
    `So many draws would hold the computer up: ${count(draws)} of ${count(beds)} beds over ${count(days)} days. Ask for fewer, or send a shorter record.`,
} as const;
