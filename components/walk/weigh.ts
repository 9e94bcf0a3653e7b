import type { WeatherRecord } from "../../src/engine/weather/record.ts";
import type { Weigh } from "./context.ts";

/** Litres that surveys come to on a record of weather; the engine is fetched when it is first asked. */
export function weighWith(record: WeatherRecord): Weigh {
  return async (survey) => {
    const [{ workOut }, { reportOf }, { cautionSentence }] = await Promise.all([
      import("../../src/report/work-out.ts"),
      import("../../src/report/report.ts"),
      import("../../src/words/en/cautions.ts"),
    ]);
    const { beds, mains } = reportOf(workOut(survey, record), cautionSentence);
    return {
      beds: new Map(beds.map(({ id, gross_L_year }) => [id, gross_L_year])),
      need_kL_year: mains.need_kL_year,
    };
  };
}
