import { pathSteps } from "../measuring/field-path.ts";
import { pathText } from "../path.ts";
import { type Draft, isFields } from "./document.ts";

/**
 * The document with its findings still about the entries they were about, after the entries of a list took other
 * places: `newPlace` gives where the entry at a place went, null where it is gone, and its findings with it.
 */
export function withFindingsFollowing(
  document: Draft,
  list: string,
  newPlace: (place: number) => number | null,
): Draft {
  const { found } = document;
  if (!Array.isArray(found)) return document;
  const followed = found.flatMap((finding: unknown) => {
    const steps = isFields(finding) && typeof finding.at === "string" ? pathSteps(finding.at) : null;
    if (!isFields(finding) || steps === null || steps[0] !== list || typeof steps[1] !== "number")
      return [finding];
    const place = newPlace(steps[1]);
    return place === null ? [] : [{ ...finding, at: pathText([list, place, ...steps.slice(2)]) }];
  });
  return { ...document, found: followed };
}
