import { html } from "lit";
import type { ThirstView } from "../../src/report/thirst-view.ts";
import { sitePath } from "../frame/route.ts";
import { ViewedPlace } from "../frame/viewed-place.ts";
import "./thirst.ts";

/** What each bed of a kept site needs. Its address names the bed and the year: `/thirst/oval/2015`. */
export class ThirstPlace extends ViewedPlace<ThirstView> {
  protected override look() {
    return this.model.thirst();
  }

  protected override sheet() {
    const { seen, app, rest } = this;
    if (!seen) return null;
    const { bed, year } = readChosen(rest);
    return html`<gwb-thirst
      .view=${seen}
      .say=${app.say}
      .explain=${this.explain}
      .ask=${this.ask}
      .bed=${bed}
      .year=${year}
      @gwb-choose=${this.choose}
    ></gwb-thirst>`;
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
