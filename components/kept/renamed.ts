/** A survey under another name of the place. */
export function renamed(survey: object, name: string): object {
  const { site } = survey as { site?: object };
  return { ...survey, site: { ...site, name } };
}
