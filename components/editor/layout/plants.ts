import { field, fields, form, type Node, type RowsNode } from "./nodes.ts";

export const plantings: RowsNode = {
  rows: "plantings",
  begin: { kind: "", thirst: "", share: "" },
  nodes: [
    ...fields("kind", "thirst", "share"),
    {
      more: [
        { group: "count", nodes: fields("plants", "canopy_m") },
        ...fields("establishingUntil", "monthly", "height_m", "rootDepth_m", "depletionFraction", "kcbFull"),
      ],
    },
  ],
};

export const mulch: Node = {
  special: "mulch",
  of: "mulch",
  nodes: fields("material", "cover", "depth_mm"),
};

export const soil: readonly Node[] = [
  {
    forms: "soil",
    in: "soil",
    mayBeNone: true,
    options: [
      form("texture", "texture"),
      form("parts", "sand_pct", "clay_pct"),
      form("figures", "fieldCapacity", "wiltingPoint", "tew_mm", "rew_mm"),
    ],
  },
  field("soil.slope_pct"),
  {
    more: [
      field("soil.intake_mm_h"),
      { group: "initial", nodes: fields("rootDepletion_mm", "surfaceDepletion_mm") },
    ],
  },
];

export const shade: readonly Node[] = [
  { drawing: "skyline" },
  {
    rows: "obstructions",
    begin: {},
    nodes: fields("fromAzimuth_deg", "toAzimuth_deg", "elevation_deg"),
  },
  field("rainShare"),
];
