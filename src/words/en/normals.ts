/** What is said of monthly normals that stand in for a weather record, and of places looked up by name. */
import { count } from "./count.ts";

type Facts = Readonly<Record<string, unknown>>;

/** The sentence for each caution of normals that are not the site's own. */
export const normalsCautionWords: Readonly<Record<string, (facts: Facts) => string>> = {
  "normals-of-cell": ({ distance_km }) =>
    `The monthly means are of a square of land about 50 km wide whose middle is ${count(Math.round(Number(distance_km)))} km off (CRU CL 1.0, Climatic Research Unit, University of East Anglia; New, Hulme and Jones 1999). Means of a station nearby, or its record, say more.`,
  "normals-cooler": () =>
    "They are of the years 1961–1990: today is 0.5–1.2 °C warmer, and gardens are a little thirstier than worked out here.",
  "normals-rough-country": ({ relief_m, coastal }) =>
    `The land is ${roughness(Number(relief_m), coastal === true)}: there such means of rain can be 30–50% off.`,
  "normals-moved": ({ heightDifference_m }) => {
    const metres = Number(heightDifference_m);
    return `The site lies ${count(Math.abs(metres))} m ${metres > 0 ? "above" : "below"} the height that the means are of: temperatures are moved by 6.5 °C per km; rain is left as it is.`;
  },
};

function roughness(relief_m: number, coastal: boolean): string {
  const steep = `steep (heights differ by ${count(relief_m)} m from one square to the next)`;
  if (!coastal) return steep;
  return relief_m >= 300 ? `by the sea and ${steep}` : "by the sea";
}

/** The sentence of a caution of normals. */
export function normalsCaution(caution: { code: string }): string {
  return normalsCautionWords[caution.code]!(caution as unknown as Facts);
}

/** The sentence for each fault of a survey that has no weather to be worked on. */
export const normalsFaultWords: Readonly<Record<string, (facts: Facts) => string>> = {
  "normals-wanted": () =>
    "Without a weather record the site needs its monthly normals: rain_mm and rainDays, and tmin_c and tmax_c or et0_mm.",
  "normals-at-sea": ({ latitude, longitude, farthest_km }) =>
    `No land lies within ${count(Number(farthest_km))} km of latitude ${String(latitude)}, longitude ${String(longitude)}: there are no monthly means for it. Check the signs (south and west are negative), or give the site's own normals.`,
};

/** Who made what places and normals come from. */
export const placeCredits = {
  normals:
    "Monthly means: CRU CL 1.0, Climatic Research Unit, University of East Anglia (New, Hulme and Jones 1999). Heights: ETOPO5, NOAA.",
  places: "Place names: GeoNames (geonames.org), CC BY 4.0.",
} as const;

/** What is said of guesses about a place. */
export const placeGuesses = {
  elevation: "The mean height of the land about 50 km round; put in the site's own where it is known.",
  coastal: "A guess from the map: the sea reaches this square of land or one beside it.",
  inland: "A guess from the map: no sea within this square of land or one beside it.",
  timeZone: "The zone that the map gives; change it where another is kept.",
} as const;

/** What is wrong with what a look-up was asked. */
export const placeQuery = {
  nameWanted: "A place name must have 2 to 100 letters.",
  number: (name: string, from: number, to: number, found: string | null) =>
    `${name} must be a number between ${count(from)} and ${count(to)}. ${found === null ? "It is not there." : `You entered "${found.slice(0, 40)}".`}`,
  refused: (faults: number) =>
    faults === 1
      ? "One thing in the address keeps this from being answered."
      : `${count(faults)} things in the address keep this from being answered.`,
} as const;
