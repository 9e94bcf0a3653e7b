/** What the command `estimate` says besides its answer. */
export const estimateWords = {
  help: `Works out what mains water watering could give up.

  npm run --silent estimate -- SURVEY.json --weather RECORD.csv

  --weather RECORD.csv  daily weather; without it years are generated from the
                        survey's monthly means, or from those of its place
  --years N             years to generate (50)
  --seed N              seed of the generator and of the draws (1)
  --draws N             draws of what is not known: how sure the saving is (0)
  --json                print the report document and nothing else
  --daily OUT.csv       also write the day-by-day table
  --units metric|us     litres and millimetres (metric), or gallons and inches
  --lang TAG            how numbers and dates are written (en)
  --help                this page`,
} as const;
