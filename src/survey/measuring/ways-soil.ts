import { soilFeelKey } from "../../tables/keys.ts";
import { jarShares, texturesWithin } from "./jar.ts";
import type { Note } from "./note.ts";
import { intakeStillFalling, ringIntake_mm_h } from "./ring.ts";
import { impossible, type Slot, type Way, worked } from "./way.ts";
import { byKey } from "./ways-thirst.ts";

const layer = (name: string): Slot => ({ name, unit: "mm", by: "ruler" });

const jar: Way = {
  code: "soil-jar",
  part: "soil",
  slots: [layer("sand"), layer("silt"), layer("clay")],
  work(read) {
    const layers = [read.of("sand"), read.of("silt"), read.of("clay")] as const;
    if (layers.every(({ figure }) => figure === 0)) return impossible("no-layers");
    const { sand_pct, silt_pct, clay_pct } = jarShares(...layers);
    const [texture, ...others] = texturesWithin(sand_pct, clay_pct);
    const notes: Note[] = [{ code: "texture-is", facts: { texture: texture! } }];
    if (others.length > 0) notes.push({ code: "texture-may-be", facts: { textures: others.join(",") } });
    return worked({ "soil.sand_pct": sand_pct, "soil.clay_pct": clay_pct, "soil.silt_pct": silt_pct }, notes);
  },
};

const feel: Way = {
  code: "soil-feel",
  part: "soil",
  slots: [{ name: "answer", unit: "code", list: true }],
  work: byKey(soilFeelKey, "soil.texture"),
};

/** A depth of water poured into a ring, and how long each fill took to go in. */
const ring: Way = {
  code: "soil-ring",
  part: "soil",
  slots: [
    { name: "depth", unit: "mm", by: "ruler" },
    { name: "fill", unit: "min", by: "clock", list: true },
  ],
  work(read) {
    const fills = read.each("fill");
    const last = fills.at(-1);
    if (!last || last.figure === 0) return impossible("no-fill");
    const notes: Note[] = [];
    if (fills.length < 2) notes.push({ code: "one-fill-only" });
    if (intakeStillFalling(read.raw("fill"))) notes.push({ code: "intake-still-falling" });
    return worked({ "soil.intake_mm_h": ringIntake_mm_h(read.of("depth"), last) }, notes);
  },
};

/** Rise over run of sloping ground. */
const slope: Way = {
  code: "slope",
  part: "soil",
  slots: [
    { name: "rise", unit: "m", by: "tape" },
    { name: "run", unit: "m", by: "tape" },
  ],
  work(read) {
    const [rise, run] = [read.of("rise"), read.of("run")];
    if (run.figure === 0) return impossible("nothing-along");
    const figure = (100 * rise.figure) / run.figure;
    const standardError = Math.hypot(
      (100 * rise.standardError) / run.figure,
      (figure * run.standardError) / run.figure,
    );
    return worked({ "soil.slope_pct": { figure, standardError } });
  },
};

export const soilWays: readonly Way[] = [jar, feel, ring, slope];
