import "../../../../src/survey/without-compiling.ts";

import { weighWith } from "../../../../components/walk/weigh.ts";
import { readRecord } from "../../../../src/files/record.ts";
import type { Survey } from "../../../../src/survey/survey.ts";
import "../../../../components/walk/walk.ts";
import type { GroundsWalk } from "../../../../components/walk/walk.ts";

/** The page that tests open: a survey from the address or the box, its changes kept there. */
declare global {
  interface Window {
    /** The survey as it stands, for a test to read. */
    survey: Survey;
  }
}

/** Once fetched, kept: the page of a site keeps its own too. */
async function kept(name: string, path: string): Promise<string> {
  const before = localStorage.getItem(name);
  if (before !== null) return before;
  const text = await (await fetch(path)).text();
  localStorage.setItem(name, text);
  return text;
}

const [text, record] = await Promise.all([
  kept("harness", "./survey.json"),
  kept("harness-record", "./record.csv"),
]);
const survey = JSON.parse(text) as Survey;
const read = readRecord(record);
const query = new URLSearchParams(location.search);
const place = document.createElement("gwb-walk") as GroundsWalk;
window.survey = survey;
place.site = "harness";
place.survey = survey;
place.system = query.get("units") === "us" ? "us" : "metric";
place.route = location.hash.slice(1);
if ("record" in read) place.weigh = weighWith(read.record);
place.addEventListener("change", (event) => {
  window.survey = (event as CustomEvent<{ survey: Survey }>).detail.survey;
  localStorage.setItem("harness", JSON.stringify(window.survey));
});
place.addEventListener("route", (event) => {
  history.replaceState(null, "", `#${(event as CustomEvent<{ route: string }>).detail.route}`);
});
document.querySelector("main")!.append(place);
