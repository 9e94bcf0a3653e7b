import { html } from "lit";
import type { TanksView } from "../../src/report/tanks-view.ts";
import { sitePath } from "../frame/route.ts";
import { ViewedPlace } from "../frame/viewed-place.ts";
import "./tanks.ts";

/** What roofs and tanks of a kept site bring. Its address names the year: `/tanks/2015`. */
export class TanksPlace extends ViewedPlace<TanksView> {
  protected override look() {
    return this.model.tanks();
  }

  protected override sheet() {
    const { seen, app, rest } = this;
    if (!seen) return null;
    return html`<gwb-tanks
      .view=${seen}
      .say=${app.say}
      .explain=${this.explain}
      .ask=${this.ask}
      .year=${/^\d{4}$/.test(rest) ? Number(rest) : undefined}
      @gwb-choose=${this.choose}
    ></gwb-tanks>`;
  }

  private readonly choose = ({ detail }: CustomEvent<{ year: number }>): void => {
    this.app.go(sitePath(this.model.id, this.place, String(detail.year)), { replace: true });
  };
}

customElements.define("gwb-tanks-place", TanksPlace);
