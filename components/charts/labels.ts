/** Words at the lines: where a label can stand without covering what it names or another label. */

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface Callout {
  width: number;
  height: number;
  /** What the label speaks of. */
  target: { x: number; y: number };
}

export interface PlacedCallout extends Box {
  /** The leader's ends: at the label and at the thing. Null where the label stands at the thing itself. */
  leader: { x1: number; y1: number; x2: number; y2: number } | null;
  /** Share of the label that lies over something drawn or written; 0 where it is clear. */
  covers: number;
}

/** Area that two boxes share. */
export function overlap(a: Box, b: Box): number {
  const w = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const h = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return w > 0 && h > 0 ? w * h : 0;
}

const clamp = (x: number, low: number, high: number) => Math.min(Math.max(x, low), high);

function padded(box: Box, pad: number): Box {
  return { x: box.x - pad, y: box.y - pad, width: box.width + 2 * pad, height: box.height + 2 * pad };
}

/** From the middle of a label's near edge to the thing: looks drawn by hand, never along the text. */
function leaderOf(box: Box, target: { x: number; y: number }): PlacedCallout["leader"] {
  const x1 = clamp(target.x, box.x + 4, box.x + box.width - 4);
  const beside = target.y >= box.y && target.y <= box.y + box.height;
  const y1 =
    target.y > box.y + box.height ? box.y + box.height : target.y < box.y ? box.y : box.y + box.height / 2;
  const from = beside
    ? { x: target.x < box.x ? box.x - 3 : box.x + box.width + 3, y: box.y + box.height / 2 }
    : { x: x1, y: y1 };
  if (Math.hypot(from.x - target.x, from.y - target.y) < 7) return null;
  return { x1: from.x, y1: from.y, x2: target.x, y2: target.y };
}

interface Place {
  x: number;
  y: number;
  /** From the label, standing here, to what it speaks of. */
  away: number;
}

/** Every place within the bounds where a label may stand, nearest to its target first. */
function placesFor({ width, height, target }: Callout, bounds: Box): Place[] {
  const right = Math.max(bounds.x, bounds.x + bounds.width - width);
  const bottom = Math.max(bounds.y, bounds.y + bounds.height - height);
  const places: Place[] = [];
  for (let y = bounds.y; y <= bottom; y += 6)
    for (let x = bounds.x; x <= right; x += 8) {
      const dx = Math.max(0, x - target.x, target.x - x - width);
      const dy = Math.max(0, y - target.y, target.y - y - height);
      places.push({ x, y, away: Math.hypot(dx, dy) });
    }
  return places.sort((one, other) => one.away - other.away);
}

/** What a label costs at a place: distance, and far more what it covers; given up once it costs as much as `most`. */
function costAt(
  near: Box,
  away: number,
  placed: readonly Box[],
  drawn: readonly Box[],
  most: number,
): number {
  let cost = away;
  for (const other of placed) {
    cost += overlap(near, other) * 1000;
    if (cost >= most) return cost;
  }
  for (const other of drawn) {
    cost += overlap(near, other) * 12;
    if (cost >= most) return cost;
  }
  return cost;
}

/**
 * Places each label in turn where it covers least and stands nearest: first clear of other labels, then of
 * what is drawn, then close to its target.
 */
export function placeCallouts(
  callouts: readonly Callout[],
  drawn: readonly Box[],
  bounds: Box,
): PlacedCallout[] {
  const placed: PlacedCallout[] = [];
  for (const callout of callouts) {
    const { width, height, target } = callout;
    let box: Box = { x: bounds.x, y: bounds.y, width, height };
    let least = Number.POSITIVE_INFINITY;
    for (const { x, y, away } of placesFor(callout, bounds)) {
      // the rest stand farther off than this one costs in all
      if (away >= least) break;
      const here = { x, y, width, height };
      const cost = costAt(padded(here, 4), away, placed, drawn, least);
      if (cost < least) [box, least] = [here, cost];
    }
    const covered = [...placed, ...drawn].reduce((sum, other) => sum + overlap(box, other), 0);
    placed.push({ ...box, leader: leaderOf(box, target), covers: covered / Math.max(1, width * height) });
  }
  return placed;
}

/**
 * Labels of one row, each wanted at a place, moved apart as little as keeps their order and a gap; the row
 * stays between its ends where it fits at all.
 */
export function spreadRow(
  wanted: readonly { x: number; width: number }[],
  low: number,
  high: number,
  gap: number,
): number[] {
  const xs = wanted.map((w) => w.x);
  for (let i = 1; i < xs.length; i++) xs[i] = Math.max(xs[i]!, xs[i - 1]! + wanted[i - 1]!.width + gap);
  let limit = high;
  for (let i = xs.length - 1; i >= 0; i--) {
    xs[i] = Math.min(xs[i]!, limit - wanted[i]!.width);
    limit = xs[i]! - gap;
  }
  let floor = low;
  for (let i = 0; i < xs.length; i++) {
    xs[i] = Math.max(xs[i]!, floor);
    floor = xs[i]! + wanted[i]!.width + gap;
  }
  return xs;
}
