import { html } from "lit";
import type { FirstEntries } from "../../src/survey/first/entries.ts";
import { gardenEntry, mulchEntry, roofEntry, tankEntry } from "../../src/words/en/first.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { Begun } from "./begun.ts";
import { readSize, type SizeName, shownText, sizeUnit } from "./sizes.ts";

export interface EntryParts {
  begun: Begun;
  say: Formatter;
  /** Takes entries in, with what was typed for them; an undefined one is taken out. */
  put(entries: Partial<Record<keyof FirstEntries, unknown>>, typed?: Readonly<Record<string, string>>): void;
}

/** The entries, in the order asked. */
export function allEntries(parts: EntryParts) {
  const { begun, say, put } = parts;
  const { place, thirst, grass = false, mulched, tank, today } = begun.entries;
  return html`
      <div class="entry half" data-entry="place">
        <gwb-place-field
          .place=${place ?? null}
          @change=${(event: CustomEvent) => put({ place: event.detail.place ?? undefined })}
        ></gwb-place-field>
      </div>
      <div class="entry half" data-entry="garden">${size(parts, "garden", gardenEntry, "garden_m2")}</div>
      <div class="entry whole" data-entry="thirst">
        <gwb-thirst-field
          .value=${thirst}
          .grass=${grass}
          @change=${(event: CustomEvent) => put({ thirst: event.detail.thirst, grass: event.detail.grass || undefined })}
        ></gwb-thirst-field>
      </div>
      <div class="entry" data-entry="mulch">
        <gwb-choice
          .label=${mulchEntry.label}
          .hint=${mulchEntry.hint}
          .options=${[{ value: true, words: mulchEntry.yes }, { value: false, words: mulchEntry.no }]}
          .value=${mulched}
          @change=${(event: CustomEvent) => put({ mulched: event.detail.value })}
        ></gwb-choice>
      </div>
      <div class="entry" data-entry="roof">${size(parts, "roof", roofEntry, "roof_m2")}</div>
      <div class="entry" data-entry="tank">
        ${size(parts, "tank", tankEntry, "tank")}
        <gwb-choice
          .label=${tankEntry.which}
          .options=${[{ value: true, words: tankEntry.there }, { value: false, words: tankEntry.thought }]}
          .value=${tank?.isThere ?? begun.typed.tankIsThere !== "no"}
          .isShort=${true}
          @change=${(event: CustomEvent) => {
            const isThere = event.detail.value === true;
            put(tank ? { tank: { ...tank, isThere } } : {}, { tankIsThere: isThere ? "yes" : "no" });
          }}
        ></gwb-choice>
      </div>
      <div class="entry whole" data-entry="today">
      <gwb-today-field
        .today=${today}
        .typed=${begun.typed}
        .system=${say.system}
        @change=${(event: CustomEvent) => put({ today: event.detail.today }, event.detail.typed)}
      ></gwb-today-field>
    </div>
    `;
}

function size(
  { begun, say, put }: EntryParts,
  name: SizeName,
  words: { label: string; hint: string },
  field: "garden_m2" | "roof_m2" | "tank",
) {
  const { system } = say;
  const text = shownText(name, begun.typed, system);
  const read = readSize(name, text, system);
  const change = (event: CustomEvent<{ text: string }>) => {
    const typed = { [name]: event.detail.text, [`${name}-in`]: system };
    const now = readSize(name, event.detail.text, system);
    const value = "value" in now ? now.value : undefined;
    const isThere = begun.typed.tankIsThere !== "no";
    const entry = field === "tank" && value !== undefined ? { capacity_L: value, isThere } : value;
    put({ [field]: entry }, typed);
  };
  return html`<gwb-entry
      .label=${words.label}
      .hint=${words.hint}
      .text=${text}
      .unit=${sizeUnit(name, system)}
      .keys=${"decimal"}
      .width=${9}
      .error=${"wrong" in read ? read.wrong : ""}
      @change=${change}
    ></gwb-entry>`;
}
