import type { GroundsChoices } from "../../src/report/choices-schema.ts";
import { waterToNeed } from "../../src/survey/measures/chosen.ts";
import { choicesPage, type TankFacts } from "../../src/words/en/choices-page.ts";
import type { Said } from "./screen.ts";

/** Changes that have to do with a tank or a roof. */
export const tankChanges: readonly string[] = ["addTank", "resizeTank", "useTank", "connectRoof"];

/** Less than this is said to be nothing: 50 L a year. */
const nothing_kL = 0.05;

/** The answer in a sentence or two: what of tanks, then what comes first. */
export function verdict(choices: GroundsChoices, said: Said): string {
  return `${tankVerdict(choices, said)} ${firstThings(choices, said)}`;
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
      String(Math.round(100 * spread.chance[0]![1]!)),
    );
  const facts = (of: (worth: TankFacts["worth"]) => boolean): TankFacts[] =>
    tanks
      .filter(({ worth, id }) => of(worth) && (worth !== "pays" || best.measures.includes(id)))
      .map(({ name, worth, after_kL_year, cost }) => ({
        name,
        worth,
        saved: said.water(after_kL_year),
        cost: said.money(cost),
      }));
  const pays = facts((worth) => worth === "pays");
  if (pays.length > 0) return choicesPage.yes(pays, tanks.length - pays.length);
  const unpriced = facts((worth) => worth === "not-priced");
  if (unpriced.length > 0) return choicesPage.unpriced(unpriced.map(({ name }) => name));
  return choicesPage.no(
    tanks.map(({ name, worth, after_kL_year, cost }) => ({
      name,
      worth,
      saved: said.water(after_kL_year),
      cost: said.money(cost),
    })),
  );
}

function firstThings({ mains, measures, best, frontier }: GroundsChoices, said: Said): string {
  const gives_kL = mains.today_kL_year - mains.need_kL_year;
  const first =
    gives_kL >= 0
      ? choicesPage.needGives(said.water(gives_kL))
      : choicesPage.needTakes(said.water(-gives_kL));
  const names = measures.filter(({ id }) => best.measures.includes(id)).map(({ name }) => name);
  const isMore = best.saved_kL_year - (frontier[0]?.saved_kL_year ?? 0) > nothing_kL;
  if (names.length > 0 && isMore && gives_kL >= 0)
    return first + choicesPage.bestAdds(names, said.money(best.cost), said.water(best.saved_kL_year));
  if (names.length > 0 && isMore)
    return first + choicesPage.bestStill(names, said.money(best.cost), said.water(best.saved_kL_year));
  return first + (measures.length > 0 ? choicesPage.bestNone : choicesPage.bestNoMeasures);
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
  if (spread && p10 !== null && p50 !== null && p90 !== null)
    words.push(
      choicesPage.width(said.water(p10), said.water(p50), said.water(p90), said.say.number(spread.draws, 0)),
    );
  else if (years.p10 !== null && years.p90 !== null)
    words.push(choicesPage.years(said.water(years.p10), said.water(years.p90)));
  const [dry, wet] = [mains.dryYear, mains.wetYear].map((year) =>
    mains.byYear.find((row) => row.year === year),
  );
  if (dry && wet && dry.year !== wet.year)
    words.push(
      choicesPage.dryWet(
        said.water(dry.today_kL - dry.plan_kL),
        String(dry.year),
        said.water(wet.today_kL - wet.plan_kL),
        String(wet.year),
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
    said.water(short),
  );
}
