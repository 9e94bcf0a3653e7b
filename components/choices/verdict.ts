import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import { waterToNeed } from "../../src/survey/measures/chosen.ts";
import type { Survey } from "../../src/survey/survey.ts";
import { choicesPage, type TankFacts } from "../../src/words/en/choices-page.ts";
import type { Said } from "./screen.ts";

type MeasureRow = GroundsChoices["measures"][number];

/** Changes that have to do with a tank or a roof. */
export const tankChanges: readonly string[] = ["addTank", "resizeTank", "useTank", "connectRoof"];

/** Less than this is said to be nothing: 50 L a year. */
const nothing_kL = 0.05;

/** The answer in a sentence or two: what of tanks, then what comes first. */
export function verdict(choices: GroundsChoices, survey: Survey, said: Said): string {
  return `${tankVerdict(choices, said)} ${firstThings(choices, survey, said)}`;
}

/** Where the intervals overlap it is a draw; "not worth it" is said plainly. */
function tankVerdict({ measures, spread, best }: GroundsChoices, said: Said): string {
  const tanks = measures.filter(({ change }) => tankChanges.includes(change));
  if (tanks.length === 0) return choicesPage.noTanks;
  const [one, other] = spread?.rivals ?? [];
  const apart = (id: string) =>
    (one?.measures.includes(id) ?? false) !== (other?.measures.includes(id) ?? false);
  if (spread?.isDraw && one && other && tanks.some(({ id }) => apart(id)))
    return choicesPage.draw(
      setName(one.measures, said),
      setName(other.measures, said),
      said.opens(String(Math.round(100 * spread.chance[0]![1]!)), "choices/sure/chance/0/1"),
    );
  const facts = (of: (worth: TankFacts["worth"]) => boolean): TankFacts[] =>
    tanks
      .filter(({ worth, id }) => of(worth) && (worth !== "pays" || best.measures.includes(id)))
      .map((row) => factsOf(row, said));
  const pays = facts((worth) => worth === "pays");
  if (pays.length > 0) return choicesPage.yes(pays, tanks.length - pays.length);
  const unpriced = facts((worth) => worth === "not-priced");
  if (unpriced.length > 0) return choicesPage.unpriced(unpriced.map(({ name }) => name));
  return choicesPage.no(tanks.map((row) => factsOf(row, said)));
}

function factsOf({ id, name, worth, after_kL_year, cost }: MeasureRow, said: Said): TankFacts {
  return {
    name,
    worth,
    saved: said.opens(said.water(after_kL_year), `choices/measure/${id}/after`),
    cost: cost === null ? said.money(cost) : said.opens(said.money(cost), `choices/cost/${id}`),
  };
}

function firstThings(
  { mains, measures, best, frontier }: GroundsChoices,
  survey: Survey,
  said: Said,
): string {
  const gives_kL = mains.today_kL_year - mains.need_kL_year;
  const isKnown = survey.beds.some(
    ({ id, watering }) => watering.supply !== "none" && !mains.todayUnknown.includes(id),
  );
  const first = !isKnown
    ? choicesPage.needUnknown
    : gives_kL >= 0
      ? choicesPage.needGives(said.opens(said.water(gives_kL), "choices/set/none/saved"))
      : choicesPage.needTakes(said.opens(said.water(-gives_kL), "choices/set/none/saved"));
  const names = measures.filter(({ id }) => best.measures.includes(id)).map(({ name }) => name);
  const isMore = best.saved_kL_year - (frontier[0]?.saved_kL_year ?? 0) > nothing_kL;
  const key = setKeyOf(best.measures);
  const cost = said.opens(said.money(best.cost), `choices/cost/set/${key}`);
  const saved = said.opens(said.water(best.saved_kL_year), `choices/set/${key}/saved`);
  const { bestByItself, bestAdds, bestStill } = choicesPage;
  if (names.length > 0 && isMore)
    return first + (isKnown ? (gives_kL >= 0 ? bestAdds : bestStill) : bestByItself)(names, cost, saved);
  return first + (measures.length > 0 ? choicesPage.bestNone : choicesPage.bestNoMeasures);
}

/** The key of a set in addresses of workings. */
export function setKeyOf(ids: readonly string[]): string {
  const measures = ids.filter((id) => id !== waterToNeed);
  return measures.length > 0 ? measures.join("+") : "none";
}

/** A set as people call it. */
export function setName(ids: readonly string[], said: Said): string {
  const names = said.names(ids.filter((id) => id !== waterToNeed));
  return names.length === 0 ? choicesPage.needAlone : said.list(names);
}

/** The same, but the plan as chosen by that name. */
export function setOrPlan(ids: readonly string[], plan: readonly string[], said: Said): string {
  const set = ids.filter((id) => id !== waterToNeed);
  const isPlan = set.length > 1 && set.length === plan.length && set.every((id) => plan.includes(id));
  return isPlan ? choicesPage.planAsChosen : setName(ids, said);
}

/** How wide the answer is: by draws where there are any, else by the record's years. */
export function widthSentences({ mains, spread }: GroundsChoices, said: Said): string[] {
  const { p10, p50, p90 } = spread?.giveUp_kL_year ?? { p10: null, p50: null, p90: null };
  const years = mains.giveUp_kL_year;
  const words: string[] = [];
  const widest = spread?.giveUp_kL_year ?? years;
  if (Math.max(Math.abs(widest.p10 ?? 0), Math.abs(widest.p90 ?? 0)) < nothing_kL) return words;
  const drawn = (kL: number, point: string) => said.opens(said.water(kL), `choices/sure/give-up/${point}`);
  if (spread && p10 !== null && p50 !== null && p90 !== null)
    words.push(
      choicesPage.width(
        drawn(p10, "p10"),
        drawn(p50, "p50"),
        drawn(p90, "p90"),
        said.say.number(spread.draws, 0),
      ),
    );
  else if (years.p10 !== null && years.p90 !== null)
    words.push(
      choicesPage.years(
        said.opens(said.water(years.p10), "mains/give-up-p10"),
        said.opens(said.water(years.p90), "mains/give-up-p90"),
      ),
    );
  const [dry, wet] = [mains.dryYear, mains.wetYear].map((year) =>
    mains.byYear.find((row) => row.year === year),
  );
  if (dry && wet && dry.year !== wet.year)
    words.push(
      choicesPage.dryWet(
        said.opens(said.water(dry.today_kL - dry.plan_kL), `mains/give-up/${dry.year}`),
        said.opens(String(dry.year), "mains/dry-year"),
        said.opens(said.water(wet.today_kL - wet.plan_kL), `mains/give-up/${wet.year}`),
        said.opens(String(wet.year), "mains/wet-year"),
      ),
    );
  return words;
}

/** Where gardens get less than they need, that is said first; null where none does. */
export function underSentence({ plans }: GroundsChoices, said: Said): string | null {
  const { underWatered } = plans;
  if (underWatered.length === 0) return null;
  const short = underWatered.reduce((sum, row) => sum + row.need_kL_year - row.habit_kL_year, 0);
  return choicesPage.under(
    underWatered.map(({ bed }) => said.bed(bed)),
    said.opens(said.water(short), "choices/short"),
  );
}
