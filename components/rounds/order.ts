import type { Survey } from "../../src/survey/survey.ts";

/** The survey with a bed moved in the order of who goes first; every bed of the order then has its place. */
export function withMoved(survey: Survey, order: readonly string[], id: string, by: -1 | 1): Survey {
  const from = order.indexOf(id);
  const to = from + by;
  if (from < 0 || to < 0 || to >= order.length) return survey;
  const moved = order.filter((one) => one !== id);
  moved.splice(to, 0, id);
  return {
    ...survey,
    beds: survey.beds.map((bed) => {
      const place = moved.indexOf(bed.id);
      return place < 0 ? bed : { ...bed, priority: place + 1 };
    }),
  };
}

/** The survey without an order of its own. */
export function withoutOrder(survey: Survey): Survey {
  return { ...survey, beds: survey.beds.map(({ priority: _, ...bed }) => bed) };
}
