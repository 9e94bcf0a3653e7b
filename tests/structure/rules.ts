/** What a folder of code may import. `*` at the end stands for anything that begins so. */
export interface Rule {
  /** Parts of this repository, beside the folder itself. */
  parts: readonly string[];
  /** Parts of which only types may be imported. */
  types?: readonly string[];
  packages?: readonly string[];
}

const allOfSrc = [
  "quantities",
  "units",
  "engine",
  "tables",
  "survey",
  "report",
  "files",
  "explain",
  "words",
  "data",
  "demo",
];

/** Dependencies point one way: data, tables, engine, survey and report, then the edges. */
export const rules: Readonly<Record<string, Rule>> = {
  quantities: { parts: [] },
  units: { parts: ["quantities"] },
  engine: { parts: ["quantities"], types: ["tables"] },
  tables: { parts: ["data", "quantities"] },
  survey: { parts: ["tables", "quantities"], types: ["engine"], packages: ["zod"] },
  files: {
    parts: ["survey", "units", "quantities"],
    types: ["engine"],
    packages: ["papaparse", "ical-generator"],
  },
  report: { parts: ["engine", "survey", "tables", "quantities"], packages: ["zod"] },
  explain: { parts: ["engine", "tables", "quantities", "units", "words", "report"], types: ["survey"] },
  words: { parts: ["engine", "tables", "quantities", "units"], types: ["survey", "report"] },
  cli: { parts: [...allOfSrc, "server"], packages: ["*"] },
  server: { parts: [...allOfSrc, "cli"], packages: ["*"] },
  components: { parts: allOfSrc, packages: ["lit", "lit/*", "d3-*", "@fontsource*", "vite", "idb"] },
};

/** What one file may import beyond its folder's rule, and why. */
export const exceptions: readonly { files: string; imports: string; why: string }[] = [
  { files: "src/engine/shade.ts", imports: "suncalc", why: "the sun's position, in this file alone" },
  { files: "src/engine/rounds/sun.ts", imports: "suncalc", why: "sunrise and sunset, in this file alone" },
  {
    files: "src/survey/record/",
    imports: "src/engine/weather/",
    why: "calendar days and the names of a record's columns have one home",
  },
  {
    files: "src/survey/normals/",
    imports: "src/engine/weather/",
    why: "a record made from normals stands where a record read would",
  },
  {
    files: "src/survey/measuring/",
    imports: "src/engine/",
    why: "readings become figures by the equations themselves: texture, uniformity, the sun's path, the stream of random numbers",
  },
  {
    files: "src/survey/measuring/ellipsoid.ts",
    imports: "geographiclib-geodesic",
    why: "areas on the ellipsoid, in this file alone",
  },
  {
    files: "src/survey/resolve-",
    imports: "src/engine/",
    why: "sand and clay and catch cans become figures by the equations themselves",
  },
];

/** The part of the repository that a file belongs to: a folder of src, or components, data, demo. */
export function partOf(path: string): string {
  const [top = "", second = ""] = path.split("/");
  return top === "src" ? second.replace(/\.ts$/, "") : top;
}

export function matches(pattern: string, name: string): boolean {
  return pattern.endsWith("*") ? name.startsWith(pattern.slice(0, -1)) : name === pattern;
}
