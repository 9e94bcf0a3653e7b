import { published } from "../../published/figures.ts";

/** Inputs and results of an entry of the published figures, by its id. */
export function publishedFigures(id: string): Record<string, unknown> {
  const entry = published.find((candidate) => candidate.id === id);
  if (entry === undefined) throw new Error(`There is no published entry ${id}.`);
  return { ...entry.inputs, ...entry.expected };
}
