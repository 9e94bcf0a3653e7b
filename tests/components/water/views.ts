import { toTanksView } from "../../../src/report/tanks-view.ts";
import { toThirstView } from "../../../src/report/thirst-view.ts";
import { workOut } from "../../../src/report/work-out.ts";
import { cautionSentence } from "../../../src/words/en/cautions.ts";
import { recordAt, report, surveyOf } from "../../helpers/worked.ts";

/** A survey worked out on the Seattle record, with what both screens of water show. */
export function watersOf(survey: unknown) {
  const worked = workOut(surveyOf(survey), recordAt("demo/seattle.csv"));
  const reported = report(worked);
  return {
    worked,
    thirst: toThirstView(worked, reported, cautionSentence),
    tanks: toTanksView(worked, reported, cautionSentence),
  };
}
