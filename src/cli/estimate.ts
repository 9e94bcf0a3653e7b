import { writeCsv } from "../files/csv.ts";
import { readRecord } from "../files/record.ts";
import { dailyTable } from "../report/daily.ts";
import { givenWeather } from "../report/given-weather.ts";
import { reportOf } from "../report/report.ts";
import { planSpread } from "../report/spread.ts";
import { type WorkedOut, workOut } from "../report/work-out.ts";
import { readClimate } from "../server/climate-file.ts";
import { readSurvey } from "../survey/read.ts";
import type { Survey } from "../survey/survey.ts";
import { cautionSentence } from "../words/en/cautions.ts";
import { estimateWords } from "../words/en/estimate.ts";
import { faultSentence } from "../words/en/faults.ts";
import { refusalsOf } from "../words/en/refusals.ts";
import { type EstimateFlags, readFlags } from "./estimate-flags.ts";
import { Refused, readTextFile } from "./input.ts";
import { whileWorking } from "./progress.ts";
import { printSummary } from "./summary.ts";
import { writeWhole } from "./write-file.ts";

const mostSurvey_MB = 20;
const mostRecord_MB = 64;

/** Reads, works out, and only then writes: input that is refused leaves nothing behind. */
function run(flags: EstimateFlags): void {
  const survey = surveyIn(flags.survey);
  const worked = whileWorking(estimateWords.working, () => work(survey, flags));
  const drawn =
    flags.draws > 0
      ? whileWorking(estimateWords.working, () => planSpread(worked, flags.draws, flags.seed))
      : null;
  const report = reportOf(worked, cautionSentence, drawn);
  if (flags.daily !== null) {
    const { header, rows } = dailyTable(worked);
    writeWhole(flags.daily, writeCsv(header, rows));
  }
  if (flags.json) process.stdout.write(`${JSON.stringify(report, null, 1)}\n`);
  else printSummary(worked, report, flags.units, flags.lang);
}

function surveyIn(path: string): Survey {
  const read = readSurvey(readTextFile(path, mostSurvey_MB));
  if ("faults" in read) throw new Refused(read.faults.map(faultSentence));
  return read.survey;
}

function work(survey: Survey, { weather, years, seed, daily }: EstimateFlags): WorkedOut {
  const read = weather === null ? { record: null } : readRecord(readTextFile(weather, mostRecord_MB));
  if ("faults" in read) throw new Refused(read.faults.map(faultSentence));
  const given = givenWeather(survey, read.record, readClimate, { years, seed });
  if ("faults" in given) throw new Refused(given.faults.map(faultSentence));
  try {
    return workOut(given.survey, given.record, { keepDays: daily !== null, notes: given.notes });
  } catch (error) {
    const bedIds = survey.beds.map(({ id }) => id);
    const refusals = refusalsOf(error, bedIds);
    if (refusals === null) throw error;
    throw new Refused(refusals.map(({ path, sentence }) => `${path}: ${sentence}`));
  }
}

try {
  const flags = readFlags(process.argv.slice(2));
  if (flags === null) console.log(estimateWords.help);
  else run(flags);
} catch (error) {
  if (!(error instanceof Refused)) throw error;
  for (const line of error.lines) console.error(line);
  process.exitCode = 2;
}
