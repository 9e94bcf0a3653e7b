import { writeCsv } from "../files/csv.ts";
import { dailyTable } from "../report/daily.ts";
import { reportOf } from "../report/report.ts";
import { planSpread } from "../report/spread.ts";
import { workOut } from "../report/work-out.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { estimateWords } from "../words/en/estimate.ts";
import { flagWords } from "../words/en/flags.ts";
import { runCommand } from "./command.ts";
import { type EstimateFlags, readEstimateFlags } from "./estimate-flags.ts";
import { whileWorking } from "./progress.ts";
import { printSummary } from "./summary.ts";
import { readInputs, refusing } from "./survey-input.ts";
import { writeWhole } from "./write-file.ts";

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run({ survey, weather, years, seed, draws, daily, json, units, lang }: EstimateFlags): void {
  const given = readInputs(survey, weather, { years, seed });
  const { worked, drawn } = whileWorking(flagWords.working, () =>
    refusing(given, () => {
      const worked = workOut(given.survey, given.record, { keepDays: daily !== null, notes: given.notes });
      return { worked, drawn: draws > 0 ? planSpread(worked, draws, seed) : null };
    }),
  );
  const report = reportOf(worked, cautionSentence, drawn);
  if (daily !== null) {
    const { header, rows } = dailyTable(worked);
    writeWhole(daily, writeCsv(header, rows));
  }
  if (json) process.stdout.write(`${JSON.stringify(report, null, 1)}\n`);
  else printSummary(worked, report, units, lang);
}

runCommand(estimateWords.help, readEstimateFlags, run);
