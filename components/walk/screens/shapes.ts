import { css, html, nothing } from "lit";
import { type DrawnShapes, readGeoJson, writeGeoJson } from "../../../src/files/geojson.ts";
import { withNew } from "../../../src/survey/edit/add.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { shapeFileWords as words } from "../../../src/words/en/walk-more.ts";
import { keepTaken, setField } from "../keep.ts";
import { saveText } from "../save.ts";
import { Screen } from "../screen.ts";

/** Shapes of a GeoJSON file taken into the survey, and the survey's outlines written as one. */
export class ShapesScreen extends Screen {
  static override properties = {
    ...Screen.properties,
    read: { state: true },
    targets: { state: true },
    taken: { state: true },
  };

  declare read: DrawnShapes | null;
  /** What each shape is: "", new-bed, new-roof, beds/ID, roofs/ID. */
  declare targets: readonly string[];
  declare taken: number;

  static override styles = [
    ...Screen.styles,
    css`
      .press {
        position: relative;
        align-self: start;
        margin-top: 1rem;
      }
      .press:focus-within {
        outline: 3px solid var(--tank);
        outline-offset: 3px;
      }
      .press input {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        opacity: 0;
        cursor: pointer;
      }
      .shape {
        padding: 0.7rem 0;
        border-bottom: 1px solid var(--hair);
      }
    `,
  ];

  constructor() {
    super();
    this.read = null;
    this.targets = [];
    this.taken = 0;
  }

  protected override render() {
    const { read } = this;
    const hasOutlines = outlinesOf(this.walk.survey).length > 0;
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${words.heading}</h2>
      <p class="lead">${words.lead}</p>
      <label class="press">${words.choose}
        <input type="file" accept=".geojson,.json,application/geo+json,application/json" @change=${this.choose} />
      </label>
      <p class="hint">${words.stays}</p>
      ${read ? this.found(read) : nothing}
      ${this.taken > 0 ? html`<p class="result" role="status">${words.taken(this.taken)}</p>` : nothing}
      <div class="grow"></div>
      <div class="foot">
        ${read && read.shapes.length > 0 ? html`<button class="main" ?disabled=${this.targets.every((target) => target === "")} @click=${this.take}>${words.take}</button>` : nothing}
        ${
          hasOutlines
            ? html`<button class="plain" @click=${this.save}>${words.save}</button>`
            : html`<p class="hint">${words.noOutlines}</p>`
        }
      </div>
    </section>`;
  }

  private readonly choose = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    this.read = readGeoJson(await file.text());
    this.targets = this.read.shapes.map(({ name }) => this.likely(name));
    this.taken = 0;
    input.value = "";
  };

  /** A shape named as a bed or roof is that one. */
  private likely(name: string): string {
    const { beds, roofs } = this.walk.survey;
    const same = (row: { name: string }) => row.name.toLowerCase() === name.toLowerCase();
    const [bed, roof] = [beds.find(same), roofs.find(same)];
    return bed ? `beds/${bed.id}` : roof ? `roofs/${roof.id}` : "new-bed";
  }

  private found({ shapes, faults }: DrawnShapes) {
    const { beds, roofs } = this.walk.survey;
    return html`${faults.map(({ at, code, facts }) => {
      const fault = words.faults[code]!(facts);
      return html`<p class="wrong" role="alert">${at === null ? fault : words.shapeFault(at + 1, fault)}</p>`;
    })}
      ${shapes.length > 0 ? html`<h3>${words.found(shapes.length)}</h3>` : nothing}
      ${shapes.map(
        ({ name, area_m2, perimeter_m }, i) => html`<div class="shape">
          <p><strong><bdi>${name || words.unnamed(i + 1)}</bdi></strong>: ${this.walk.show(area_m2, "m²")},
            ${words.perimeter(this.walk.show(perimeter_m, "m"))}</p>
          <label>${words.is}
            <select @change=${(event: Event) => this.aim(i, (event.target as HTMLSelectElement).value)}>
              ${[
                ["", words.nothing],
                ["new-bed", words.newBed],
                ["new-roof", words.newRoof],
                ...beds.map(({ id, name: bed }) => [`beds/${id}`, bed]),
                ...roofs.map(({ id, name: roof }) => [`roofs/${id}`, roof]),
              ].map(
                ([value, text]) =>
                  html`<option value=${value!} .selected=${this.targets[i] === value}>${text}</option>`,
              )}
            </select>
          </label>
        </div>`,
      )}`;
  }

  private aim(shape: number, target: string): void {
    this.targets = this.targets.with(shape, target);
  }

  private readonly take = (): void => {
    const named = this.walk.withGroup();
    let survey: Survey = named.survey;
    this.read!.shapes.forEach((shape, i) => {
      const target = this.targets[i]!;
      if (target === "") return;
      const name = shape.name || words.unnamed(i + 1);
      let [list, id] = target.split("/") as ["beds" | "roofs", string];
      if (target.startsWith("new-")) {
        list = target === "new-bed" ? "beds" : "roofs";
        const made = withNew(survey, list, name, { area_m2: shape.area_m2 });
        survey = made.document as unknown as Survey;
        id = made.id;
      }
      const at = `${list}[${survey[list].findIndex((row) => row.id === id)}]`;
      const taken = { at: `${at}.area_m2`, also: [], how: "map file", readings: [], word: shape.area_m2 };
      survey = keepTaken(survey, { ...taken, group: named.group, when: this.walk.now() }) ?? survey;
      survey = setField(survey, `${at}.outline_m`, shape.outline_m);
    });
    this.taken = this.targets.filter((target) => target !== "").length;
    this.read = null;
    this.walk.change(survey);
  };

  private readonly save = (): void => {
    const { site } = this.walk.survey;
    const text = writeGeoJson([site.longitude, site.latitude], outlinesOf(this.walk.survey));
    saveText("outlines.geojson", "application/geo+json", text);
  };
}

function outlinesOf({ beds, roofs }: Survey) {
  return [...beds, ...roofs].flatMap(({ name, outline_m }) => (outline_m ? [{ name, outline_m }] : []));
}

customElements.define("gwb-walk-shapes", ShapesScreen);
