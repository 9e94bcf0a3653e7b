import { html, nothing } from "lit";
import { measuresPage } from "../../../src/words/en/choices-measures.ts";
import { choicesPage } from "../../../src/words/en/choices-page.ts";
import { weatherName } from "../../../src/words/en/choices-reasons.ts";
import { entry } from "../entry.ts";
import { cell, figures, openedBelow } from "../opening.ts";
import type { Screen } from "../screen.ts";
import { mostOwn, type OwnWeather } from "../state.ts";
import { setName } from "../verdict.ts";

const words = choicesPage.weather;
/** Degrees Fahrenheit in a degree Celsius of warming. */
const fahrenheit = 1.8;

/** The same decision under other weather, and what breaks first. */
export function weatherPart(screen: Screen) {
  const { choices, isStale } = screen;
  return html`<section id="weather" tabindex="-1" aria-labelledby="weather-name">
    <h2 id="weather-name">${choicesPage.parts.weather}</h2>
    <div class="spread">
      <div class="main">
        <p class="lead">${words.lead}</p>
        ${isStale ? html`<p class="quiet">${choicesPage.stale}</p>` : nothing}
      </div>
      <div class="margin">
        <details class="screen-only">
          <summary>${words.ask}</summary>
          ${ask(screen)}
        </details>
      </div>
    </div>
    <div class="scroll" tabindex="0" role="region" aria-label=${words.caption}>
      <table class="ruled">
        <caption>${words.caption}</caption>
        <thead><tr>${words.columns.map((column, k) => html`<th scope="col" class=${k > 3 ? "text" : ""}>${column}</th>`)}</tr></thead>
        <tbody>${choices.scenarios.map((row) => line(screen, row))}</tbody>
      </table>
    </div>
  </section>`;
}

/** Each figure opens to the same one of the grounds run under that weather. */
function line(screen: Screen, row: Screen["choices"]["scenarios"][number]) {
  const { choices, said, say } = screen;
  const { code } = row;
  const change = choices.wouldChange.find(({ what, of }) => what === "weather" && of === code);
  const [asIs] = choices.scenarios;
  const met = (of: typeof row) =>
    of.reliability.find(({ tank }) => tank === row.breaksFirst)?.reliability ?? 0;
  const key = `weather-${code}`;
  const at = (figure: string) => `choices/under/${code}/${figure}`;
  const middle = row.giveUp_kL_year.p50;
  const rain = `${say.number(say.depthValue(row.rain_mm_year), say.system === "us" ? 1 : 0)} ${say.depthSymbol}`;
  const share = (of: typeof row) =>
    said.opens(say.share(met(of)), `choices/met/${of.code}/${row.breaksFirst}`);
  return html`<tr>
      <th scope="row">${weatherName(code, say.system)}</th>
      ${cell(screen, key, rain, at("rain"))}
      ${cell(screen, key, said.water(row.plan_kL_year), at("mains/plan"))}
      ${cell(screen, key, middle === null ? "–" : said.water(middle), middle === null ? null : at("mains/give-up"))}
      <td class="text">${change?.isChange ? setName(row.measures, said) : words.stays}</td>
      <td class="text">${
        row.breaksFirst === null
          ? words.nothingBreaks
          : figures(words.breaks(said.tank(row.breaksFirst), share(asIs!), share(row)), screen)
      }</td>
    </tr>
    ${openedBelow(screen, key, words.columns.length)}`;
}

/** The user's own factors. */
function ask(screen: Screen) {
  const { state, acts, say } = screen;
  const { own } = state;
  const degree = say.system === "us" ? fahrenheit : 1;
  const between = (low: number, high: number) => ({
    low,
    high,
    fault: (typed: string) => measuresPage.wantBetween(say.number(low), say.number(high), typed),
  });
  const put = (change: Partial<OwnWeather>, isDone: boolean) => {
    if (isDone) acts.state({ own: { ...own, ...change } });
  };
  return html`${words.rain.map((label, season) =>
    entry(screen, {
      ...between(0, mostOwn.rain * 100),
      field: `own-rain-${season}`,
      label,
      unit: words.rainUnit,
      value: own.rain[season]! * 100,
      take: (value, isDone) => {
        const at = (k: number) => (k === season ? (value ?? 100) / 100 : own.rain[k]!);
        put({ rain: [at(0), at(1), at(2), at(3)] }, isDone);
      },
    }),
  )}
  ${entry(screen, {
    ...between(-mostOwn.warmer_c * degree, mostOwn.warmer_c * degree),
    field: "own-warmer",
    label: words.warmer,
    unit: words.warmerUnit[say.system],
    value: own.warmer_c * degree,
    take: (value, isDone) => put({ warmer_c: (value ?? 0) / degree }, isDone),
  })}
  ${entry(screen, {
    ...between(1, mostOwn.spells),
    field: "own-spells",
    label: words.spells,
    unit: words.spellsUnit,
    value: own.spells,
    take: (value, isDone) => put({ spells: value ?? 1 }, isDone),
  })}`;
}
