/** A screen and what its address says of it. */
export type Route =
  | { screen: "start" }
  | { screen: "first" }
  | { screen: "demo" }
  /** A place of a site; `rest` is what follows the place: a bed, a field. */
  | { screen: "site"; id: string; place: string; rest: string }
  | { screen: "unknown"; path: string };

/** The answer has a site's own address; every other place has a name behind it. */
export const answerPlace = "answer";

/** Reads a path such as `/site/ab12/walk/beds/oval`. */
export function readRoute(path: string): Route {
  const parts = path.split("/").filter((part) => part !== "");
  const [screen, id, place = answerPlace, ...rest] = parts;
  if (screen === undefined) return { screen: "start" };
  if ((screen === "first" || screen === "demo") && parts.length === 1) return { screen };
  const own = id === undefined ? null : decoded(id);
  if (screen === "site" && own !== null) return { screen, id: own, place, rest: rest.join("/") };
  return { screen: "unknown", path };
}

/** The path of a route; `readRoute` reads it back. */
export function writeRoute(route: Route): string {
  switch (route.screen) {
    case "start":
      return "/";
    case "first":
    case "demo":
      return `/${route.screen}`;
    case "site":
      return sitePath(route.id, route.place, route.rest);
    case "unknown":
      return route.path;
  }
}

export function sitePath(id: string, place = answerPlace, rest = ""): string {
  const own = `/site/${encodeURIComponent(id)}`;
  if (place === answerPlace) return own;
  return rest === "" ? `${own}/${place}` : `${own}/${place}/${rest}`;
}

/** The address of the field at a path of a site's survey, such as `beds[2].area_m2`. */
export function fieldPath(id: string, path: string): string {
  return sitePath(id, "survey", path === "" ? "" : `at/${encodeURIComponent(path)}`);
}

function decoded(part: string): string | null {
  try {
    return decodeURIComponent(part);
  } catch {
    return null;
  }
}
