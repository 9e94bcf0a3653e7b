import type { Figure } from "./figure.ts";
import type { Note } from "./note.ts";
import { impossible, type Read, type Slot, type Way, worked } from "./way.ts";
import { wilson } from "./wilson.ts";

const hits: Slot = { name: "hits", unit: "count" };
const points: Slot = { name: "points", unit: "count" };

/** Points of a tape or a string grid that lie on leaves (or on mulch), of all points. */
function byPoints(code: string, field: string): Way {
  return {
    code,
    part: "cover",
    slots: [hits, points],
    work(read) {
      const [found, all] = [sum(read, "hits"), sum(read, "points")];
      if (all === 0) return impossible("no-points");
      if (found > all) return impossible("more-hits-than-points", { hits: found, points: all });
      const { share, standardError, low, high } = wilson(found, all);
      const notes: Note[] = [{ code: "share-between", facts: { low, high } }];
      if (all < 30) notes.push({ code: "few-points", facts: { found: all, wanted: 30 } });
      return worked({ [field]: { figure: share, standardError } }, notes);
    },
  };
}

function sum(read: Read, slot: string): number {
  return read.raw(slot).reduce((total, value) => total + value, 0);
}

/** Judged against the drawn chart, at one spot or several. */
function byChart(code: string, field: string): Way {
  return {
    code,
    part: "cover",
    slots: [{ name: "judged", unit: "share", by: "chart" }],
    work(read) {
      const cover = read.of("judged");
      if (read.raw("judged").some((share) => share > 1)) return impossible("share-above-one");
      return worked({ [field]: cover });
    },
  };
}

/** Standard error of a green count: what it misses and takes for leaves, not the number of pixels. Ours. */
const photographError = 0.12;

const byPhotograph: Way = {
  code: "leaf-photograph",
  part: "cover",
  slots: [
    { name: "green-pixels", unit: "count" },
    { name: "all-pixels", unit: "count" },
  ],
  work(read) {
    const [green, all] = [sum(read, "green-pixels"), sum(read, "all-pixels")];
    if (all === 0 || green > all) return impossible("no-points");
    const cover: Figure = { figure: green / all, standardError: photographError };
    return worked({ leafCover: cover }, [{ code: "photograph-is-a-help" }]);
  },
};

const mulchDepth: Way = {
  code: "mulch-depth",
  part: "cover",
  slots: [{ name: "depth", unit: "mm", by: "probe" }],
  work(read) {
    const depths = read.raw("depth");
    const notes =
      depths.length < 5 ? [{ code: "few-spots", facts: { found: depths.length, wanted: 5 } }] : [];
    return worked({ "mulch.depth_mm": read.of("depth") }, notes);
  },
};

export const coverWays: readonly Way[] = [
  byChart("leaf-chart", "leafCover"),
  byPoints("leaf-points", "leafCover"),
  byPhotograph,
  byChart("mulch-chart", "mulch.cover"),
  byPoints("mulch-points", "mulch.cover"),
  mulchDepth,
];
