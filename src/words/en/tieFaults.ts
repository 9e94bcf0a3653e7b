import { count } from "./count.ts";
import { fieldName } from "./fields.ts";
import { allOf, oneOf } from "./lists.ts";
import type { FaultWriter } from "./shapeFaults.ts";
import { figure } from "./wanted.ts";

const kindOf: Readonly<Record<string, string>> = {
  bed: "bed",
  roof: "roof",
  tank: "tank",
  tap: "tap",
  leak: "leak",
  meter: "meter",
  group: "survey group",
  fed: "bed, tap, tank, draw or leak",
  source: "source",
};

const list = (value: unknown) => (Array.isArray(value) ? value.map(String) : []);
const L = (value: unknown) => `${figure(value)} L`;
const month = (value: unknown) =>
  new Intl.DateTimeFormat("en", { month: "long", timeZone: "UTC" }).format(
    Date.UTC(2021, Number(value) - 1, 15),
  );

/** Faults of fields that do not go together. */
export const tieFaultWords: Readonly<Record<string, FaultWriter>> = {
  "id-twice": ({ id, first }) => `An id must be used once. "${id}" is the id of ${first} already.`,
  "id-bed-and-tank": ({ id, first }) =>
    `A bed and a tank must not have one id: both head columns of the day-by-day table. "${id}" is the id of ${first} already.`,
  "unknown-id": ({ found, of, known, count: all, near }) => {
    const kind = kindOf[String(of)] ?? "entry";
    const names = list(known);
    if (names.length === 0) return `There is no ${kind} with the id "${found}": the survey has none at all.`;
    if (near !== undefined) return `There is no ${kind} with the id "${found}". Is "${near}" meant?`;
    const more = Number(all) > names.length ? ` and ${count(Number(all) - names.length)} more` : "";
    return `There is no ${kind} with the id "${found}". Known ids: ${names.join(", ")}${more}.`;
  },
  "listed-twice": ({ entry }, path) =>
    `${fieldName(path)}: each entry must be there once. "${entry}" is there before.`,

  "shares-sum": ({ sum }) => `The shares of the plantings must add to 1. They add to ${figure(sum)}.`,
  "soil-none": () =>
    "Soil must be said in one of three ways: texture; sand_pct and clay_pct; or fieldCapacity, wiltingPoint, tew_mm and rew_mm. None is there.",
  "soil-many": ({ fields }) =>
    `Soil must be said in one way only: texture; sand_pct and clay_pct; or fieldCapacity, wiltingPoint, tew_mm and rew_mm. There are ${allOf(list(fields))}.`,
  "soil-over-whole": ({ sand, clay }) =>
    `Sand and clay must not be more than 100% together. They are ${figure(sand)}% and ${figure(clay)}%.`,
  "soil-wilting": ({ wilting, capacity }) =>
    `Wilting point must be below field capacity, ${figure(capacity)} m³/m³. You entered ${figure(wilting)}.`,
  "sector-empty": ({ from, to }) =>
    `The right end of the obstruction must differ from the left one; all round is 0 to 360. They are ${figure(from)}° and ${figure(to)}°.`,
  "none-is-none": ({ supply }) =>
    `A bed with the method none must have the supply none. Its supply is ${supply}.`,
  "tank-wanted": ({ supply }) => `A bed with the supply ${supply} must name its tank. It names none.`,

  "above-capacity": ({ found, capacity }, path) =>
    `${fieldName(path)} must not be above the tank's capacity, ${L(capacity)}. You entered ${L(found)}.`,
  "below-outlet": ({ found, unusable }) =>
    `Tank capacity must not be below the water under its outlet, ${L(unusable)}. You entered ${L(found)}.`,
  "top-up-order": ({ below, found }) =>
    `Top-up target must not be below the trigger, ${figure(below)}. You entered ${figure(found)}.`,
  "linked-to-itself": ({ id }) => `A tank must not be linked to itself. "${id}" is its own id.`,
  "flow-at-no-tank": ({ source }) =>
    `Flow by level is for a tap that draws from a tank. The source of this one is ${source}; give flow_L_min instead.`,
  "level-twice": ({ found }) => `Each level must be there once. ${L(found)} is there before.`,
  "not-rising": ({ found, before }, path) =>
    `${fieldName(path)} must be above the one before, ${figure(before)}. You entered ${figure(found)}.`,

  "time-zone": ({ found }) =>
    `Time zone must be the name of one, as Europe/Madrid or Australia/Perth. You entered "${found}".`,
  "ends-mixed": ({ from, to }) =>
    `The first and the last day must be written alike: both month-day for every year, or both dates. They are ${from} and ${to}.`,
  "ends-reversed": ({ from, to }, path) =>
    `${fieldName(path)} must not be before the first, ${from}. You entered ${to}.`,
  "end-wanted": ({ other }, path) =>
    `${fieldName(path)} is missing. It is wanted, as the other end is ${other}.`,
  "times-same": ({ time }) => `The time to must differ from the time from. Both are ${time}.`,
  "normals-short": () => "The monthly means must have tmin_c and tmax_c, or et0_mm. They have neither.",
  "normals-pair": ({ other }, path) => `${fieldName(path)} is missing. It is wanted, as ${other} is there.`,
  "normals-crossed": ({ month: at, low, high }) =>
    `Lowest temperature must not be above the highest. In ${month(at)} they are ${figure(low)} and ${figure(high)} °C.`,
  "normals-days": ({ month: at, found, most }) =>
    `Wet days must not be more than the month has. ${month(at)} has ${figure(most)}; you entered ${figure(found)}.`,

  "price-none": () => "A tariff must have a price: perKL, or steps. It has neither.",
  "price-many": () => "A tariff must have one price, or steps. It has both perKL and steps.",
  "steps-start": ({ found }) => `The first price step must start at 0 kL. It starts at ${figure(found)} kL.`,

  "change-none": ({ changes }) => `A measure must have one change: ${oneOf(list(changes))}. It has none.`,
  "change-many": ({ found }) =>
    `A measure must have one change only: make a measure of each. It has ${allOf(list(found))}.`,
  "watering-unchanged": () => "A change of watering must change something. Only beds are named.",
  "id-kept": ({ id }) =>
    `A measure must have an id of its own. "${id}" stands for watering to need, which is part of every plan.`,
  "group-twice": ({ group, first }) =>
    `At most one measure of the group "${group}" may be chosen. ${first} is chosen already: write "chosen": false in one of them.`,
  "measures-clash": ({ first }) =>
    `Two chosen measures must not set the same thing. ${first} sets it already: put both in one group by oneOf, or choose one.`,

  "reading-none": () =>
    "A reading must be a register (meter, at, value), a bill (meter, from, to, kL) or a dip (tank, date, level_L). It is none of them.",
  "reading-many": ({ fields }) =>
    `A reading must be one of a register (meter, at, value), a bill (meter, from, to, kL) and a dip (tank, date, level_L). It has ${allOf(list(fields))}.`,
  "meter-circle": ({ id }) => `A meter must not be behind itself. Going up from "${id}" comes back to it.`,
};
