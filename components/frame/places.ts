import { answerPlace } from "./route.ts";

/** A place of a site: an element with `model`, `app`, `rest` and `path`, loaded when it is first shown. */
export interface Place {
  /** As it stands in addresses and in words. */
  id: string;
  element: string;
  load(): Promise<unknown>;
  /** Stands among what is kept with the site, not among the places of the work. */
  isAside?: boolean;
}

/** The places there are, in the order of the work; one that is not built yet is not here. */
export const places: readonly Place[] = [
  { id: answerPlace, element: "gwb-answer-place", load: () => import("../answer/place.ts") },
  { id: "walk", element: "gwb-walk-place", load: () => import("../editor/place.ts") },
  { id: "thirst", element: "gwb-answer-place", load: () => import("../answer/place.ts") },
  { id: "tanks", element: "gwb-answer-place", load: () => import("../answer/place.ts") },
  { id: "rounds", element: "gwb-rounds-place", load: () => import("../rounds/place.ts") },
  { id: "choices", element: "gwb-choices-place", load: () => import("../choices/place.ts") },
  { id: "weather", element: "gwb-weather", load: () => import("../weather/weather.ts"), isAside: true },
  { id: "kept", element: "gwb-versions", load: () => import("../versions/versions.ts"), isAside: true },
];

export function placeNamed(id: string): Place | null {
  return places.find((place) => place.id === id) ?? null;
}
