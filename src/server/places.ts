import tzLookup from "@photostructure/tz-lookup";
import { readGazetteer } from "./places/gazetteer.ts";
import { type PlaceSearch, placeSearch } from "./places/search.ts";

let kept: PlaceSearch | null = null;

/** Places by name: the list is read and made ready on the first call, which takes a second or so. */
export function readPlaces(): PlaceSearch {
  kept ??= placeSearch(readGazetteer());
  return kept;
}

/**
 * Time zone that the map gives for a place, by its IANA name: a guess from coarse outlines.
 * @param latitude degrees, −90 to 90
 * @param longitude degrees, −180 to 180
 */
export function timeZoneAt(latitude: number, longitude: number): string {
  return tzLookup(latitude, longitude);
}
