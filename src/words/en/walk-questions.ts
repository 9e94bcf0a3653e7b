import { quantityOf, type Unit } from "../../quantities.ts";
import { type Show, showMetric } from "./walk-show.ts";

/** What a question about a reading needs to know of it. */
interface QuestionFacts {
  at: string;
  code: string;
  found: number;
  low?: number;
  high?: number;
}

/** Ends `at` names a field; the last name of a path is a quantity. */
function shown({ at, found, low = 0, high = 0 }: QuestionFacts, show: Show) {
  const unit = (quantityOf(at.split(".").at(-1)!)?.unit ?? "share") as Unit;
  return { found: show(found, unit), low: show(low, unit), high: show(high, unit), meaning: meaningOf(at) };
}

function meaningOf(at: string): string {
  return quantityOf(at.split(".").at(-1)!)?.meaning ?? "figure";
}

const sentences: Readonly<Record<string, (facts: QuestionFacts, show: Show) => string>> = {
  "unusually-large": (facts, show) => {
    const { found, low, high, meaning } = shown(facts, show);
    return `${capital(meaning)}: ${found} is more than usual (${low} to ${high}). Is it right? If so, leave it.`;
  },
  "unusually-small": (facts, show) => {
    const { found, low, high, meaning } = shown(facts, show);
    return `${capital(meaning)}: ${found} is less than usual (${low} to ${high}). Is it right? If so, leave it.`;
  },
  "comes-fast": ({ found, low = 0, high = 0 }, show) =>
    `With this flow on this area ${show(found, "mm/h")} would fall; usual is ${show(low, "mm/h")} to ${show(high, "mm/h")}. Are flow and area of the same ground?`,
  "comes-slowly": ({ found, low = 0, high = 0 }, show) =>
    `With this flow on this area only ${show(found, "mm/h")} would fall; usual is ${show(low, "mm/h")} to ${show(high, "mm/h")}. Are flow and area of the same ground?`,
  "no-cover-but-plants": () =>
    "Leaf cover is 0, yet plants are written for the bed. Are they bare now, or is it not filled in?",
  "mulch-without-depth": () => "There is mulch, yet its depth is 0. Is it a sheet, or not measured?",
  "roots-below-pot": ({ found }, show) =>
    `Roots ${show(found, "m")} deep in potting mix: is the pot that deep?`,
  "fuller-than-full": ({ found, high = 0 }, show) =>
    `${show(found, "L")} in a tank that holds ${show(high, "L")}. Is one of them wrong?`,
  "all-below-outlet": ({ found, high = 0 }, show) =>
    `${show(found, "L")} of ${show(high, "L")} lie below the outlet. Is the outlet that high?`,
  "two-flows": ({ found, high = 0 }, show) =>
    `The bed gets ${show(found, "L/min")}, but its tap gives ${show(high, "L/min")}. Which one was measured?`,
  "canopies-beyond-bed": ({ found, low = 0 }, show) =>
    `The canopies counted cover ${show(low, "m²")}, the bed is ${show(found, "m²")}. Do they hang over its edge?`,
};

/** A question about a reading; never a refusal. */
export function questionSentence(question: QuestionFacts, show: Show = showMetric): string {
  return sentences[question.code]!(question, show);
}

export const questionCodes = Object.keys(sentences);

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What a whole walk fills and this survey does not have yet. */
export const missingWords: Readonly<Record<string, string>> = {
  "leaf-cover": "leaf cover",
  mulch: "mulch, or that there is none",
  soil: "the soil",
  slope: "the slope",
  skyline: "the skyline, or that the sky is open",
  flow: "the flow on to the bed",
  habit: "how it is watered today",
  "catch-cans": "a test with catch cans",
  "first-flush": "the first-flush diverter, or that there is none",
  "roof-share": "how much of the roof drains to the tank",
  "tank-level": "the water in the tank",
  "below-outlet": "the water below the outlet",
  "tank-in-use": "whether the tank is used",
  "tap-flow": "the flow of the tap",
  absences: "when nobody is there",
  elevation: "the height above the sea",
  meters: "the water meter",
};
