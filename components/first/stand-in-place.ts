import type { FirstPlace } from "../../src/survey/first/entries.ts";
import { firstWords } from "../../src/words/en/first.ts";
import { findPlaces } from "../frame/lookups.ts";

/** The place that serves until one is said, and the sentence that says so. */
export interface StandIn {
  place: FirstPlace;
  words: string;
}

/** Where clocks are set by: the Royal Observatory. */
const greenwich: FirstPlace = { name: "Greenwich", latitude: 51.48, longitude: 0 };

/** The town that the clock's time zone is named for. @throws NotReached */
export async function standInPlace(): Promise<StandIn> {
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  const town = zone.split("/").at(-1)?.replaceAll("_", " ") ?? "";
  const none: StandIn = { place: greenwich, words: firstWords.placeUnknownZone };
  if (!zone.includes("/") || zone.startsWith("Etc/")) return none;
  const found = (await findPlaces(town)).find((place) => place.timeZone === zone);
  if (!found) return none;
  const { name, latitude, longitude } = found;
  return { place: { name, latitude, longitude }, words: firstWords.placeStandsIn(zone) };
}
