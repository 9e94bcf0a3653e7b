/**
 * The demo's invented school as a walk would find it: for each field of its survey the readings, as written on
 * field sheets, from which its figure comes. Readings carry more places than a tape has, so that the figures come
 * back.
 */
export type SheetRow = readonly [at: string, how: string, readings: readonly number[]];

const low = [0, 1];
const veryLow = [0, 0];
const moderate = [2, 1];
const high = [3, 3];

const areas: SheetRow[] = [
  ["beds[0].area_m2", "oval", [56.4381, 30]],
  ["beds[1].area_m2", "four-sides", [15, 12, 15, 12, 19.209373]],
  ["beds[2].area_m2", "raised-beds", [8, 3, 2, 0.5]],
  ["beds[3].area_m2", "rectangle 1,2", [16, 4.1, 3.9]],
  ["beds[3].area_m2", "paced rectangle", [20, 25, 20, 5]],
  ["beds[4].area_m2", "circle", [6.77028]],
  ["beds[5].area_m2", "path 1,3", [33.33333, 1.1, 1.2, 1.3]],
  ["beds[6].area_m2", "triangle", [10, 15, 18.0277564]],
  ["beds[7].area_m2", "l-shape", [6, 5, 4, 2]],
  ["beds[8].area_m2", "offsets", [1, 5, 4, 5, 7, 8, 8]],
];

const plants: SheetRow[] = [
  ["beds[0].plantings[0].thirst", "thirst-key", moderate],
  ["beds[1].plantings[0].thirst", "thirst-key", low],
  ["beds[2].plantings[0].thirst", "thirst-key", high],
  ["beds[2].plantings[1].thirst", "thirst-key", moderate],
  ["beds[2].plantings[0].share", "transect-points", [16, 4]],
  ["beds[2].plantings[1].share", "transect-points", [16, 4]],
  ["beds[3].plantings[0].thirst", "thirst-key", moderate],
  ["beds[3].plantings[1].thirst", "thirst-key", high],
  ["beds[3].plantings[0].share", "transect-stretches", [0, 4, 1, 4, 8, 2, 8, 10, 1]],
  ["beds[3].plantings[1].share", "transect-stretches", [0, 4, 1, 4, 8, 2, 8, 10, 1]],
  ["beds[4].plantings[0].thirst", "thirst-key", moderate],
  ["beds[4].plantings[1].thirst", "thirst-key", low],
  ["beds[4].plantings[0].share", "transect-points", [21, 9]],
  ["beds[4].plantings[1].share", "transect-points", [21, 9]],
  ["beds[5].plantings[0].thirst", "thirst-key", moderate],
  ["beds[6].plantings[0].thirst", "thirst-key", moderate],
  ["beds[7].plantings[0].thirst", "thirst-key", low],
  ["beds[7].plantings[1].thirst", "thirst-key", moderate],
  ["beds[7].plantings[0].share", "transect-points", [12, 8]],
  ["beds[7].plantings[1].share", "transect-points", [12, 8]],
  ["beds[8].plantings[0].thirst", "thirst-key", veryLow],
  ["beds[8].plantings[1].thirst", "thirst-key", low],
  ["beds[8].plantings[0].share", "transect-points", [20, 20]],
  ["beds[8].plantings[1].share", "transect-points", [20, 20]],
];

const cover: SheetRow[] = [
  ["beds[0].leafCover", "leaf-points", [38, 40]],
  ["beds[1].leafCover", "leaf-points 2,2", [16, 18, 20, 20]],
  ["beds[2].leafCover", "leaf-chart", [0.6]],
  ["beds[3].leafCover", "leaf-chart 2", [0.7, 0.8]],
  ["beds[4].leafCover", "leaf-points", [22, 40]],
  ["beds[5].leafCover", "leaf-chart", [0.9]],
  ["beds[5].leafCover", "leaf-chart", [0.9]],
  ["beds[5].leafCover", "leaf-chart", [0.7]],
  ["beds[6].leafCover", "leaf-chart", [0.4]],
  ["beds[7].leafCover", "leaf-points", [24, 30]],
  ["beds[8].leafCover", "leaf-chart 3", [0.6, 0.7, 0.8]],
  ["beds[2].mulch.cover", "mulch-points", [21, 30]],
  ["beds[2].mulch.depth_mm", "mulch-depth 5", [50, 70, 60, 55, 65]],
  ["beds[4].mulch.cover", "mulch-chart", [0.8]],
  ["beds[4].mulch.depth_mm", "mulch-depth 3", [45, 50, 55]],
  ["beds[5].mulch.cover", "mulch-chart", [0.5]],
  ["beds[5].mulch.depth_mm", "mulch-depth 4", [20, 30, 40, 30]],
  ["beds[6].mulch.cover", "mulch-points", [36, 40]],
  ["beds[6].mulch.depth_mm", "mulch-depth 2", [70, 80]],
  ["beds[8].mulch.cover", "mulch-points", [18, 30]],
  ["beds[8].mulch.depth_mm", "mulch-depth", [50]],
];

const soil: SheetRow[] = [
  ["beds[0].soil.texture", "soil-feel", [1, 1, 0]],
  ["beds[0].soil.slope_pct", "slope", [0.2, 20]],
  ["beds[1].soil.texture", "soil-feel", [1, 1, 2]],
  ["beds[2].soil.texture", "raised-beds", [8, 3, 2, 0.5]],
  ["beds[3].soil.sand_pct", "soil-jar", [30, 36, 34]],
  ["beds[3].soil.clay_pct", "soil-jar", [30, 36, 34]],
  ["beds[3].soil.slope_pct", "slope", [0.2, 10]],
  ["beds[4].soil.texture", "soil-feel", [1, 0]],
  ["beds[5].soil.texture", "soil-feel", [1, 1, 1, 1]],
  ["beds[6].soil.texture", "soil-feel", [1, 2, 2]],
  ["beds[6].soil.slope_pct", "slope", [0.6, 10]],
  ["beds[7].soil.texture", "soil-feel", [1, 1, 2]],
  ["beds[8].soil.texture", "soil-feel", [1, 1, 0]],
  ["beds[8].soil.slope_pct", "slope", [0.9, 5]],
];

const shade: SheetRow[] = [
  ["beds[1].obstructions", "skyline-tilt", [0, 100, 160, 48, 200, 260, 42]],
  ["beds[3].obstructions", "skyline-tilt", [15, 285, 45, 35]],
  ["beds[7].obstructions", "skyline-heights", [0, 90, 270, 7.8128563, 10]],
];

const water: SheetRow[] = [
  ["beds[0].watering.flow_L_min", "zone-meter", [1000, 0.001, 812, 812.75, 5]],
  [
    "beds[0].watering.distributionUniformity",
    "catch-cans",
    [1, 20, 100, ...Array(15).fill(57), ...Array(5).fill(29)],
  ],
  ["beds[1].watering.flow_L_min", "jug 1,3", [9, 29, 30, 31]],
  ["beds[2].watering.flow_L_min", "jug", [1, 8]],
  ["beds[3].watering.flow_L_min", "zone-meter-two", [1000, 0.001, 7, 7.11, 5, 7.11, 7.29, 5]],
  ["beds[4].watering.flow_L_min", "jug 1,3", [10, 42.8, 42.9, 42.8714286]],
  ["beds[5].watering.flow_L_min", "jug", [7, 30]],
  ["beds[6].watering.flow_L_min", "jug", [2, 15]],
  ["beds[7].watering.flow_L_min", "jug", [9, 60]],
  ["taps[0].flow_L_min", "zone-meter", [1000, 0.001, 812, 812.75, 5]],
  ["taps[1].flow_L_min", "jug", [7, 30]],
  ["taps[2].flowAt", "gravity-hose", [4500, 1.5, 7, 30, 1500, 0.5, 4, 30]],
  ["leaks[0].litresPerDay", "leak-jug", [1, 454.7368421]],
];

/** Beds with a habit, and the week that was logged: minutes from Monday. */
const weeks: [number, readonly number[]][] = [
  [0, [90, 90, 90, 90, 90, 90, 0]],
  [1, [0, 70, 0, 0, 50, 0, 0]],
  [2, [30, 0, 30, 0, 30, 0, 30]],
  [3, [20, 0, 30, 0, 25, 0, 0]],
  [4, [0, 0, 8, 0, 0, 0, 0]],
  [6, [45, 0, 0, 45, 0, 0, 0]],
];

const habits = weeks.flatMap(([bed, week]): SheetRow[] => [
  [`beds[${bed}].watering.habit.minutes`, "habit-week", week],
  [`beds[${bed}].watering.habit.days`, "habit-week", week],
]);

const tanks: SheetRow[] = [
  ["roofs[0].area_m2", "roof-pitch", [20, 24.2487113, 30]],
  ["roofs[0].firstFlush_mm", "first-flush", [300, 2.9708923, 420]],
  ["roofs[1].area_m2", "roof-rise", [26, 12.5, 7.5]],
  ["roofs[1].firstFlush_mm", "first-flush", [300, 1.8391238, 260]],
  ["roofs[2].area_m2", "rectangle + rectangle", [25, 18, 10, 6]],
  ["tanks[0].capacity_L", "tank-upright", [3.5, 2.28663369]],
  ["tanks[0].level_L", "tank-upright", [3.5, 1.71497527]],
  ["tanks[0].unusable_L", "tank-upright", [3.5, 0.0935441]],
  ["tanks[1].capacity_L", "tank-box", [2, 1.25, 2]],
  ["tanks[1].level_L", "tank-box", [2, 1.25, 1.68]],
  ["tanks[1].unusable_L", "tank-box", [2, 1.25, 0.1]],
  ["draws[0].litresPerDay", "cistern", [325, 200, 100, 100]],
];

export const sheetRows: readonly SheetRow[] = [
  ...areas,
  ...plants,
  ...cover,
  ...soil,
  ...shade,
  ...water,
  ...habits,
  ...tanks,
];
