import { explained, weatherUnknown, widthOf, winsOver } from "../../engine/spread.ts";
import { type Drawn, gapBetween } from "../../report/spread.ts";
import { choicesParts as parts, choicesTitles as titles } from "../../words/en/choices-workings.ts";
import { unknownName } from "../../words/en/unknowns.ts";
import type { Part } from "../sheet.ts";
import type { Working } from "../working.ts";
import { type Asked, ofRun, type SetOf, sheetOf } from "./book.ts";
import { isPoint, pointSteps } from "./points.ts";
import { setName } from "./sets.ts";

const pooled = { "give-up": "giveUp", need: "need", plan: "planned" } as const;

/** `choices/sure/…`: what the draws made so far say. */
export function sureWorking(asked: Asked): Working | null {
  const { drawn } = asked.book;
  if (!drawn || drawn.figures.giveUp.length === 0) return null;
  const [what, ...rest] = asked.rest;
  const { figures } = drawn;
  if (what !== undefined && Object.hasOwn(pooled, what))
    return pooledPoint(asked, what as keyof typeof pooled, rest[0], figures);
  if (what === "rival") return rivalPoint(asked, Number(rest[0]), rest[1], rest[2]);
  if (what === "chance") return chanceOf(asked, Number(rest[0]), Number(rest[1]));
  if (what === "unknown") return unknownOf(asked, rest.join("/"), figures.giveUp, titles.unknown);
  if (what === "choice" && figures.saved.length > 1)
    return unknownOf(asked, rest.join("/"), gapBetween(figures.saved, figures.worth), titles.unknownOfChoice);
  return null;
}

function drawPart(asked: Asked, value: number, draw: number, year: string | null): Part {
  const name = parts.draw(asked.say.number(draw + 1), year);
  const seed = String(asked.book.drawn!.figures.seed);
  return { ...ofRun(value, parts.drawSource(seed), name), name };
}

/** All draws and years together: which year it will be is unknown too. */
function pooledPoint(
  asked: Asked,
  what: keyof typeof pooled,
  point: string | undefined,
  figures: Drawn,
): Working | null {
  if (!isPoint(point)) return null;
  const { years } = asked.book.context.worked.ready.frame;
  const all = figures[pooled[what]].flatMap((byYear, draw) =>
    byYear.map((kL, k) => drawPart(asked, kL, draw, years[k] === undefined ? null : String(years[k]))),
  );
  const sheet = sheetOf(asked);
  pointSteps(sheet, point, all, false);
  return sheet.done(asked.at, titles.pointOf(titles.sure[what], titles.point[point]));
}

function rivalName(asked: Asked, k: number): string {
  const { context, drawn } = asked.book;
  const of: SetOf = { context, set: drawn!.rivals[k]!, by: "need" };
  return setName(of);
}

function rivalPoint(
  asked: Asked,
  k: number,
  what: string | undefined,
  point: string | undefined,
): Working | null {
  const { figures } = asked.book.drawn!;
  const isMoney = what === "worth";
  const values = isMoney ? figures.worth[k] : what === "saved" ? figures.saved[k] : null;
  if (!values || !isPoint(point)) return null;
  const sheet = sheetOf(asked);
  pointSteps(
    sheet,
    point,
    values.map((value, draw) => drawPart(asked, value, draw, null)),
    isMoney,
  );
  const title = (isMoney ? titles.sure.worth : titles.sure.saved)(rivalName(asked, k));
  return sheet.done(asked.at, titles.pointOf(title, titles.point[point]));
}

/** By present value where both have one, else by water. */
function chanceOf(asked: Asked, a: number, b: number): Working | null {
  const { saved, worth } = asked.book.drawn!.figures;
  const [one, other] = worth[a] && worth[b] ? [worth[a], worth[b]] : [saved[a], saved[b]];
  if (!one || !other) return null;
  const { wins, ties } = winsOver(one, other);
  const sheet = sheetOf(asked);
  const counted = (value: number) => ofRun(value, parts.countDraws);
  sheet.step(
    "chance",
    { wins: counted(wins), ties: counted(ties), draws: counted(one.length) },
    (wins + ties / 2) / one.length,
  );
  return sheet.done(asked.at, titles.chance(rivalName(asked, a), rivalName(asked, b)));
}

function unknownOf(
  asked: Asked,
  at: string,
  byDraw: readonly (readonly number[])[],
  title: (name: string) => string,
): Working | null {
  const { book } = asked;
  const { within, between, means } = widthOf({ byDraw });
  const place = /^beds\[(\d+)\]/.exec(at)?.[1];
  const bed = place === undefined ? null : (book.context.worked.survey.beds[Number(place)]?.name ?? null);
  const sheet = sheetOf(asked);
  const ofDraws = { within: ofRun(within, parts.ofDraws), betweenDraws: ofRun(between, parts.ofDraws) };
  const all = within + between;
  const places = book.drawn!.figures.places.get(at);
  if (all <= 0 || (at !== weatherUnknown && !places)) return null;
  if (at === weatherUnknown) sheet.step("widthOfYears", ofDraws, within / all);
  else {
    const squared = explained(places!, means);
    sheet.step(
      "widthShare",
      { ...ofDraws, explained: ofRun(squared, parts.ofDraws) },
      (between / all) * squared,
    );
  }
  return sheet.done(asked.at, title(unknownName(at, bed)));
}
