import type { WalkPart, Way } from "./way.ts";
import { areaWays } from "./ways-areas.ts";
import { countedWays } from "./ways-counted.ts";
import { coverWays } from "./ways-cover.ts";
import { flowWays } from "./ways-flow.ts";
import { shadeWays } from "./ways-shade.ts";
import { soilWays } from "./ways-soil.ts";
import { tankWays } from "./ways-tanks.ts";
import { thirstWays } from "./ways-thirst.ts";
import { waterWays } from "./ways-water.ts";

/** Every way of measuring, in the order of the walk. */
export const ways: readonly Way[] = [
  ...areaWays,
  ...countedWays,
  ...thirstWays,
  ...coverWays,
  ...soilWays,
  ...shadeWays,
  ...flowWays,
  ...waterWays,
  ...tankWays,
];

const byCode = new Map(ways.map((way) => [way.code, way]));

export function wayOf(code: string): Way | undefined {
  return byCode.get(code);
}

export function waysOf(part: WalkPart): Way[] {
  return ways.filter((way) => way.part === part);
}
