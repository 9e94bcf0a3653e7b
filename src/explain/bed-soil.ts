import type { Planting } from "../engine/grounds.ts";
import { bedRoots } from "../engine/plants.ts";
import { firstTheta33, firstTheta1500, organicMatter_pct, textureWater } from "../engine/soil-texture.ts";
import { textureClass } from "../engine/texture-class.ts";
import { mulchMaterial } from "../tables/mulches.ts";
import { soil as soilRow } from "../tables/soils.ts";
import { noteWords, originWords } from "../words/en/explain.ts";
import type { FormulaKey } from "../words/en/explain-formulas.ts";
import { bedOf, bedPath } from "./bed.ts";
import { byRule, type Chapters, constant, type Figure, fromSurvey, sheetFor } from "./figure.ts";
import { originOf } from "./origins.ts";
import type { Input, Sheet } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** What a bed's soil, mulch and roots hold: the same on every day. */
export const soilChapters: Chapters = {
  available: { fixed: available },
  trigger: { fixed: trigger },
  mulch: { fixed: mulch },
  tew: { fixed: totalEvaporable },
  rew: { fixed: readilyEvaporable },
  "field-capacity": { fixed: fieldCapacity },
  "wilting-point": { fixed: wiltingPoint },
  "root-depth": { fixed: (figure) => rootsMean(figure, "rootDepth", "rootDepth_m", "asSurveyedRootDepth") },
  fraction: { fixed: (figure) => rootsMean(figure, "fraction", "depletionFraction", "asSurveyedFraction") },
  height: { fixed: (figure) => rootsMean(figure, "height", "height_m", null) },
};

type SoilFigure = "fieldCapacity" | "wiltingPoint" | "tew_mm" | "rew_mm";

function soilOf({ run, k }: Figure) {
  return run.survey.beds[k]!.soil;
}

function hasSandAndClay(figure: Figure): boolean {
  const soil = soilOf(figure);
  return soil?.sand_pct !== undefined && soil.clay_pct !== undefined;
}

/** A figure of the bed's soil: surveyed, by its texture's row, or worked out from sand and clay. */
function soilFigure(figure: Figure, name: SoilFigure, value: number, sheet: Sheet): Input {
  const soil = soilOf(figure);
  if (soil?.[name] !== undefined) return fromSurvey(figure, `${bedPath(figure)}.soil.${name}`, value);
  if (hasSandAndClay(figure)) {
    if (name === "fieldCapacity") return constant(figure, "field-capacity", value);
    if (name === "wiltingPoint") return constant(figure, "wilting-point", value);
    const row = textureClass(soil!.sand_pct!, soil!.clay_pct!);
    return byTexture(row, name, value);
  }
  const texture = soil?.texture ?? assumedTexture(figure);
  sheet.note(noteWords.texture, texture, originOf(figure.book, figure.run, figure.say, texturePath(figure)));
  return byTexture(texture, name, value);
}

function byTexture(texture: string, name: SoilFigure, value: number): Input {
  return byRule(value, originWords.row("soils", texture, soilRow(texture)[name].source));
}

function texturePath(figure: Figure): string {
  const path = `${bedPath(figure)}.soil`;
  return figure.run.resolved.assumed.some(({ where }) => where === path) ? path : `${path}.texture`;
}

function assumedTexture({ run, k }: Figure): string {
  const path = `beds[${k}].soil`;
  return String(run.resolved.assumed.find(({ where }) => where === path)!.value);
}

function sandAndClay(figure: Figure) {
  const path = `${bedPath(figure)}.soil`;
  const { sand_pct, clay_pct } = soilOf(figure)!;
  return {
    sand: fromSurvey(figure, `${path}.sand_pct`, sand_pct!),
    clay: fromSurvey(figure, `${path}.clay_pct`, clay_pct!),
    organicMatter: byRule(organicMatter_pct, originWords.ours),
    shares: [sand_pct! / 100, clay_pct! / 100] as const,
  };
}

function fieldCapacity(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const value = bedOf(figure).soil.fieldCapacity;
  if (hasSandAndClay(figure)) {
    const { shares, ...inputs } = sandAndClay(figure);
    const first = sheet.step("fieldCapacityFirst", inputs, firstTheta33(...shares, organicMatter_pct));
    sheet.step("fieldCapacity", { thetaFirst: first }, value);
  } else
    sheet.step(
      "asSurveyedFieldCapacity",
      { fieldCapacity: soilFigure(figure, "fieldCapacity", value, sheet) },
      value,
    );
  return sheet.done(...titleOf(figure));
}

function wiltingPoint(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { fieldCapacity, wiltingPoint: value } = bedOf(figure).soil;
  if (hasSandAndClay(figure)) {
    const { shares, ...inputs } = sandAndClay(figure);
    const first = sheet.step("wiltingPointFirst", inputs, firstTheta1500(...shares, organicMatter_pct));
    const dry = sheet.step("wiltingPoint1500", { thetaFirst: first }, textureWater(...shares).wiltingPoint);
    const held = constant(figure, "field-capacity", fieldCapacity);
    sheet.step("wiltingPoint", { theta1500: dry, fieldCapacity: held }, value);
  } else
    sheet.step(
      "asSurveyedWiltingPoint",
      { wiltingPoint: soilFigure(figure, "wiltingPoint", value, sheet) },
      value,
    );
  return sheet.done(...titleOf(figure));
}

function available(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { grown } = figure.run.ready.beds[figure.k]!;
  const { soil } = grown.bed;
  sheet.step(
    "taw",
    {
      fieldCapacity: soilFigure(figure, "fieldCapacity", soil.fieldCapacity, sheet),
      wiltingPoint: soilFigure(figure, "wiltingPoint", soil.wiltingPoint, sheet),
      rootDepth: rootFigure(figure, "root-depth", "rootDepth_m"),
    },
    grown.available_mm,
  );
  return sheet.done(...titleOf(figure));
}

function trigger(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { grown } = figure.run.ready.beds[figure.k]!;
  const fraction = rootFigure(figure, "fraction", "depletionFraction");
  sheet.step(
    "trigger",
    { fraction, taw: constant(figure, "available", grown.available_mm) },
    grown.trigger_mm,
  );
  return sheet.done(...titleOf(figure));
}

type RootFigure = "rootDepth_m" | "depletionFraction" | "height_m";

/** Root depth, p or height of the bed: its own or its one planting's straight from the survey, else a mean. */
export function rootFigure(
  figure: Figure,
  what: "root-depth" | "fraction" | "height",
  name: RootFigure,
): Input {
  const value = bedRoots(bedOf(figure))[name];
  const own = ownFigure(figure, name);
  return own ? fromSurvey(figure, own, value) : constant(figure, what, value);
}

/** The path of the bed's own figure, or of its one planting's; null where it is a mean of several. */
function ownFigure(figure: Figure, name: RootFigure): string | null {
  const bed = figure.run.survey.beds[figure.k]!;
  if (name !== "height_m" && bed[name] !== undefined) return `${bedPath(figure)}.${name}`;
  return bed.plantings.length === 1 ? `${bedPath(figure)}.plantings[0].${name}` : null;
}

function rootsMean(
  figure: Figure,
  key: "rootDepth" | "fraction" | "height",
  name: RootFigure,
  surveyed: FormulaKey | null,
): Working {
  const sheet = sheetFor(figure);
  const bed = bedOf(figure);
  const value = bedRoots(bed)[name];
  const path = ownFigure(figure, name);
  if (path && surveyed) {
    sheet.step(surveyed, { [key]: fromSurvey(figure, path, value) }, value);
    return sheet.done(...titleOf(figure));
  }
  const parts = bed.plantings.map((planting, j) => {
    const kind = figure.run.survey.beds[figure.k]!.plantings[j]!.kind;
    const from = fromSurvey(figure, `${bedPath(figure)}.plantings[${j}].${name}`, planting[name]);
    const part = sheet.step(
      "partOf",
      { share: shareOf(figure, planting, j), part: { ...from, name: noteWords.of(kind, key) } },
      planting.share * planting[name],
    );
    return { ...part, name: kind };
  });
  sheet.sum(key, originWords.plantings, parts, value);
  return sheet.done(...titleOf(figure));
}

/** Share of a planting: as surveyed, or by its canopies where plants were counted. */
export function shareOf(figure: Figure, { share }: Planting, j: number): Input {
  const { kind, count } = figure.run.survey.beds[figure.k]!.plantings[j]!;
  const name = noteWords.share(kind);
  if (count)
    return { value: share, origin: { provenance: "worked-out", source: originWords.canopies }, name };
  return { ...fromSurvey(figure, `${bedPath(figure)}.plantings[${j}].share`, share), name };
}

function mulch(figure: Figure): Working {
  const sheet = sheetFor(figure);
  mulchSteps(figure, sheet);
  return sheet.done(...titleOf(figure));
}

function mulchSteps(figure: Figure, sheet: Sheet): void {
  const { grown } = figure.run.ready.beds[figure.k]!;
  const surveyed = figure.run.survey.beds[figure.k]!.mulch;
  const laid = grown.bed.mulch;
  if (!surveyed || !laid) {
    sheet.step("mulchNone", {}, grown.mulchCut);
    return;
  }
  const path = `${bedPath(figure)}.mulch`;
  const row = mulchMaterial(surveyed.material);
  const source = (value: { source: string }) => originWords.row("mulches", surveyed.material, value.source);
  const inputs = {
    mulchFull: byRule(laid.cut, source(row.cut)),
    mulchCover: fromSurvey(figure, `${path}.cover`, laid.cover),
  };
  if (laid.fullDepth_mm === 0) sheet.step("mulchAnyDepth", inputs, grown.mulchCut);
  else
    sheet.step(
      "mulch",
      {
        ...inputs,
        mulchDepth: fromSurvey(figure, `${path}.depth_mm`, laid.depth_mm),
        mulchFullDepth: byRule(laid.fullDepth_mm, source(row.fullDepth_mm)),
      },
      grown.mulchCut,
    );
}

/** What the mulch takes: opened where there is some. */
export function mulchInput(figure: Figure): Input {
  return constant(figure, "mulch", figure.run.ready.beds[figure.k]!.grown.mulchCut);
}

function totalEvaporable(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { grown } = figure.run.ready.beds[figure.k]!;
  const tewSoil = bareTew(figure, sheet);
  sheet.step("tew", { tewSoil, mulch: mulchInput(figure) }, grown.tew_mm);
  return sheet.done(...titleOf(figure));
}

function bareTew(figure: Figure, sheet: Sheet): Input {
  const { tew_mm } = bedOf(figure).soil;
  if (!hasSandAndClay(figure)) return soilFigure(figure, "tew_mm", tew_mm, sheet);
  const { soil } = bedOf(figure);
  return sheet.step(
    "tewSandClay",
    {
      fieldCapacity: constant(figure, "field-capacity", soil.fieldCapacity),
      wiltingPoint: constant(figure, "wilting-point", soil.wiltingPoint),
    },
    tew_mm,
  );
}

function readilyEvaporable(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const { grown } = figure.run.ready.beds[figure.k]!;
  const { rew_mm, tew_mm } = grown.bed.soil;
  const full = rewBeforeTew(figure) ?? rew_mm;
  const listed = soilFigure(figure, "rew_mm", full, sheet);
  const rewSoil =
    full > tew_mm
      ? sheet.step("rewHeld", { rewSoil: listed, tewSoil: bareTew(figure, sheet) }, rew_mm)
      : listed;
  const tew = constant(figure, "tew", grown.tew_mm);
  sheet.step("rew", { tew, rewSoil, mulch: mulchInput(figure) }, grown.rew_mm);
  return sheet.done(...titleOf(figure));
}

/** REW before it is held to TEW. */
function rewBeforeTew(figure: Figure): number | null {
  const soil = soilOf(figure);
  if (soil?.rew_mm !== undefined) return soil.rew_mm;
  if (hasSandAndClay(figure)) return soilRow(textureClass(soil!.sand_pct!, soil!.clay_pct!)).rew_mm.middle;
  return soilRow(soil?.texture ?? assumedTexture(figure)).rew_mm.middle;
}
