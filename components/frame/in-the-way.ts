import { html, nothing } from "lit";
import { frameWords } from "../../src/words/en/frame.ts";
import { fieldPath, sitePath } from "./route.ts";
import type { SiteModel } from "./site-model.ts";

const mostFaults = 12;

/** What stands in the way of the site's answer, and where to mend it; nothing while there is one or one is under way. */
export function inTheWay(model: SiteModel) {
  const { worked } = model;
  if (worked.is === "ready" || worked.is === "working") return nothing;
  if (worked.is === "not-reached")
    return html`<div class="in-the-way" role="alert">
      <h2>${frameWords.notReachedTitle}</h2>
      <p>${frameWords.notReached}</p>
      <p>
        <button type="button" class="plain" @click=${() => model.again()}>${frameWords.tryAgain}</button>
      </p>
    </div>`;
  if (worked.is === "crashed") return calculationStopped(worked.message);
  const { of, faults } = worked;
  const to = of === "survey" ? "survey" : "weather";
  const where = (path: string) =>
    of === "survey"
      ? html`<a href=${fieldPath(model.id, path)}><code>${path}</code></a>`
      : html`<code>${path}</code>`;
  return html`<div class="in-the-way" role="alert">
    <h2>${frameWords.wrong[of](faults.length)}</h2>
    <ol>
      ${faults.slice(0, mostFaults).map(({ path, sentence }) => html`<li>${path ? html`${where(path)} ` : nothing}${sentence}</li>`)}
    </ol>
    ${faults.length > mostFaults ? html`<p>${frameWords.more(faults.length - mostFaults)}</p>` : nothing}
    <p><a href=${sitePath(model.id, to)}>${of === "survey" ? frameWords.toSurvey : frameWords.toWeather}</a></p>
  </div>`;
}

/** The calculation itself stopped, which no entry can mend. */
export function calculationStopped(message: string) {
  return html`<div class="in-the-way" role="alert">
    <h2>${frameWords.failedTitle}</h2>
    <p>${frameWords.failed}</p>
    <p class="hint">${message}</p>
  </div>`;
}
