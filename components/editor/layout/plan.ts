import { field, fields, form, type Node } from "./nodes.ts";
import { mulch, plantings } from "./plants.ts";
import { draw, habitFields, tank, wateringFields, wateringMore } from "./water.ts";

/** What each change of a measure has. */
const changed: Readonly<Record<string, readonly Node[]>> = {
  mulch: [field("beds"), ...("nodes" in mulch ? (mulch.nodes ?? []) : [])],
  replant: [field("beds"), plantings, field("leafCover")],
  changeWatering: [
    field("beds"),
    ...wateringFields,
    { group: "habit", nodes: habitFields },
    ...fields("allowedDays", "maxMinutes"),
    { more: wateringMore },
  ],
  addTank: tank,
  resizeTank: fields("tank", "capacity_L"),
  useTank: fields("tank", "beds"),
  connectRoof: fields("roof", "tank", "share"),
  firstFlush: fields("roofs", "firstFlush_mm"),
  addDraw: draw,
  mendLeak: fields("leaks"),
};

export const measure: readonly Node[] = [
  field("name"),
  {
    special: "change",
    of: "",
    nodes: Object.entries(changed).map(([group, nodes]) => ({ group, nodes })),
  },
  ...fields("chosen", "cost"),
  {
    group: "quote",
    nodes: [
      ...fields("from", "on"),
      { rows: "lines", begin: {}, nodes: fields("what", "cost", "life_years") },
      field("grant"),
    ],
  },
  ...fields("life_years", "upkeepPerYear", "oneOf"),
  { more: [{ special: "id", of: "id" }] },
];

export const price: readonly Node[] = [
  {
    group: "tariff",
    isAlone: true,
    nodes: [
      field("currency"),
      {
        forms: "price",
        in: "",
        mayBeNone: false,
        options: [
          form("perKL", "perKL"),
          {
            key: "steps",
            marks: ["steps"],
            begin: { steps: [{ fromKL: 0 }] },
            nodes: [{ rows: "steps", begin: {}, nodes: fields("fromKL", "perKL") }],
          },
        ],
      },
      { rows: "perKLAlso", begin: {}, nodes: fields("name", "perKL") },
      ...fields("periodMonths", "otherUse_kL_year", "riseShare"),
    ],
  },
];

export const budget: readonly Node[] = [
  {
    group: "money",
    isAlone: true,
    nodes: fields("budget", "budgetPerYear", "discountShare", "horizon_years"),
  },
];

export const meter: readonly Node[] = [
  ...fields("name", "unit", "parent", "feeds"),
  { more: [{ special: "id", of: "id" }] },
];

export const readings: Node = {
  rows: "readings",
  begin: {},
  nodes: [
    {
      forms: "reading",
      in: "",
      mayBeNone: false,
      options: [
        {
          key: "register",
          marks: ["at", "value"],
          begin: { meter: "", at: "", value: "" },
          nodes: [...fields("meter"), { field: "at", keeps: true }, { field: "value", keeps: true }],
        },
        {
          key: "bill",
          marks: ["from", "to", "kL"],
          begin: { meter: "", from: "", to: "", kL: "" },
          nodes: [
            ...fields("meter"),
            { field: "from", keeps: true },
            { field: "to", keeps: true },
            { field: "kL", keeps: true },
          ],
        },
        {
          key: "dip",
          marks: ["tank", "date", "level_L"],
          begin: { tank: "", date: "", level_L: "" },
          nodes: [
            { field: "tank", keeps: true },
            { field: "date", keeps: true },
            { field: "level_L", keeps: true },
          ],
        },
      ],
    },
    field("estimated"),
  ],
};

export const group: readonly Node[] = [field("nickname"), { more: [{ special: "id", of: "id" }] }];

export const finding: readonly Node[] = [
  { special: "about", of: "at" },
  ...fields("how", "readings", "figure", "standardError", "when", "group", "guess", "used", "text"),
  { more: [{ special: "id", of: "id" }] },
];
