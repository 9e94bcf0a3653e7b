import type { Figure } from "./figure.ts";
import { elevation_deg, fist_deg, obstructionsFrom, type SkylineReading } from "./skyline.ts";
import { impossible, type Outcome, type Slot, type Way } from "./way.ts";

/** How far the compass points east of true north; below 0 west; 0 for bearings from a map. */
const declination: Slot = { name: "declination", unit: "°", signed: true };

function skyline(readings: SkylineReading[], declination_deg: number): Outcome {
  if (readings.length === 0) return impossible("no-skyline");
  const steep = readings.find(({ elevation_deg }) => elevation_deg > 90);
  if (steep) return impossible("above-overhead", { elevation_deg: steep.elevation_deg });
  const round = readings.find(({ from_deg, to_deg }) => from_deg > 360 || to_deg > 360);
  if (round) return impossible("bearing-above-360", { found: Math.max(round.from_deg, round.to_deg) });
  return {
    figures: {},
    values: { obstructions: obstructionsFrom(readings, declination_deg) },
    notes: [],
  };
}

function inGroups(flat: readonly number[], size: number): number[][] {
  return Array.from({ length: flat.length / size }, (_, i) => flat.slice(size * i, size * (i + 1)));
}

/** Fist widths at arm's length, up from the level: the person's own fist and arm first. */
const byFists: Way = {
  code: "skyline-fists",
  part: "shade",
  slots: [
    declination,
    { name: "fist", unit: "m", by: "stick" },
    { name: "arm", unit: "m", by: "stick" },
    { name: "from-to-fists", unit: "count", by: "fists", list: true, together: 3, each: ["°", "°", "count"] },
  ],
  work(read) {
    const fist = fist_deg(read.of("fist"), read.of("arm"));
    const readings = inGroups(read.raw("from-to-fists"), 3).map(([from, to, fists]) => ({
      from_deg: from!,
      to_deg: to!,
      elevation_deg: fists! * fist.figure,
    }));
    return skyline(readings, read.raw("declination")[0]!);
  },
};

const byTilt: Way = {
  code: "skyline-tilt",
  part: "shade",
  slots: [declination, { name: "from-to-tilt", unit: "°", by: "tilt", list: true, together: 3 }],
  work(read) {
    const readings = inGroups(read.raw("from-to-tilt"), 3).map(([from, to, tilt]) => ({
      from_deg: from!,
      to_deg: to!,
      elevation_deg: tilt!,
    }));
    return skyline(readings, read.raw("declination")[0]!);
  },
};

/** Height of a wall or tree and its distance from the bed's middle. */
const byHeight: Way = {
  code: "skyline-heights",
  part: "shade",
  slots: [
    declination,
    {
      name: "from-to-height-distance",
      unit: "m",
      by: "tape",
      list: true,
      together: 4,
      each: ["°", "°", "m", "m"],
    },
  ],
  work(read) {
    const groups = inGroups(read.raw("from-to-height-distance"), 4);
    if (groups.some(([, , , distance]) => distance === 0)) return impossible("nothing-along");
    const known = (figure: number): Figure => ({ figure, standardError: 0 });
    const readings = groups.map(([from, to, height, distance]) => ({
      from_deg: from!,
      to_deg: to!,
      elevation_deg: elevation_deg(known(height!), known(distance!)).figure,
    }));
    return skyline(readings, read.raw("declination")[0]!);
  },
};

export const shadeWays: readonly Way[] = [byFists, byTilt, byHeight];
