import { erbs, type Formula, f, ours, shadeOurs } from "./formula.ts";

/** Formulas of shade. */
export const shadeFormulas = {
  clearness: f("clearness", "{rs} ÷ {ra}", "sun that came through the air", erbs),
  clearnessNoSun: f("clearness", "0", "no sun above the air", ours),
  sunsetDeg: f("sunsetDeg", "{sunset} × 180 ÷ π", "radians to degrees"),
  diffuseLow: f(
    "diffuse",
    "1 − 0.2727 × {clearness} + 2.4495 × {clearness}^2 − 11.9514 × {clearness}^3 + 9.3879 × {clearness}^4",
    "sunset angle below 81.4°, clearness below 0.715",
    erbs,
  ),
  diffuseLowClear: f("diffuse", "0.143", "sunset angle below 81.4°, clearness 0.715 or more", erbs),
  diffuseHigh: f(
    "diffuse",
    "1 + 0.2832 × {clearness} − 2.5557 × {clearness}^2 + 0.8448 × {clearness}^3",
    "sunset angle 81.4° or more, clearness below 0.722",
    erbs,
  ),
  diffuseHighClear: f("diffuse", "0.175", "sunset angle 81.4° or more, clearness 0.722 or more", erbs),
  blockedMonth: f(
    "blocked",
    "{beamBehind} ÷ {beamAll}",
    "every ten minutes of the 15th with the sun up; w = sin(altitude) × 0.7^(1 ÷ sin(altitude))",
    shadeOurs,
  ),
  blockedDark: f("blocked", "{blockedBefore}", "the sun stays down: the nearest month with sun", ours),
  blockedDay: f(
    "blocked",
    "{blockedBefore} × (1 − {between}) + {blockedAfter} × {between}",
    "on a straight line from one 15th to the next",
    ours,
  ),
  skyHidden: f(
    "skyHidden",
    "({toAzimuth} − {fromAzimuth}) ÷ 360 × sin({skyline} × π ÷ 180)^2",
    "its width in the round, and its height",
    shadeOurs,
  ),
  skyView: f("skyView", "1 − {skyHidden}", "the rest of an evenly bright sky", shadeOurs),
  received: f(
    "received",
    "(1 − {diffuse}) × (1 − {blocked}) + {diffuse} × {skyView}",
    "beam past the skyline, and the part of the sky that the bed sees",
    shadeOurs,
  ),
  shade: f(
    "shade",
    "min(1, max(0, {pmShaded} ÷ {pmOpen}))",
    "Eq. 6 with the bed’s sun over Eq. 6 with all of it",
    ours,
  ),
  shadeByRadiation: f(
    "shade",
    "min(1, max(0, {received}))",
    "ET0 in proportion to radiation",
    "Hargreaves (1975): ET0 in proportion to radiation",
  ),
  bedEt0: f("bedEt0", "{et0} × {shade}", "shade takes its part off", ours),
} satisfies Record<string, Formula>;
