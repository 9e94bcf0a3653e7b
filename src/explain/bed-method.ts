import { applicationRate_mm_h } from "../engine/watering.ts";
import { noteWords } from "../words/en/explain.ts";
import { bedOf, bedPath } from "./bed.ts";
import { type Chapters, constant, type Figure, fromSurvey, sheetFor } from "./figure.ts";
import { originOf } from "./origins.ts";
import type { Input } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** How water is put on a bed: the same on every day. */
export const methodChapters: Chapters = {
  most: { fixed: most },
  efficiency: { fixed: efficiency },
  rate: { fixed: rate },
  flow: { fixed: flow },
  area: { fixed: area },
  "wetted-share": { fixed: wettedShare },
};

export function areaInput(figure: Figure): Input {
  return fromSurvey(figure, `${bedPath(figure)}.area_m2`, bedOf(figure).area_m2);
}

export function flowInput(figure: Figure): Input {
  const { watering } = figure.run.survey.beds[figure.k]!;
  const value = bedOf(figure).watering.flow_L_min;
  const taps = figure.run.survey.taps ?? [];
  const tap = taps.findIndex(({ id }) => id === watering.tap);
  const byTap = watering.flow_L_min === undefined && taps[tap]?.flow_L_min !== undefined;
  return fromSurvey(
    figure,
    byTap ? `taps[${tap}].flow_L_min` : `${bedPath(figure)}.watering.flow_L_min`,
    value,
  );
}

function isByTest(figure: Figure): boolean {
  const { efficiency, distributionUniformity } = figure.run.survey.beds[figure.k]!.watering;
  return efficiency === undefined && distributionUniformity !== undefined;
}

export function efficiencyInput(figure: Figure): Input {
  const value = bedOf(figure).watering.efficiency;
  if (isByTest(figure)) return constant(figure, "efficiency", value);
  return fromSurvey(figure, `${bedPath(figure)}.watering.efficiency`, value);
}

function most(figure: Figure): Working | null {
  const { grown } = figure.run.ready.beds[figure.k]!;
  const { maxMinutes } = grown.bed.watering;
  if (maxMinutes === Number.POSITIVE_INFINITY) return null;
  const sheet = sheetFor(figure);
  sheet.step(
    "most",
    {
      maxMinutes: fromSurvey(figure, `${bedPath(figure)}.watering.maxMinutes`, maxMinutes),
      flow: flowInput(figure),
      area: areaInput(figure),
      efficiency: efficiencyInput(figure),
    },
    grown.mostNet_mm,
  );
  return sheet.done(...titleOf(figure));
}

function efficiency(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { watering } = figure.run.survey.beds[figure.k]!;
  const value = bedOf(figure).watering.efficiency;
  const path = `${bedPath(figure)}.watering`;
  if (isByTest(figure)) {
    const du = watering.distributionUniformity!;
    const uniformity = fromSurvey(figure, `${path}.distributionUniformity`, du);
    sheet.step("efficiencyOfTest", { uniformity }, value);
  } else sheet.step("asSurveyedEfficiency", { efficiency: efficiencyInput(figure) }, value);
  sheet.note(
    noteWords.method,
    watering.method,
    originOf(figure.book, figure.run, figure.say, `${path}.method`),
  );
  return sheet.done(...titleOf(figure));
}

function wettedInput(figure: Figure): Input {
  return fromSurvey(figure, `${bedPath(figure)}.watering.wettedShare`, bedOf(figure).watering.wettedShare);
}

/** Where the water falls; what a dripper gives too fast spreads, which the rounds see to. */
function rate(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { area_m2, watering } = bedOf(figure);
  sheet.step(
    "rate",
    { flow: flowInput(figure), area: areaInput(figure), wettedShare: wettedInput(figure) },
    applicationRate_mm_h(watering.flow_L_min, area_m2 * watering.wettedShare),
  );
  return sheet.done(...titleOf(figure));
}

function flow(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const input = flowInput(figure);
  sheet.step("asSurveyedFlow", { flow: input }, input.value);
  return sheet.done(...titleOf(figure), input.origin!.provenance);
}

function area(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const input = areaInput(figure);
  sheet.step("asSurveyedArea", { area: input }, input.value);
  return sheet.done(...titleOf(figure), input.origin!.provenance);
}

function wettedShare(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const input = wettedInput(figure);
  sheet.step("asSurveyedWetted", { wettedShare: input }, input.value);
  return sheet.done(...titleOf(figure), input.origin!.provenance);
}
