import { css, html, nothing } from "lit";
import type { ThirstBed, ThirstView } from "../../src/report/thirst-view.ts";
import { thirst } from "../../src/words/en/thirst.ts";
import { sitePath } from "../frame/route.ts";
import { ViewedPlace } from "../frame/viewed-place.ts";
import { printPages } from "../look/print-pages.ts";
import { inOrder } from "./order/prepare.ts";
import "./thirst.ts";

const words = thirst.forClass;

/** What each bed of a kept site needs. Its address names the bed and the year: `/thirst/oval/2015`. */
export class ThirstPlace extends ViewedPlace<ThirstView> {
  static override styles = [
    ...ViewedPlace.styles,
    css`
      .for-class .lead {
        margin-block: 0.7rem 1rem;
      }
      @media print {
        .for-class {
          display: none;
        }
      }
    `,
  ];

  protected override look() {
    return this.model.thirst();
  }

  protected override sheet() {
    const { seen, app, rest } = this;
    if (!seen) return null;
    const { bed, year } = readChosen(rest);
    const shown = seen.beds.find(({ id }) => id === bed) ?? inOrder(seen.beds, "all")[0];
    return html`<gwb-thirst
      .view=${seen}
      .say=${app.say}
      .explain=${this.explain}
      .ask=${this.ask}
      .bed=${bed}
      .year=${year}
      @gwb-choose=${this.choose}
    ></gwb-thirst>${shown ? this.forClass(shown) : nothing}`;
  }

  /** The same bed's week as a class works it by hand. */
  private forClass({ id, name }: ThirstBed) {
    return html`<section class="section for-class" aria-labelledby="for-class">
      <h2 id="for-class">${words.name}</h2>
      <p class="lead">${words.words}</p>
      <p><button type="button" class="press" @click=${() => void this.printSheet(id, name)}>${words.print(name)}</button></p>
    </section>`;
  }

  private async printSheet(bed: string, name: string): Promise<void> {
    const sheet = await this.model.classSheet(bed, this.app.say.system);
    if (sheet === null) this.app.speak(words.none(name));
    else printPages(sheet);
  }

  private readonly choose = ({ detail }: CustomEvent<{ bed: string | null; year: number | null }>): void => {
    const chosen = [detail.bed ?? allBeds, ...(detail.year === null ? [] : [detail.year])].join("/");
    this.app.go(sitePath(this.model.id, this.place, chosen), { replace: true });
  };
}

/** Stands in an address for all beds together; no id begins with it. */
const allBeds = "-";

function readChosen(rest: string): { bed: string | null | undefined; year: number | undefined } {
  const [bed = "", year = ""] = rest.split("/");
  return {
    bed: bed === "" ? undefined : bed === allBeds ? null : bed,
    year: /^\d{4}$/.test(year) ? Number(year) : undefined,
  };
}

customElements.define("gwb-thirst-place", ThirstPlace);
