import { median } from "simple-statistics";
import { describe, expect, it } from "vitest";
import { distance, folded } from "../../src/server/places/spelling.ts";
import { readPlaces, timeZoneAt } from "../../src/server/places.ts";

const search = readPlaces();
const first = (typed: string) => {
  const place = search.find(typed, 5)[0]?.place;
  return place === undefined ? null : `${place.name}, ${place.region}, ${place.countryCode}`;
};

describe("places by name", () => {
  it.each([
    ["Melbourne", "Melbourne, Victoria, AU"],
    ["london", "London, England, GB"],
    ["REYKJAVIK", "Reykjavík, Capital Region, IS"],
    ["sao paulo", "São Paulo, São Paulo, BR"],
    ["  Alice   Springs ", "Alice Springs, Northern Territory, AU"],
    ["o'fallon", "O'Fallon, Missouri, US"],
    ["winston salem", "Winston-Salem, North Carolina, US"],
  ])("finds %s", (typed, place) => {
    expect(first(typed)).toBe(place);
  });

  it.each([
    ["Melborne", "Melbourne, Victoria, AU"],
    ["Seatle", "Seattle, Washington, US"],
    ["seattel", "Seattle, Washington, US"],
    ["Lodnon", "London, England, GB"],
    ["Los Angelas", "Los Angeles, California, US"],
    ["Philadelfia", "Philadelphia, Pennsylvania, US"],
    ["new yrok", "New York City, New York, US"],
    ["Albuquerqe", "Albuquerque, New Mexico, US"],
    ["Wagga Waga", "Wagga Wagga, New South Wales, AU"],
    ["Tokio", "Tokyo, Tokyo, JP"],
  ])("forgives %s", (typed, place) => {
    expect(first(typed)).toBe(place);
  });

  it.each([
    ["san fran", "San Francisco, California, US"],
    ["ballar", "Ballarat, Victoria, AU"],
    ["edinb", "Edinburgh, Scotland, GB"],
  ])("finds while it is typed: %s", (typed, place) => {
    expect(first(typed)).toBe(place);
  });

  it.each([
    ["Portland, Maine", "Portland, Maine, US"],
    ["portland me", "Portland, Maine, US"],
    ["springfield il", "Springfield, Illinois, US"],
    ["Richmond, Victoria", "Richmond, Victoria, AU"],
    ["Paris, Texas", "Paris, Texas, US"],
    ["perth, uk", "Perth, Scotland, GB"],
    ["Dunedin New Zealand", "Dunedin, Otago, NZ"],
  ])("takes a region or country after the name: %s", (typed, place) => {
    expect(first(typed)).toBe(place);
  });

  it.each([
    ["München", "Munich, Bavaria, DE"],
    ["wien", "Vienna, Vienna, AT"],
    ["Cologne", "Köln, North Rhine-Westphalia, DE"],
    ["geneva", "Genève, Geneva, CH"],
  ])("knows what large cities are called elsewhere: %s", (typed, place) => {
    expect(first(typed)).toBe(place);
  });

  it("puts the larger of two places of one name first, each place once", () => {
    const found = search.find("Richmond", 8).map(({ place }) => place);
    const same = found.filter((place) => place.name === "Richmond");
    expect(same.length).toBeGreaterThan(3);
    const people = same.map((place) => place.population);
    expect(people).toEqual([...people].sort((a, b) => b - a));
    expect(new Set(found.map((place) => `${place.region} ${place.country} ${place.name}`)).size).toBe(8);
  });

  it("finds nothing rather than anything", () => {
    for (const typed of ["xyzzyqw", "", " ", "12345", "北京", "!!!"])
      expect(search.find(typed, 5)).toEqual([]);
  });

  it("gives coordinates that are where the place is", () => {
    const { latitude, longitude } = search.find("Melbourne", 1)[0]!.place;
    expect(Math.abs(latitude + 37.81)).toBeLessThan(0.05);
    expect(Math.abs(longitude - 144.96)).toBeLessThan(0.05);
  });

  it("answers within 50 ms", () => {
    const typed = [
      "sa",
      "san",
      "lo",
      "new york",
      "Melborne",
      "Philadelfia",
      "springfield il",
      "x",
      "saint louis",
    ];
    const times = [...typed, ...typed].map((name) => {
      const start = performance.now();
      search.find(name, 8);
      return performance.now() - start;
    });
    expect(median(times)).toBeLessThan(50);
  });
});

describe("spelling", () => {
  it("folds accents, letters with strokes and signs", () => {
    expect(folded("Łódź")).toBe("lodz");
    expect(folded("Saint-Louis-du-Ha! Ha!")).toBe("saint louis du ha ha");
    expect(folded("Straßburg")).toBe("strassburg");
    expect(folded("Tórshavn")).toBe("torshavn");
  });

  it("counts letters changed, added, dropped and swapped", () => {
    // The textbook pair of Levenshtein's distance, and Damerau's swap.
    expect(distance("kitten", "sitting").whole).toBe(3);
    expect(distance("lodnon", "london").whole).toBe(1);
    expect(distance("", "abc").whole).toBe(3);
    expect(distance("abc", "abcdef")).toEqual({ whole: 3, beginning: 0 });
  });
});

describe("time zones", () => {
  it.each([
    [-37.81, 144.96, "Australia/Melbourne"],
    [47.61, -122.33, "America/Los_Angeles"],
    [51.51, -0.13, "Europe/London"],
    [28.61, 77.21, "Asia/Kolkata"],
  ])("of %d, %d is %s", (latitude, longitude, zone) => {
    expect(timeZoneAt(latitude, longitude)).toBe(zone);
  });
});
