import type { Draw } from "../engine/grounds.ts";
import { drawByDay_L } from "../engine/tanks.ts";
import { reasonWords } from "../words/en/explain.ts";
import { drawClaim } from "./claims.ts";
import {
  type Chapters,
  calendarOf,
  dayAt,
  elsewhere,
  type Figure,
  fromSurvey,
  lasting,
  linked,
  sheetFor,
} from "./figure.ts";
import { getsSteps } from "./shares.ts";
import type { Input } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import type { Working } from "./working.ts";

/** A use of tank water beside the beds; until a tank serves it, of mains water. */
export const drawChapters: Chapters = {
  asks: { day: asks, flow: { term: "asks", series: asksByDay } },
  gets: { day: gets, flow: { term: "gets", series: (figure) => claimOf(figure)?.claim.gets_L ?? null } },
  mains: { day: mains, flow: { term: "mains", series: mainsByDay } },
};

interface Found {
  draw: Draw;
  path: string;
}

function drawOf({ run, address }: Figure): Found | null {
  const { draws, mainsDraws = [] } = run.ready.grounds;
  const draw = [...draws, ...mainsDraws].find(({ id }) => id === address.id);
  if (!draw) return null;
  const place = (run.survey.draws ?? []).findIndex(({ id }) => id === draw.id);
  const measure = (run.survey.measures ?? []).findIndex(({ addDraw }) => addDraw?.id === draw.id);
  return { draw, path: place >= 0 ? `draws[${place}]` : `measures[${measure}].addDraw` };
}

function claimOf({ book, run, address }: Figure) {
  return drawClaim(book, run, address.id);
}

function asksByDay(figure: Figure): Float64Array | null {
  const found = drawOf(figure);
  const { weather, frame } = figure.run.ready;
  return found && drawByDay_L(found.draw, weather, frame.absent);
}

function asks(figure: Figure, i: number): Working | null {
  const found = drawOf(figure);
  if (!found) return null;
  const sheet = sheetFor(figure);
  const asked_L = asksByDay(figure)![i]!;
  const { weekday, month } = calendarOf(figure);
  const { draw, path } = found;
  const isDay = draw.weekdays[weekday[i]!] && draw.months[month[i]!];
  const litresPerDay = fromSurvey(figure, `${path}.litresPerDay`, draw.litresPerDay);
  if (asked_L > 0) sheet.step("drawAsks", { litresPerDay }, asked_L);
  else
    sheet.step("drawPauses", { litresPerDay }, asked_L, isDay ? reasonWords.pauses : reasonWords.notThisDay);
  return sheet.done(...titleOf(figure));
}

function asksInput(figure: Figure, i: number): Input {
  const run = lasting(figure.address.run);
  const address = { ...figure.address, run, what: "asks", when: dayAt(figure, i) };
  return elsewhere(asksByDay(figure)![i]!, address);
}

function gets(figure: Figure, i: number): Working | null {
  const found = claimOf(figure);
  if (!found) return null;
  const sheet = sheetFor(figure);
  getsSteps(figure, i, sheet, found, asksInput(figure, i));
  return sheet.done(...titleOf(figure));
}

function mainsByDay(figure: Figure): Float64Array | null {
  const claim = claimOf(figure)?.claim;
  return claim ? claim.asks_L.map((asked, i) => asked - claim.gets_L[i]!) : asksByDay(figure);
}

function mains(figure: Figure, i: number): Working | null {
  const mains_L = mainsByDay(figure);
  if (!mains_L) return null;
  const sheet = sheetFor(figure);
  const claim = claimOf(figure)?.claim;
  const asked = asksInput(figure, i);
  if (claim) {
    const got = linked(figure, "gets", claim.gets_L[i]!, dayAt(figure, i));
    sheet.step("mainsRest", { asks: asked, gets: got }, mains_L[i]!);
  } else sheet.step("mainsAll", { asks: asked }, mains_L[i]!);
  return sheet.done(...titleOf(figure));
}
