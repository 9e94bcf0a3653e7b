/** Words of the drawings of choices: findings, axes, labels, readings, columns. Figures come in as text. */
export const choicesPlates = {
  sizes: {
    enough: (name: string, size: string) => `${name}: past ${size} more tank adds next to nothing`,
    nonePays: (quotes: number) =>
      quotes === 1 ? "; the size quoted is not worth its money" : "; no size quoted is worth its money",
    nothing: (name: string) => `${name}: nothing is asked of it, so no size of it saves mains water`,
    about: (name: string) =>
      `Mains water that ${name} takes the place of in a year, against its size: the middle year, a dry and a wet one, and eight years of ten between the edges.`,
    axis: (unit: string) => `${unit} of mains water a year`,
    sizeAxis: (unit: string) => `size, ${unit}`,
    middle: "middle year",
    dry: (year: string) => `dry year, ${year}`,
    wet: (year: string) => `wet year, ${year}`,
    today: "today",
    quoted: "quote",
    enoughMark: "95% of all at",
    reading: (of: {
      size: string;
      mean: string;
      low: string;
      high: string;
      more: string | null;
      days: string;
    }) =>
      `${of.size}: ${of.mean} a year, ${of.low} to ${of.high} in eight years of ten; ${
        of.more === null ? "the largest drawn" : `the next step of size adds ${of.more}`
      }; empty on ${of.days} days a year`,
    columns: [
      "Size",
      "Saved, mean a year",
      "One year in ten below",
      "One year in ten above",
      "Dry year",
      "Wet year",
      "Next 1,000 L adds",
      "Days met",
      "Days empty a year",
      "What it is",
    ],
    marks: { today: "today’s", quoted: "quoted", enough: "within 5% of all" },
  },
  budget: {
    finding: (need: string, all: string) =>
      `Nothing spent gives up ${need} a year; all that is quoted brings it to ${all}`,
    findingMore: (need: string, all: string) =>
      `Watered to need, nothing spent, the gardens take ${need} more a year than today; with all that is quoted the balance is ${all} given up`,
    about:
      "The most mains water that can be given up for every budget: steps from left to right, one for each set of measures.",
    axis: (unit: string) => `${unit} of mains water given up a year`,
    costAxis: "spent on measures",
    budget: (money: string) => `budget ${money}`,
    need: "watering to need: nothing to buy",
    best: "worth most",
    adds: (names: string) => `with ${names}`,
    drops: (names: string) => `without ${names}`,
    nothing: "watering to need alone",
    reading: (cost: string, what: string, saved: string, npv: string | null) =>
      `From ${cost}: ${what}. ${saved} a year${npv === null ? "" : `; worth ${npv} in all`}`,
    columns: ["From", "What is done, beside watering to need", "Given up a year", "Present value"],
  },
  shares: {
    finding: (name: string, share: string, total: string) => `${name} brings ${share} of the ${total} a year`,
    none: "The plan as chosen saves no mains water",
    about: "One bar: mains water that the plan saves in a year, parted among what brings it.",
    reading: (of: { name: string; share: string; part: string; first: string; last: string }) =>
      `${of.name}: ${of.share} a year, ${of.part} of the plan. Done first it would save ${of.first}, done last ${of.last}`,
    columns: ["What brings it", "Its share a year", "Done first", "Done last", "Standard error"],
  },
} as const;
