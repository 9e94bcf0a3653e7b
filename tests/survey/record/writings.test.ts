import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readRecord } from "../../../src/files/record.ts";
import { type Day, imported, seattle, seattleFile, two, twoPlacesFile, worst, written } from "./seattle.ts";

const ofSeattle = written("date,rain_mm,tmin_c,tmax_c,wind_ms", (day) =>
  [day.iso, ...[day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].map((value) => value.toFixed(1))].join(","),
);
const comma = (value: number) => value.toFixed(1).replace(".", ",");
const fahrenheit = (value: number) => ((value * 9) / 5 + 32).toFixed(1);
const inches = (value: number) => (value / 25.4).toFixed(2);
const mph = (value: number) => (value / 0.44704).toFixed(1);

describe("Seattle, from files nobody here made", () => {
  it("comes out cell by cell, and its text is a record", () => {
    const { text, record } = imported(readFileSync(seattleFile, "utf8"));
    expect(text).toBe(ofSeattle);
    expect(readRecord(text)).toEqual({ record });
  });

  it("comes out of a file with New York in it too, once the place is said", () => {
    const where = { header: "location", value: "Seattle" };
    expect(imported(readFileSync(twoPlacesFile, "utf8"), { where }).text).toBe(ofSeattle);
  });
});

/** Each writing of the same days, and how far its rounding may take a value from the original. */
const writings: [
  name: string,
  header: string,
  line: (day: Day) => string,
  rain: number,
  temperature: number,
][] = [
  [
    "°F, inches and mph, said in the header",
    "Date,Precip (in),Min Temp (°F),Max Temp (°F),Avg Wind Speed (mph)",
    (day) =>
      [day.iso, inches(day.rain_mm), fahrenheit(day.tmin_c), fahrenheit(day.tmax_c), mph(day.wind_ms)].join(),
    0.128,
    0.03,
  ],
  [
    "°F and inches, told from the values",
    "DATE,PRCP,TMIN,TMAX,AWND_mph",
    (day) =>
      [day.iso, inches(day.rain_mm), fahrenheit(day.tmin_c), fahrenheit(day.tmax_c), mph(day.wind_ms)].join(),
    0.128,
    0.03,
  ],
  [
    "semicolons, comma decimals, dates with points",
    "Datum;Niederschlag (mm);TNK (°C);TXK (°C);Windgeschwindigkeit (m/s)",
    (day) =>
      [
        `${two(day.day)}.${two(day.month)}.${day.year}`,
        comma(day.rain_mm),
        comma(day.tmin_c),
        comma(day.tmax_c),
        comma(day.wind_ms),
      ].join(";"),
    1e-9,
    1e-9,
  ],
  [
    "day first with two-digit years",
    "Day,Rainfall mm,Minimum temperature °C,Maximum temperature °C,Wind m/s",
    (day) =>
      [`${day.day}/${day.month}/${day.year % 100}`, day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].join(),
    1e-9,
    1e-9,
  ],
  [
    "month first with times, quoted",
    '"Time","Rain_mm","Temp_low_C","Temp_high_C","wind_kmh"',
    (day) =>
      [
        `${day.month}/${day.day}/${day.year} 9:00 AM`,
        day.rain_mm,
        day.tmin_c,
        day.tmax_c,
        (day.wind_ms * 3.6).toFixed(2),
      ]
        .map((cell) => `"${cell}"`)
        .join(),
    1e-9,
    1e-9,
  ],
  [
    "tabs, year, month and day apart",
    "YEAR\tMO\tDY\tPRECTOTCORR\tT2M_MIN\tT2M_MAX\tWS2M",
    (day) => [day.year, day.month, day.day, day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].join("\t"),
    1e-9,
    1e-9,
  ],
  [
    "pipes, year and day of the year, kelvin",
    "year|doy|precipitation (cm)|tmin (K)|tmax (K)|wind (knots)",
    (day) =>
      [
        day.year,
        day.dayOfYear,
        (day.rain_mm / 10).toFixed(2),
        (day.tmin_c + 273.15).toFixed(2),
        (day.tmax_c + 273.15).toFixed(2),
        ((day.wind_ms * 3600) / 1852).toFixed(3),
      ].join("|"),
    1e-9,
    1e-9,
  ],
  [
    "tenths without a point, dates in one number, as station archives give",
    "STATION,DATE,PRCP,TMIN,TMAX,AWND",
    (day) =>
      [
        "A1",
        day.iso.replaceAll("-", ""),
        ...[day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].map((value) => Math.round(value * 10)),
      ].join(),
    1e-9,
    1e-9,
  ],
  [
    "months by name",
    "date,rain,low temp,high temp,wind speed (m/s)",
    (day) => {
      const name = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ")[day.month - 1];
      return [`${day.day}-${name}-${day.year}`, day.rain_mm, day.tmin_c, day.tmax_c, day.wind_ms].join();
    },
    1e-9,
    1e-9,
  ],
];

describe("the same days in another writing give the same record within its rounding", () => {
  it.each(writings)("%s", (_, header, line, rain, temperature) => {
    const { record } = imported(written(header, line));
    expect(worst(record.columns.rain_mm, "rain_mm")).toBeLessThanOrEqual(rain);
    expect(worst(record.columns.tmin_c, "tmin_c")).toBeLessThanOrEqual(temperature);
    expect(worst(record.columns.tmax_c, "tmax_c")).toBeLessThanOrEqual(temperature);
    expect(worst(record.columns.wind_ms, "wind_ms")).toBeLessThanOrEqual(0.024);
    expect(record.days).toBe(1461);
  });

  it("rows in any order", () => {
    const { text } = imported(
      written(
        "date,rain,tmin,tmax,wind",
        (day) =>
          [
            day.iso,
            day.rain_mm.toFixed(1),
            day.tmin_c.toFixed(1),
            day.tmax_c.toFixed(1),
            day.wind_ms.toFixed(1),
          ].join(),
        [...seattle].reverse(),
      ),
    );
    expect(text).toBe(ofSeattle);
  });
});

it("notes above the header, a row of units, comments and a footer are no weather", () => {
  const body = written("", (day) =>
    [
      day.iso,
      day.rain_mm.toFixed(1),
      day.tmin_c.toFixed(1),
      day.tmax_c.toFixed(1),
      day.wind_ms.toFixed(1),
    ].join(),
  ).trim();
  const text = [
    "\ufeffStation: an example, 47.4 N",
    "Elevation, 122 m",
    "# made up for this test",
    "",
    "Day,Rain,Tmin,Tmax,Wind",
    ",mm,°C,°C,m/s",
    body,
    "# the end",
    "Source: none",
  ].join("\r\n");
  const { text: record, notes } = imported(text);
  expect(record).toBe(ofSeattle);
  expect(notes).toContainEqual({ code: "import-left-out", facts: { rows: 2 } });
});

it("a century of days is mapped whole", () => {
  const century = Array.from({ length: 25 }, (_, copy) =>
    seattle.map(
      (day) =>
        `${1900 + copy * 4 + (day.year - 2012)}${day.iso.slice(4)},${inches(day.rain_mm)},${fahrenheit(day.tmin_c)},${fahrenheit(day.tmax_c)},${mph(day.wind_ms)}`,
    ),
  ).flat();
  const text = [
    "Date,Precip (in),Tmin (F),Tmax (F),Wind (mph)",
    ...century.filter((line) => !line.startsWith("1900-02-29")),
  ].join("\n");
  expect(imported(text).record.days).toBe(36_524);
});
