import type { SiteFile } from "../../files/site-document.ts";
import type { Store } from "./open.ts";
import { saveLog, saveWeather } from "./records.ts";
import { type SiteRow, siteRow } from "./sites.ts";
import { checkExpected, type Expected, saveDraft, saveSurvey } from "./surveys.ts";

/** The tag that stands for the whole of a site. */
export function wholeTag({ tag, weather_tag, log_tag }: SiteRow): string {
  return `${tag}.${weather_tag}.${log_tag}`;
}

/** Puts survey, record and log in the place of those kept, all or none. @returns the site's row after it */
export function replaceSite(store: Store, id: string, expected: Expected, site: SiteFile): SiteRow {
  return store.db
    .transaction(() => {
      checkExpected(wholeTag(siteRow(store, id)), expected);
      saveSurvey(store, id, "any", site.survey);
      if (site.draft) saveDraft(store, id, "any", site.draft.survey);
      saveWeather(store, id, "any", site.weather);
      saveLog(store, id, "any", site.log);
      return siteRow(store, id);
    })
    .immediate();
}
