import type { Survey } from "../../src/survey/survey.ts";

/** The invented school to practise on, with nothing measured yet; fetched when somebody practises. */
export async function practiceSurvey(): Promise<Survey> {
  const { default: school } = await import("../../demo/school.survey.json");
  const { found: _, groups: __, ...rest } = school as unknown as Survey;
  return structuredClone(rest);
}
