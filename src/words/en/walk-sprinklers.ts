/** What is looked for while sprinklers run, and what mends it. */
export const sprinklerWords: Readonly<Record<string, { seen: string; mend: string }>> = {
  tilted: { seen: "leans over", mend: "Set it upright." },
  sunken: { seen: "has sunk below the grass", mend: "Raise it level with the ground." },
  blocked: { seen: "is blocked or sprays unevenly", mend: "Clean the nozzle and its filter." },
  leaking: { seen: "leaks at its foot", mend: "Replace the seal or the body." },
  broken: { seen: "is broken", mend: "Replace it." },
  misting: {
    seen: "makes a fine mist that drifts",
    mend: "The pressure is too high: fit a regulator or regulated heads.",
  },
  weak: {
    seen: "reaches less far than its neighbours",
    mend: "The pressure is too low: look for a leak, or run fewer at once.",
  },
  "not-turning": { seen: "does not turn", mend: "Clean or replace its drive." },
  overspray: { seen: "waters paving, a wall or a road", mend: "Turn the arc or change the nozzle." },
  "hidden-by-plants": { seen: "is behind plants", mend: "Cut back, or raise it." },
  "mixed-heads": {
    seen: "is of another kind than its neighbours in the zone",
    mend: "Kinds put water on at different rates: part them into zones.",
  },
  "does-not-pop-up": { seen: "does not rise", mend: "Clean the riser." },
  "runs-on-after": {
    seen: "runs on after the zone is off",
    mend: "The valve does not close: clean or replace it.",
  },
  "low-head-drains": { seen: "drains the pipe when the zone is off", mend: "Fit a check valve." },
};
