import { answerPlace } from "./route.ts";

/** A place of a site: an element with `model`, `app`, `rest` and `path`, loaded when it is first shown. */
export interface Place {
  /** As it stands in addresses and in words. */
  id: string;
  element: string;
  load(): Promise<unknown>;
  /** Where its link stands: among the places of the work, among what is kept beside it, or with what it is about. */
  linked: "first" | "beside" | "within";
  /** Whether nothing can be read there before the answer is worked out, so that the worker is fetched with it. */
  showsAnswer?: true;
}

/** The places there are, in the order of the work; one that is not built yet is not here. */
export const places: readonly Place[] = [
  {
    id: answerPlace,
    element: "gwb-answer-place",
    load: () => import("../answer/place.ts"),
    linked: "first",
    showsAnswer: true,
  },
  { id: "walk", element: "gwb-walk-place", load: () => import("../walk/place.ts"), linked: "first" },
  {
    id: "thirst",
    element: "gwb-thirst-place",
    load: () => import("../thirst/place.ts"),
    linked: "first",
    showsAnswer: true,
  },
  {
    id: "tanks",
    element: "gwb-tanks-place",
    load: () => import("../tanks/place.ts"),
    linked: "first",
    showsAnswer: true,
  },
  { id: "rounds", element: "gwb-rounds-place", load: () => import("../rounds/place.ts"), linked: "first" },
  { id: "choices", element: "gwb-choices-place", load: () => import("../choices/place.ts"), linked: "first" },
  { id: "survey", element: "gwb-survey-place", load: () => import("../editor/place.ts"), linked: "beside" },
  { id: "weather", element: "gwb-weather", load: () => import("../weather/weather.ts"), linked: "beside" },
  { id: "kept", element: "gwb-versions", load: () => import("../versions/versions.ts"), linked: "beside" },
  {
    id: "working",
    element: "gwb-working-place",
    load: () => import("../working/place.ts"),
    linked: "within",
    showsAnswer: true,
  },
];

export function placeNamed(id: string): Place | null {
  return places.find((place) => place.id === id) ?? null;
}
