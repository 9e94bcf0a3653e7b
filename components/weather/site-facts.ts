import { html } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import type { UnitSystem } from "../../src/units.ts";
import { weatherPlaceWords as words } from "../../src/words/en/frame.ts";
import "../fields/choice.ts";
import "../fields/entry.ts";
import { quantityWriting } from "../fields/writing/quantity.ts";
import type { SiteWeather } from "../frame/site-weather.ts";

type Site = Survey["site"];
type Change = (survey: Survey) => Survey;

/** Height, time zone and coast: what was said, or the map's guess that stands in, plainly called one. */
export function siteFacts(
  survey: Survey,
  weather: SiteWeather | null,
  system: UnitSystem,
  put: (change: Change) => void,
) {
  const { site } = survey;
  const place = weather && "place" in weather ? weather.place : null;
  const height = quantityWriting({ unit: "m", system });
  const set = (part: Partial<Record<keyof Site, unknown>>) =>
    put((now) => {
      const entries = Object.entries({ ...now.site, ...part }).filter(([, value]) => value !== undefined);
      return { ...now, site: Object.fromEntries(entries) as Site };
    });
  const guess = (value: string | undefined) => (value === undefined ? "" : words.guess(value));
  return html`
    <gwb-entry
      .label=${words.elevation}
      .text=${site.elevation_m === undefined ? "" : height.show(site.elevation_m)}
      .unit=${height.unit}
      .keys=${"decimal"}
      .width=${9}
      .standing=${site.elevation_m === undefined ? guess(place ? `${height.show(Math.round(place.guesses.elevation_m))} ${height.unit}` : undefined) : ""}
      .origin=${site.elevation_m === undefined ? "assumed" : "entered"}
      @change=${(event: CustomEvent<{ text: string }>) => {
        event.stopPropagation();
        const read = height.read(event.detail.text);
        if ("value" in read) set({ elevation_m: read.value });
      }}
    ></gwb-entry>
    <gwb-entry
      .label=${words.timeZone}
      .text=${site.timeZone ?? ""}
      .width=${24}
      .choices=${zones}
      .standing=${site.timeZone === undefined ? guess(place?.timeZone) : ""}
      .origin=${site.timeZone === undefined ? "assumed" : "entered"}
      @change=${(event: CustomEvent<{ text: string }>) => {
        event.stopPropagation();
        const text = event.detail.text.trim();
        if (text === "" || zones.includes(text)) set({ timeZone: text || undefined });
      }}
    ></gwb-entry>
    <gwb-choice
      .label=${words.coastal}
      .options=${[
        { value: true, words: words.coastalYes },
        { value: false, words: words.coastalNo },
        { value: undefined, words: words.leaveToMap },
      ]}
      .value=${site.coastal}
      .isShort=${true}
      .standing=${
        site.coastal === undefined && place
          ? guess(place.guesses.coastal ? words.coastalYes : words.coastalNo)
          : ""
      }
      @change=${(event: CustomEvent<{ value: boolean | undefined }>) => {
        event.stopPropagation();
        set({ coastal: event.detail.value });
      }}
    ></gwb-choice>
  `;
}

const zones: readonly string[] = Intl.supportedValuesOf("timeZone");
