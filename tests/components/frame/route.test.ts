import { expect, test } from "vitest";
import { fieldPath, type Route, readRoute, sitePath, writeRoute } from "../../../components/frame/route.ts";

test.each<[string, Route]>([
  ["/", { screen: "start" }],
  ["/first", { screen: "first" }],
  ["/demo", { screen: "demo" }],
  ["/site/ab12", { screen: "site", id: "ab12", place: "answer", rest: "" }],
  ["/site/ab12/walk", { screen: "site", id: "ab12", place: "walk", rest: "" }],
  ["/site/ab12/walk/beds/oval", { screen: "site", id: "ab12", place: "walk", rest: "beds/oval" }],
])("%s is read and written back", (path, route) => {
  expect(readRoute(path)).toEqual(route);
  expect(writeRoute(route)).toBe(path);
});

test.each(["/nowhere", "/first/more", "/site", "/site/%zz", "/demo/x"])("%s leads nowhere", (path) => {
  expect(readRoute(path).screen).toBe("unknown");
});

test("an id of any letters keeps to its place in the path", () => {
  const path = sitePath("a/b ü", "walk", "beds");
  expect(readRoute(path)).toEqual({ screen: "site", id: "a/b ü", place: "walk", rest: "beds" });
});

test("a field of the survey has an address of its own", () => {
  const path = fieldPath("ab12", "beds[0].area_m2");
  expect(readRoute(path)).toMatchObject({ place: "survey", rest: "at/beds%5B0%5D.area_m2" });
  expect(fieldPath("ab12", "")).toBe("/site/ab12/survey");
});
