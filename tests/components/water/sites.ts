import { textOf } from "../../helpers/worked.ts";

/** Surveys and records that the screens of water are tried on: invented, like the demo. */

const school = () => JSON.parse(textOf("demo/school.survey.json"));

const long = "The long bed behind the old gymnasium that everybody calls the jungle, south side";

/** Sixty beds with names of eighty letters, or that run from right to left. */
export function huge() {
  const survey = school();
  const { beds } = survey;
  survey.beds = Array.from({ length: 60 }, (_, k) => {
    const bed = structuredClone(beds[k % beds.length]);
    return {
      ...bed,
      id: `${bed.id}-${k}`,
      name: k % 9 === 4 ? `حديقة الحواس الطويلة ${k}` : k % 5 === 0 ? `${long} ${k}` : `${bed.name} ${k}`,
      area_m2: bed.area_m2 * (0.4 + ((k * 7) % 11) / 5),
    };
  });
  delete survey.measures;
  delete survey.found;
  delete survey.meters;
  delete survey.readings;
  delete survey.groups;
  return survey;
}

export function noBeds() {
  const survey = school();
  for (const key of ["measures", "found", "meters", "readings", "groups"]) delete survey[key];
  return { ...survey, beds: [], tanks: [], roofs: [], draws: [], taps: [] };
}

/** A roof and a tank of no size, one tank out of use, nothing asked of any. */
export function idleTanks() {
  const survey = school();
  for (const key of ["measures", "found", "meters", "readings", "groups", "draws", "taps"])
    delete survey[key];
  survey.beds = survey.beds.filter(({ watering }: { watering: { tank?: string } }) => !watering.tank);
  for (const bed of survey.beds) delete bed.watering.tap;
  survey.tanks = [
    { id: "none", name: "A tank that is only thought of", capacity_L: 0 },
    { id: "off", name: "Old tank", capacity_L: 9000, inUse: false },
    { id: "new", name: "New tank, nothing on it yet", capacity_L: 9000 },
  ];
  survey.roofs = [{ id: "shed", name: "Shed", area_m2: 40, material: "metal", tank: "off" }];
  return survey;
}

/** Thirty years of days: the Seattle record over and over, its dates carried on. */
export function thirtyYears(): string {
  const [header = "", ...rows] = textOf("demo/seattle.csv")
    .split("\n")
    .filter((line) => line && !line.startsWith("#"));
  const out: string[] = [header];
  const first = Date.UTC(1986, 0, 1);
  const values = rows.map((row) => row.slice(row.indexOf(",") + 1));
  const days = Math.round((Date.UTC(2016, 0, 1) - first) / 86_400_000);
  for (let i = 0; i < days; i++)
    out.push(`${new Date(first + i * 86_400_000).toISOString().slice(0, 10)},${values[i % values.length]}`);
  return `${out.join("\n")}\n`;
}

export const waterSurveys = { school: school(), huge: huge(), "no-beds": noBeds(), idle: idleTanks() };
export const waterRecords = { seattle: textOf("demo/seattle.csv"), thirty: thirtyYears() };
