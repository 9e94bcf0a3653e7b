/** The survey in a sentence, and what of it is not known yet. */
import { count } from "./count.ts";
import { allOf } from "./lists.ts";

interface Totals {
  beds: number;
  area: string;
  roofs: number;
  roofArea: string;
  tanks: number;
  litres: string;
}

const counted = (n: number, one: string, many: string) => `${count(n)} ${n === 1 ? one : many}`;

export const overviewWords = {
  sentence: ({ beds, area, roofs, roofArea, tanks, litres }: Totals) => {
    if (beds + roofs + tanks === 0)
      return "Nothing is surveyed yet: begin with the place, then walk from bed to bed.";
    const found = [
      ...(beds > 0 ? [`${counted(beds, "bed", "beds")} of ${area}`] : []),
      ...(roofs > 0 ? [`${counted(roofs, "roof", "roofs")} of ${roofArea}`] : []),
      ...(tanks > 0 ? [`${counted(tanks, "tank", "tanks")} for ${litres}`] : []),
    ];
    return `${allOf(found)}.`;
  },
  habit: "How they are watered today is not known:",
  flow: "Their flow was not measured:",
  cover: "Their leaf cover was not judged:",
  soil: "Their soil is not known:",
  more: (n: number) => `and ${count(n)} more`,
} as const;
