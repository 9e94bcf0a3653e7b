import type { TermKey } from "../explain-terms.ts";

/** A formula: what it gives, its letters in braces, what it says, and where it is published. */
export interface Formula {
  gives: TermKey;
  template: string;
  words: string;
  /** null: plain arithmetic. */
  source: string | null;
}

/** FAO Irrigation and Drainage Paper 56, for short. */
export const fao56 = "FAO-56";
export const fao = (place: string) => `${fao56}, ${place}`;
export const eq = (number: string) => fao(`Eq. ${number}`);
export const density =
  "Allen and Pereira (2009), Irrigation Science 28:17–34; 1.5 is the low end of its range, our choice";
export const erbs =
  "Erbs, Klein and Duffie (1982), Solar Energy 28:293–302, daily form (coefficients from memory)";
export const spillage = "Jenkins et al. (1978); Fewkes and Butler (2000)";
export const shadeOurs = "method of this project: simple air mass, isotropic sky, level ground";
export const mulchSource =
  "FAO-56, chapter 10: 5% less evaporation for each 10% covered; in proportion below full depth";
export const saxton = "Saxton and Rawls (2006), Soil Science Society of America Journal 70:1569–1578";
export const practice = "common practice";
export const ours = "method of this project";

export const f = (
  gives: TermKey,
  template: string,
  words: string,
  source: string | null = null,
): Formula => ({
  gives,
  template,
  words,
  source,
});
