import "../../../../src/survey/without-compiling.ts";

import type { Choices } from "../../../../components/choices/choices.ts";
import type { Survey } from "../../../../src/survey/survey.ts";
import "../../../../components/choices/choices.ts";
import { formatter } from "../../../../src/words/format.ts";

/** The page that tests open: a survey and a record, and the survey as the screen tells it. */
declare global {
  interface Window {
    survey: Survey;
    changes: number;
  }
}

const [survey, record] = await Promise.all([
  fetch("./survey.json").then((reply) => reply.json() as Promise<Survey>),
  fetch("./record.csv").then((reply) => reply.text()),
]);
const query = new URLSearchParams(location.search);
const screen = document.createElement("gwb-choices") as Choices;
window.survey = survey;
window.changes = 0;
screen.survey = survey;
screen.weather = record;
screen.say = formatter(query.get("units") === "us" ? "us" : "metric", "en");
screen.addEventListener("change", (event) => {
  window.survey = (event as CustomEvent<{ survey: Survey }>).detail.survey;
  window.changes += 1;
  screen.survey = window.survey;
});
document.querySelector("main")!.append(screen);
