import "../../../../src/survey/without-compiling.ts";

import { BrowserLogStore } from "../../../../components/rounds/log-store.ts";
import type { RoundsPart, RoundsPlace } from "../../../../components/rounds/rounds.ts";
import type { LogEntry } from "../../../../src/survey/schema/log.ts";
import type { Survey } from "../../../../src/survey/survey.ts";
import { formatter } from "../../../../src/words/format.ts";
import "../../../../components/rounds/rounds.ts";

declare global {
  interface Window {
    /** What the page was told, for a test to read. */
    told: { surveys: { survey: Survey; words: string }[]; entries: LogEntry[] };
  }
}

/** The page that tests open: a survey and a record from the server, the day and the units from the address. */
const [survey, record] = await Promise.all([
  fetch("./survey.json").then((reply) => reply.json() as Promise<Survey>),
  fetch("./record.csv").then((reply) => reply.text()),
]);
const query = new URLSearchParams(location.search);
const place = document.createElement("gwb-rounds") as RoundsPlace;
window.told = { surveys: [], entries: [] };
place.survey = survey;
place.record = record;
place.explainSite = async (at) => {
  const { explainSite } = await import("./explain-site.ts");
  return explainSite(survey, record, at, place.say.system);
};
place.today = query.get("today") ?? "2026-07-06";
place.say = formatter(query.get("units") === "us" ? "us" : "metric", "en-GB");
place.view = (query.get("part") ?? "week") as RoundsPart;
place.store = new BrowserLogStore(localStorage, "harness");
place.addEventListener("change", (event) => {
  const { detail } = event as CustomEvent<{ survey: Survey; words: string }>;
  if (!detail?.survey) return;
  window.told.surveys.push(detail);
  place.survey = detail.survey;
});
place.addEventListener("log", (event) => {
  window.told.entries.push(...(event as CustomEvent<{ entries: LogEntry[] }>).detail.entries);
});
document.querySelector("main")!.append(place);
