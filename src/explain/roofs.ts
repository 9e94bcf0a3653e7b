import type { Roof } from "../engine/grounds.ts";
import { firstFlushOfDay_mm, roofByDay_L, roofInflow_L } from "../engine/tanks.ts";
import { originWords } from "../words/en/explain.ts";
import {
  byRule,
  type Chapters,
  dayAt,
  elsewhere,
  type Figure,
  fromSurvey,
  lasting,
  ofWeather,
  sheetFor,
} from "./figure.ts";
import type { Part } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** What a roof sends to its tank. */
export const roofChapters: Chapters = {
  inflow: {
    day: inflow,
    flow: {
      term: "roofInflow",
      series: (figure) => {
        const roof = roofOf(figure);
        return roof && roofByDay_L(roof, figure.run.ready.weather);
      },
    },
  },
};

function roofOf({ run, address }: Figure): Roof | null {
  return run.ready.grounds.roofs.find(({ id }) => id === address.id) ?? null;
}

function inflow(figure: Figure, i: number): Working | null {
  const roof = roofOf(figure);
  if (!roof) return null;
  const sheet = sheetFor(figure);
  const { weather } = figure.run.ready;
  const path = `roofs[${figure.run.survey.roofs.findIndex(({ id }) => id === roof.id)}]`;
  const flush = firstFlushOfDay_mm(weather.rain_mm, i, roof.firstFlush_mm);
  const rainBefore =
    i > 0 ? ofWeather(figure, "rain", weather.rain_mm[i - 1]!, i - 1) : byRule(0, originWords.firstDayDirty);
  const isDirty = i === 0 || flush > 0 || roof.firstFlush_mm === 0;
  const firstFlush = isDirty
    ? sheet.step(
        "flushDirty",
        { firstFlush: fromSurvey(figure, `${path}.firstFlush_mm`, roof.firstFlush_mm), rainBefore },
        flush,
        roof.firstFlush_mm === 0 ? originWords.noFlush : undefined,
      )
    : sheet.step("flushClean", { rainBefore }, flush);
  sheet.step(
    "roofInflow",
    {
      area: fromSurvey(figure, `${path}.area_m2`, roof.area_m2),
      runoff: fromSurvey(figure, `${path}.runoff`, roof.runoff),
      rain: ofWeather(figure, "rain", weather.rain_mm[i]!, i),
      firstFlush,
      roofShare: fromSurvey(figure, `${path}.share`, roof.share),
    },
    roofInflow_L(roof, weather.rain_mm, i),
  );
  return sheet.done(...titleOf(figure));
}

/** Roofs that drain to a tank group, with what each sends on day i. */
export function roofParts(figure: Figure, i: number): Part[] {
  const { run, k, address } = figure;
  const ids = new Set(run.ready.tanks[k]!.group.members.map(({ id }) => id));
  return run.ready.grounds.roofs
    .filter(({ tank }) => tank !== null && ids.has(tank))
    .map((roof) => ({
      ...elsewhere(roofInflow_L(roof, run.ready.weather.rain_mm, i), {
        run: lasting(address.run),
        subject: "roof",
        id: roof.id,
        what: "inflow",
        when: dayAt(figure, i),
      }),
      name: run.survey.roofs.find(({ id }) => id === roof.id)?.name ?? roof.id,
    }));
}
