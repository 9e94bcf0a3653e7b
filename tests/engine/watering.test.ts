import { describe, expect, test } from "vitest";
import { totalsOf } from "../../src/engine/bed-run.ts";
import { cyclesAndSoaks, flowFromJug_L_min, mostNet_mm } from "../../src/engine/watering.ts";
import { bed, record, run } from "../helpers/plain-grounds.ts";

describe("flows and run times", () => {
  // 1 L in 15 s is 4 L a minute: common practice.
  test("a jug that fills in a quarter of a minute is four of it a minute", () => {
    expect(flowFromJug_L_min(1, 15)).toBe(4);
  });

  test("water that comes no faster than the soil takes it needs no soaking", () => {
    expect(cyclesAndSoaks(20, 10, 10, 3)).toEqual({ cycles: 1, longestCycle_min: Number.POSITIVE_INFINITY });
  });

  test("cycles are enough to keep each within the longest, and no more", () => {
    for (const depth_mm of [1, 4, 4.0001, 11, 12, 30]) {
      const { cycles, longestCycle_min } = cyclesAndSoaks(depth_mm, 40, 10, 3);
      const minutes = (60 * depth_mm) / 40;
      expect(minutes / cycles).toBeLessThanOrEqual(longestCycle_min + 1e-6);
      if (cycles > 1) expect(minutes / (cycles - 1)).toBeGreaterThan(longestCycle_min);
    }
  });

  test("the most that a time limit lets through is minutes × flow × efficiency over the bed", () => {
    expect(
      mostNet_mm(bed("b", { maxMinutes: 30, flow_L_min: 10, efficiency: 0.8 }).watering, 10),
    ).toBeCloseTo(24, 12);
    expect(mostNet_mm(bed("b").watering, 10)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("a bed's day", () => {
  const first = (wettedShare: number, rain_mm: number, flow: "watered" | "dry", drip = false) => {
    const initial = { rootDepletion_mm: flow === "watered" ? 40 : 0, surfaceDepletion_mm: 12 };
    const site = { beds: [bed("b", { wettedShare, drip }, { initial, leafCover: Array(12).fill(0.3) })] };
    const { need } = run(
      site,
      record(1, () => rain_mm),
    );
    return { days: need.beds[0]!.days!, prepared: need.beds[0]!.ready.grown };
  };

  test("wets the method's share when watered without rain, the whole surface with 3 mm of rain or more", () => {
    // Ke's limit few·Kcmax shows which share it was: the surface is wet, so Kr is 1 and the limit binds.
    const limit = (share: number) => Math.min(0.7, share) * 1.2;
    expect(first(0.2, 0, "watered").days.ke[0]).toBeCloseTo(limit(0.2), 9);
    expect(first(0.2, 2.9, "watered").days.ke[0]).toBeCloseTo(limit(0.2), 9);
    const { days, prepared } = first(0.2, 3, "watered");
    const energy = 1.2 - days.kcb[0]!;
    expect(days.ke[0]).toBeCloseTo(Math.min(energy, limit(1)), 9);
    expect(prepared.mulchCut).toBe(0);
  });

  test("drip under leaves exposes less: (1 − 0.67 fc) of its share", () => {
    expect(first(0.5, 0, "watered", true).days.ke[0]).toBeCloseTo((1 - 0.67 * 0.3) * 0.5 * 1.2, 9);
  });

  test("counts the whole surface as wetted last before the first wetting", () => {
    const { days } = first(0.2, 0, "dry");
    const kr = (19 - 12) / (19 - 9);
    expect(days.ke[0]).toBeCloseTo(Math.min(kr * (1.2 - days.kcb[0]!), 0.7 * 1.2), 9);
  });

  test("surveyed states are held to what the soil can hold", () => {
    const initial = { rootDepletion_mm: 900, surfaceDepletion_mm: 900 };
    const { need } = run(
      { beds: [bed("b", { supply: "none" }, { initial })] },
      record(1, () => 0),
    );
    const [b] = need.beds;
    expect(b!.days!.rootDepletion_mm[0]).toBeLessThanOrEqual(60);
    expect(b!.days!.ks[0]).toBe(0);
    expect(b!.days!.ke[0]).toBe(0);
  });

  test("mulch cuts both the rate and the amount that a wetting can lose", () => {
    const mulch = { cut: 0.5, fullDepth_mm: 50, cover: 0.8, depth_mm: 25 };
    const { need } = run(
      { beds: [bed("b", {}, { mulch })] },
      record(30, () => 0),
    );
    const { grown } = need.beds[0]!.ready;
    expect(grown.mulchCut).toBeCloseTo(0.2, 12);
    expect([grown.tew_mm, grown.rew_mm]).toEqual([19 * 0.8, 9 * 0.8]);
    expect(Math.max(...need.beds[0]!.days!.surfaceDepletion_mm)).toBeLessThanOrEqual(19 * 0.8);
  });

  test("a month's net depths add up to the record's", () => {
    const { need } = run(
      { beds: [bed("b")] },
      record(400, () => 0),
    );
    const { netByMonth_mm, net_mm } = need.beds[0]!.need;
    expect(netByMonth_mm.reduce((sum, mm) => sum + mm, 0)).toBeCloseTo(net_mm, 9);
    expect(totalsOf(need.beds[0]!.ready.grown, new Float64Array(6), new Float64Array(400)).net_mm).toBe(0);
  });
});
