import { css, html, LitElement, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { FirstPlace } from "../../src/survey/first/entries.ts";
import { placeEntry } from "../../src/words/en/first.ts";
import { fieldStyles } from "../fields/styles.ts";
import { type FoundPlace, findPlaces, LookUpRefused } from "../frame/lookups.ts";
import { base, pressable } from "../look/base.ts";
import { positionWords, readCoordinates } from "./place-reading.ts";

const pause_ms = 220;

/**
 * Where the garden is: a name that is looked up, coordinates, or the device's position.
 *
 * @property place the place chosen; null for none
 * @property error what is wrong with it from elsewhere
 * @fires change `{ place }`; null where it was taken out
 */
export class PlaceField extends LitElement {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };

  static override properties = {
    place: { attribute: false },
    error: { attribute: false },
    text: { state: true },
    found: { state: true },
    active: { state: true },
    says: { state: true },
    wrong: { state: true },
  };

  declare place: FirstPlace | null;
  declare error: string;
  declare text: string | null;
  declare found: readonly FoundPlace[];
  declare active: number;
  declare says: string;
  declare wrong: string;

  private timer: ReturnType<typeof setTimeout> | undefined;
  private asking: AbortController | null = null;

  static override styles = [
    base,
    pressable,
    fieldStyles,
    css`
      :host {
        position: relative;
      }
      input[type="text"] {
        width: 100%;
      }
      [role="listbox"] {
        position: absolute;
        z-index: 3;
        inset-inline: 0;
        margin: 0;
        padding: 0.2rem 0;
        border: 1.5px solid var(--ink);
        background: var(--leaf);
        list-style: none;
      }
      [role="option"] {
        display: flex;
        flex-wrap: wrap;
        gap: 0 0.6rem;
        padding: 0.4rem 0.8rem;
        cursor: pointer;
      }
      [role="option"][aria-selected="true"],
      [role="option"]:hover {
        background: var(--ink);
        color: var(--on-ink);
      }
      [role="option"][aria-selected="true"] .quiet,
      [role="option"]:hover .quiet {
        color: inherit;
      }
      .device {
        margin-top: 0.15rem;
        font-size: 0.92rem;
      }
      @media (pointer: coarse) {
        [role="option"] {
          min-height: 44px;
          align-items: center;
        }
      }
    `,
  ];

  constructor() {
    super();
    this.place = null;
    this.error = "";
    this.text = null;
    this.found = [];
    this.active = 0;
    this.says = "";
    this.wrong = "";
  }

  override disconnectedCallback(): void {
    clearTimeout(this.timer);
    this.asking?.abort();
    super.disconnectedCallback();
  }

  protected override render() {
    const isOpen = this.found.length > 0;
    const error = this.wrong || this.error;
    return html`<div class="entered ${error ? "wrong" : ""}">
      <label class="label" for="input">${placeEntry.label}</label>
      <p class="hint" id="hint">${placeEntry.hint}</p>
      <input
        id="input"
        type="text"
        role="combobox"
        dir="auto"
        autocomplete="off"
        spellcheck="false"
        aria-autocomplete="list"
        aria-expanded=${isOpen}
        aria-controls="list"
        aria-activedescendant=${isOpen ? `option-${this.active}` : nothing}
        aria-describedby="hint${error ? " error" : ""}"
        aria-invalid=${error ? "true" : "false"}
        .value=${live(this.text ?? this.place?.name ?? "")}
        @input=${this.typed}
        @keydown=${this.keys}
        @change=${this.left}
        @blur=${this.blurred}
      />
      <ul id="list" role="listbox" aria-label=${placeEntry.which} ?hidden=${!isOpen}>
        ${this.found.map((place, at) => this.option(place, at))}
      </ul>
      ${error ? html`<p class="error" id="error">${error}</p>` : nothing}
      <p class="hint" role="status">${this.says}</p>
      ${
        "geolocation" in navigator
          ? html`<p class="device">
              <button type="button" class="plain" aria-describedby="device" @click=${this.useDevice}>
                ${placeEntry.device}
              </button>
              <span class="unseen" id="device">${placeEntry.deviceHint}</span>
            </p>`
          : nothing
      }
    </div>`;
  }

  private option(place: FoundPlace, at: number) {
    const choose = (event: Event) => {
      event.preventDefault();
      this.choose(place);
    };
    return html`<li
      id="option-${at}"
      role="option"
      aria-selected=${at === this.active}
      @mousedown=${choose}
    >
      <bdi>${place.name}</bdi> <span class="quiet">${[place.region, place.country].filter(Boolean).join(", ")}</span>
    </li>`;
  }

  private readonly typed = (event: Event): void => {
    event.stopPropagation();
    const text = (event.target as HTMLInputElement).value;
    this.text = text;
    this.wrong = "";
    this.says = "";
    this.found = [];
    clearTimeout(this.timer);
    this.asking?.abort();
    if (text.trim().length < 2 || readCoordinates(text) !== null) return;
    this.timer = setTimeout(() => void this.lookUp(text.trim()), pause_ms);
  };

  private async lookUp(text: string): Promise<void> {
    this.asking?.abort();
    const asking = new AbortController();
    this.asking = asking;
    this.says = placeEntry.looking;
    try {
      const found = await findPlaces(text, asking.signal);
      this.found = found;
      this.active = 0;
      this.says = "";
      if (found.length === 0) this.wrong = placeEntry.none(text);
    } catch (error) {
      if (asking.signal.aborted) return;
      this.says = "";
      this.wrong = error instanceof LookUpRefused ? error.message : placeEntry.notReached;
    }
  }

  private readonly keys = (event: KeyboardEvent): void => {
    const { length } = this.found;
    if (event.key === "Escape" && length > 0) this.found = [];
    else if (event.key === "ArrowDown" && length > 0) this.active = (this.active + 1) % length;
    else if (event.key === "ArrowUp" && length > 0) this.active = (this.active + length - 1) % length;
    else if (event.key === "Enter" && length > 0) this.choose(this.found[this.active]!);
    else return;
    event.preventDefault();
  };

  /** Coordinates count when the field is left; so does taking the place out. */
  private readonly left = (event: Event): void => {
    event.stopPropagation();
    const text = (this.text ?? "").trim();
    if (this.text === null) return;
    const read = text === "" ? null : readCoordinates(text);
    if (read === "wrong") this.wrong = placeEntry.wanted;
    else if (read || text === "") this.tell(read);
  };

  private readonly blurred = (): void => {
    this.found = [];
  };

  private choose({ name, region, latitude, longitude, timeZone }: FoundPlace): void {
    this.tell({ name: placeEntry.line(name, region ?? ""), latitude, longitude, timeZone });
  }

  private readonly useDevice = (): void => {
    this.says = placeEntry.looking;
    this.wrong = "";
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => {
        // a thousandth of a degree is enough for weather, and says less of anybody
        const round = (degrees: number) => Math.round(degrees * 1000) / 1000;
        const [latitude, longitude] = [round(coords.latitude), round(coords.longitude)];
        this.tell({ name: positionWords(latitude, longitude), latitude, longitude });
      },
      () => {
        this.says = "";
        this.wrong = placeEntry.deviceRefused;
      },
      { timeout: 20_000, maximumAge: 600_000 },
    );
  };

  private tell(place: FirstPlace | null): void {
    this.place = place;
    this.text = null;
    this.found = [];
    this.says = "";
    this.wrong = "";
    this.dispatchEvent(new CustomEvent("change", { detail: { place }, bubbles: true }));
  }
}

customElements.define("gwb-place-field", PlaceField);
