import { isFields, rowsOf, valueIn } from "../../src/survey/edit/document.ts";
import type { Sort } from "../../src/survey/edit/sorts.ts";
import type { Path } from "../../src/survey/path.ts";
import type { UnitSystem } from "../../src/units.ts";
import { plainAnswers } from "../../src/words/en/editor-choices.ts";
import { angleWriting } from "../fields/writing/angle.ts";
import { type DayForm, dayWriting } from "../fields/writing/day.ts";
import { numbersWriting, pointsWriting, pointWriting } from "../fields/writing/lists.ts";
import { quantityWriting } from "../fields/writing/quantity.ts";
import { timeWriting } from "../fields/writing/time.ts";
import { codeWriting, looseWriting, textWriting } from "../fields/writing/words.ts";
import type { Writing } from "../fields/writing/writing.ts";

/** Fields that hold a share, 0–1, and are shown in percent. */
const shares: ReadonlySet<string> = new Set([
  "share",
  "cover",
  "leafCover",
  "efficiency",
  "wettedShare",
  "distributionUniformity",
  "runoff",
  "rainShare",
  "depletionFraction",
  "belowShare",
  "toShare",
  "discountShare",
  "riseShare",
]);

/** What a writing needs to know of the survey around its field. */
export interface WritingContext {
  draft: unknown;
  system: UnitSystem;
  locale: string | undefined;
}

/** How a field that is written, not chosen, is read and shown; null for one that is chosen. */
export function writingFor(path: Path, sort: Sort, context: WritingContext): Writing | null {
  const { locale } = context;
  const name = String(path.findLast((step) => typeof step === "string"));
  switch (sort.sort) {
    case "number":
    case "twelve": {
      if (name === "latitude") return angleWriting("NS", locale);
      if (name === "longitude") return angleWriting("EW", locale);
      const writing = quantityWriting({
        ...numberField(path, sort.unit, context),
        isShare: shares.has(name),
      });
      return name === "value" && path[0] === "readings"
        ? { ...writing, unit: meterUnit(path, context.draft), width: 14 }
        : writing;
    }
    case "numbers":
      return numbersWriting(locale);
    case "point":
      return pointWriting(locale);
    case "points":
      return pointsWriting(locale);
    case "loose":
      return looseWriting(plainAnswers.yes.toLowerCase(), plainAnswers.no.toLowerCase(), locale);
    case "text":
      return formWriting(name, sort.form, locale);
    default:
      return null;
  }
}

function numberField(path: Path, unit: string, { draft, system, locale }: WritingContext) {
  const tariff = valueIn(draft, ["tariff"]);
  const currency = isFields(tariff) && typeof tariff.currency === "string" ? tariff.currency : undefined;
  return { unit: path.length === 0 ? "" : unit, system, locale, currency };
}

/** The unit that a reading's meter counts in. */
function meterUnit(path: Path, draft: unknown): string {
  const id = valueIn(draft, [...path.slice(0, -1), "meter"]);
  const unit = rowsOf(draft, "meters").find((meter) => meter.id === id)?.unit;
  return typeof unit === "string" ? unit.replace(/^(100|1000)(?=\D)/, "$1 ").replace(/3$/, "³") : "";
}

function formWriting(name: string, form: string, locale?: string): Writing {
  if (form === "date" || form === "date-or-month-day" || form === "date-or-time")
    return dayWriting(form satisfies DayForm, locale);
  if (form === "clock-time") return timeWriting();
  if (form === "currency") return codeWriting();
  return textWriting(name === "id" || name === "timeZone" ? 24 : 40);
}
