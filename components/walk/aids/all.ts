import type { Aid } from "./aid.ts";
import { chartAid, mulchAid, photoAid, pointsAid, stretchAid, transectAid } from "./cover.ts";
import { feelAid } from "./keys.ts";
import { planAid } from "./plan.ts";
import { shapeAid } from "./shapes.ts";
import { skylineAid } from "./skyline.ts";
import { jarAid, ringAid, slopeAid } from "./soil.ts";
import { cisternAid, divertAid, roofAid, tankAid } from "./tanks.ts";
import { cansAid, dripAid, hoseAid, jugAid, meterAid } from "./water.ts";

const shapes = [
  ...["rectangle", "triangle", "circle", "ellipse", "trapezium", "l-shape", "four-sides"],
  ...["offsets", "offsets-uneven", "oval", "path", "ring", "plants", "pots", "raised-beds"],
];
const tanks = ["tank-upright", "tank-girth", "tank-box", "tank-lying", "tank-cone"];
const alike = (codes: readonly string[], aid: Aid) => Object.fromEntries(codes.map((code) => [code, aid]));

const byWay: Readonly<Record<string, Aid>> = {
  ...alike(shapes, shapeAid),
  ...alike(tanks, tankAid),
  ...alike(["roof-pitch", "roof-rise"], roofAid),
  ...alike(["leaf-chart", "mulch-chart"], chartAid),
  ...alike(["leaf-points", "mulch-points"], pointsAid),
  "leaf-photograph": photoAid,
  "mulch-depth": mulchAid,
  "transect-points": transectAid,
  "transect-stretches": stretchAid,
  "soil-feel": feelAid,
  "soil-jar": jarAid,
  "soil-ring": ringAid,
  slope: slopeAid,
  ...alike(["jug", "leak-jug", "pump"], jugAid),
  ...alike(["zone-meter", "zone-meter-two"], meterAid),
  drips: dripAid,
  "gravity-hose": hoseAid,
  "catch-cans": cansAid,
  cistern: cisternAid,
  "first-flush": divertAid,
  ...alike(["skyline-fists", "skyline-tilt", "skyline-heights"], skylineAid),
  plan: planAid,
};

/** The drawing or tool beside a way's blanks, where it has one. */
export function aidOf(way: string): Aid | undefined {
  return byWay[way];
}
