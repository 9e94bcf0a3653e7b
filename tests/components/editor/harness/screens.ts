import { partList } from "../../../../components/editor/layout/screens.ts";
import type { Draft } from "../../../../src/survey/edit/document.ts";
import { rowsOf } from "../../../../src/survey/edit/document.ts";

/** The address of every screen that the editor has for a survey. */
export function screensOf(survey: Draft): string[] {
  return partList.flatMap((part) => {
    if (!("list" in part)) return [part.slug];
    const entries = rowsOf(survey, part.list).flatMap(({ id }) => [
      `${part.slug}/${String(id)}`,
      ...part.sheets.map(({ slug }) => `${part.slug}/${String(id)}/${slug}`),
    ]);
    return [part.slug, ...entries];
  });
}
