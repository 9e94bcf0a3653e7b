import { quantityOf, type Unit } from "../../src/quantities.ts";
import type { Stands } from "../../src/survey/measuring/apply-found.ts";
import { givenFor } from "../../src/survey/measuring/finding.ts";
import type { Worked } from "../../src/survey/measuring/way.ts";
import { givenWords } from "../../src/words/en/walk-aids.ts";
import { answerWords } from "../../src/words/en/walk-answers.ts";
import { measureWords } from "../../src/words/en/walk-screens.ts";
import type { Walk } from "./context.ts";
import type { Stop } from "./stops.ts";

/** A figure with its doubt: "48.2 m², give or take 0.6 m²". */
export function figureSaid(
  { figure: said }: Pick<Walk, "figure">,
  figure: { figure: number; standardError: number },
  unit: Unit | null,
): string {
  if (unit === null) return plainly(figure.figure);
  const { text, doubt } = said(figure, unit);
  return doubt === null ? text : `${text}, ${measureWords.giveOrTake(doubt)}`;
}

/** What stands in a stop's field, in words; null where nothing does. */
export function valueSaid(walk: Pick<Walk, "show">, stop: Stop, value: unknown): string | null {
  if (value === undefined || value === null) return null;
  if (typeof value === "number") return walk.show(value, stop.unit ?? ("share" as Unit));
  return answerWords(stop.kind, value);
}

/** What the groups' readings come to, in words. */
export function standsSaid(walk: Pick<Walk, "show" | "figure">, stop: Stop, stands: Stands): string {
  if ("figure" in stands) return figureSaid(walk, stands.figure, stop.unit ?? ("share" as Unit));
  return answerWords(stop.kind, "word" in stands ? stands.word.word : stands.value) ?? "";
}

/** What readings give for one field; its name where there are several. */
export interface GivenSaid {
  name: string | null;
  text: string;
  doubt: string | null;
}

const plainly = (figure: number) => String(Number(figure.toPrecision(3)));

/** Everything that readings give for a stop's fields, the one asked for first. */
export function givenSaid(walk: Pick<Walk, "show" | "figure">, stop: Stop, outcome: Worked): GivenSaid[] {
  const paths = [stop.at, ...stop.also].filter((at) => givenFor(outcome, at) !== null);
  return paths.map((at) => {
    const given = givenFor(outcome, at)!;
    const field = at.split(".").at(-1)!;
    const unit = unitOfField(field);
    const name = paths.length > 1 ? (givenWords[field] ?? null) : null;
    if ("figure" in given)
      return unit === null
        ? { name, text: plainly(given.figure.figure), doubt: null }
        : { name, ...walk.figure(given.figure, unit) };
    return {
      name,
      doubt: null,
      text: answerWords(stop.kind, "word" in given ? given.word : given.value) ?? "",
    };
  });
}

/** A unit that figures are shown in; null for plain numbers. */
function unitOfField(field: string): Unit | null {
  return (quantityOf(field)?.unit as Unit | undefined) ?? (field === "minutes" ? "min" : null);
}
