import type { Survey } from "../../src/survey/survey.ts";

/** Saves a survey as a file of its own, named for its place. */
export function saveSurveyFile(survey: Survey): void {
  const text = `${JSON.stringify(survey, null, 1)}\n`;
  const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = address;
  link.download = `${fileName(survey.site.name)}.survey.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Letters and digits of any script; the rest becomes a dash. */
function fileName(name: string): string {
  const plain = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "");
  return plain.slice(0, 60) || "site";
}
