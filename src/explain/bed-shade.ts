import { penmanMonteithUnderSky_mm } from "../engine/et0.ts";
import { clearSky_MJ_m2 } from "../engine/radiation.ts";
import {
  betweenMonths,
  blockedByMonth,
  blockedShare,
  horizon,
  receivedShare,
  skylineAt_deg,
  skyView,
  sunPath,
} from "../engine/shade.ts";
import { noteWords, originWords } from "../words/en/explain.ts";
import { vapourOf, windOf } from "./air.ts";
import { bedOf, bedPath } from "./bed.ts";
import {
  type Chapters,
  calendarOf,
  constant,
  dayAt,
  type Figure,
  fromSurvey,
  here,
  linked,
  ofWeather,
  sheetFor,
} from "./figure.ts";
import { diffuseOf, netRadiation, skyDay } from "./radiation.ts";
import { amount, bare } from "./say.ts";
import type { Input } from "./sheet.ts";
import { titleOf } from "./titles.ts";
import { equation6 } from "./weather.ts";
import type { Working } from "./working.ts";

/** What a skyline takes from a bed: sky, beam, radiation and so ET0. */
export const shadeChapters: Chapters = {
  "sky-view": { fixed: skyViewOf },
  blocked: { day: blockedOfDay, month: blockedOfMonth },
  received: { day: received },
  shade: { day: shade },
  et0: {
    day: bedEt0,
    flow: { term: "bedEt0", series: ({ run, k }) => run.ready.beds[k]!.grown.et0_mm },
  },
};

export function isShaded(figure: Figure): boolean {
  return bedOf(figure).obstructions.length > 0;
}

/** The bed's ET0 of day i, as its shade leaves it. */
export function bedEt0Input(figure: Figure, i: number): Input {
  const value = figure.run.ready.beds[figure.k]!.grown.et0_mm[i]!;
  return isShaded(figure)
    ? linked(base(figure), "et0", value, dayAt(figure, i))
    : ofWeather(figure, "et0", value, i);
}

/** Shade is the same however the bed is watered. */
function base(figure: Figure): Figure {
  const { run } = figure.address;
  const lasting = run === "plan" || run === "plan-with-water" ? "plan" : "need";
  return { ...figure, address: { ...figure.address, run: lasting } };
}

function pieces(figure: Figure) {
  return horizon(bedOf(figure).obstructions);
}

/** Σ over stretches of the skyline; a stretch stands as high as the highest obstruction there. */
function skyViewOf(figure: Figure): Working {
  const sheet = sheetFor(figure);
  const stretches = pieces(figure);
  const hidden = stretches.map((piece) => {
    const origin = {
      provenance: "measured" as const,
      source: originWords.survey(`${bedPath(figure)}.obstructions`),
    };
    const name = (what: string) => noteWords.stretch(bare(piece.from_deg, "°", figure.say), what);
    const value = 1 - skyView([piece]);
    const share = sheet.step(
      "skyHidden",
      {
        fromAzimuth: { value: piece.from_deg, origin, name: name(noteWords.from) },
        toAzimuth: { value: piece.to_deg, origin, name: name(noteWords.to) },
        skyline: { value: piece.elevation_deg, origin, name: name(noteWords.height) },
      },
      value,
    );
    return { ...share, name: name(noteWords.hidden) };
  });
  const all = sheet.sum(
    "skyHidden",
    noteWords.stretches,
    hidden,
    hidden.reduce((sum, { value }) => sum + value, 0),
  );
  sheet.step("skyView", { skyHidden: all }, skyView(stretches));
  return sheet.done(...titleOf(figure));
}

function blockedMonths(figure: Figure): number[] {
  const { book, run, k } = figure;
  const { latitude_deg, longitude_deg } = run.ready.grounds.place;
  return book.once(`blocked ${run.name} ${k}`, () =>
    blockedByMonth(pieces(figure), latitude_deg, longitude_deg),
  );
}

function blockedOfMonth(figure: Figure, month: number): Working {
  const sheet = sheetFor(figure);
  const { say, run } = figure;
  const { latitude_deg, longitude_deg } = run.ready.grounds.place;
  const skyline = pieces(figure);
  const path = sunPath(latitude_deg, longitude_deg, month + 1);
  const value = blockedMonths(figure)[month]!;
  const source = originWords.sunPath(say.month(month));
  const origin = { provenance: "worked-out" as const, source };
  bedOf(figure).obstructions.forEach(({ fromAzimuth_deg, toAzimuth_deg, elevation_deg }, j) => {
    const at = `${bedPath(figure)}.obstructions[${j}]`;
    const text = noteWords.obstruction(
      amount(fromAzimuth_deg, "°", say),
      amount(toAzimuth_deg, "°", say),
      amount(elevation_deg, "°", say),
    );
    sheet.note(at, text, fromSurvey(figure, at, 0).origin!);
  });
  if (blockedShare(skyline, path) === null) {
    sheet.step("blockedDark", { blockedBefore: { value, origin } }, value);
    return sheet.done(...titleOf(figure));
  }
  let behind = 0;
  let all = 0;
  path.forEach(({ azimuth_deg, altitude_deg, beam }, place) => {
    const isBehind = altitude_deg < skylineAt_deg(skyline, azimuth_deg);
    all += beam;
    if (isBehind) behind += beam;
    if (place % 6 !== 0) return;
    const name = noteWords.instant(amount(azimuth_deg, "°", say), amount(altitude_deg, "°", say));
    sheet.note(name, noteWords.instantText(bare(beam, "share", say), isBehind), origin);
  });
  sheet.step(
    "blockedMonth",
    { beamBehind: { value: behind, origin }, beamAll: { value: all, origin } },
    value,
  );
  return sheet.done(...titleOf(figure));
}

function blockedOn(figure: Figure, i: number) {
  const { year, month, dayOfMonth } = calendarOf(figure);
  const between = betweenMonths(year[i]!, month[i]!, dayOfMonth[i]!);
  const blocked = blockedMonths(figure);
  const before = blocked[between.before]!;
  const after = blocked[between.after]!;
  return {
    ...between,
    values: [before, after] as const,
    value: before * (1 - between.share) + after * between.share,
  };
}

function blockedOfDay(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { before, after, share, values, value } = blockedOn(figure, i);
  const of = (month: number, b: number) => constant(figure, "blocked", b, { kind: "calendar-month", month });
  sheet.step(
    "blockedDay",
    {
      blockedBefore: of(before, values[0]),
      blockedAfter: of(after, values[1]),
      between: { value: share, origin: { provenance: "measured", source: originWords.calendar } },
    },
    value,
  );
  return sheet.done(...titleOf(figure));
}

function receivedOn(figure: Figure, i: number): number {
  return receivedShare(diffuseOf(figure, i), blockedOn(figure, i).value, skyView(pieces(figure)));
}

function received(figure: Figure, i: number): Working | null {
  if (!isShaded(figure)) return null;
  const sheet = sheetFor(figure);
  sheet.step(
    "received",
    {
      diffuse: ofWeather(figure, "diffuse", diffuseOf(figure, i), i),
      blocked: linked(figure, "blocked", blockedOn(figure, i).value, dayAt(figure, i)),
      skyView: constant(figure, "sky-view", skyView(pieces(figure))),
    },
    receivedOn(figure, i),
  );
  return sheet.done(...titleOf(figure));
}

/** Eq. 6 of day i with a share of its short-wave, by the engine's own function. */
function underSky(figure: Figure, i: number, share: number): number {
  const { elevation_m } = figure.run.ready.grounds.place;
  const { tmin_c, tmax_c } = figure.book.worked.filled.columns;
  const { rs, ra } = skyDay(figure, i);
  return penmanMonteithUnderSky_mm(
    {
      tmin_c: tmin_c![i]!,
      tmax_c: tmax_c![i]!,
      vapour_kPa: vapourOf(figure, i),
      wind_ms: windOf(figure, i).value,
      elevation_m,
    },
    { solar_MJ_m2: rs, clearSky_MJ_m2: clearSky_MJ_m2(elevation_m, ra) },
    share,
  );
}

function shade(figure: Figure, i: number): Working | null {
  if (!isShaded(figure)) return null;
  const sheet = sheetFor(figure);
  const share = receivedOn(figure, i);
  const part = linked(figure, "received", share, dayAt(figure, i));
  const hasSky = figure.run.ready.weather.sky?.penmanMonteith_mm;
  const open_mm = hasSky ? underSky(figure, i, 1) : 0;
  if (open_mm <= 0) {
    sheet.step("shadeByRadiation", { received: part }, Math.min(1, Math.max(0, share)));
    return sheet.done(...titleOf(figure));
  }
  const { rns, rnl, rn } = netRadiation(figure, i, share);
  const rs = ofWeather(figure, "rs", skyDay(figure, i).rs, i);
  const kept = sheet.step("rnsShaded", { received: part, rs }, rns);
  const net = sheet.step("rn", { rns: kept, rnl: ofWeather(figure, "rnl", rnl, i) }, rn);
  const shaded_mm = equation6(figure, i, sheet, net);
  sheet.step(
    "shade",
    { pmShaded: here(shaded_mm), pmOpen: ofWeather(figure, "et0-open", open_mm, i) },
    Math.min(1, Math.max(0, shaded_mm / open_mm)),
  );
  return sheet.done(...titleOf(figure));
}

function shadeFactor(figure: Figure, i: number): number {
  const open_mm = figure.run.ready.weather.sky?.penmanMonteith_mm ? underSky(figure, i, 1) : 0;
  const share = receivedOn(figure, i);
  return Math.min(1, Math.max(0, open_mm > 0 ? underSky(figure, i, share) / open_mm : share));
}

function bedEt0(figure: Figure, i: number): Working {
  const sheet = sheetFor(figure);
  const { weather, beds } = figure.run.ready;
  const et0 = ofWeather(figure, "et0", weather.et0_mm[i]!, i);
  const factor = isShaded(figure)
    ? linked(figure, "shade", shadeFactor(figure, i), dayAt(figure, i))
    : { value: 1, origin: { provenance: "measured" as const, source: originWords.openSky } };
  sheet.step("bedEt0", { et0, shade: factor }, beds[figure.k]!.grown.et0_mm[i]!);
  return sheet.done(...titleOf(figure));
}
