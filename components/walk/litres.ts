import { css, html, LitElement, nothing, type PropertyValues } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import { litresWords } from "../../src/words/en/walk-aids.ts";
import { base } from "../look/base.ts";
import type { Walk, Weighed } from "./context.ts";

/**
 * What a reading means in litres: a bed's need with it, once it has been worked out.
 *
 * @property walk
 * @property candidate the survey with the reading in it; null for none
 * @property bed the bed's id
 * @property open the survey with an open sky over the bed, to compare; null for none
 * @property plants how many plants it has, to say litres a plant
 */
export class WalkLitres extends LitElement {
  static override properties = {
    walk: { attribute: false },
    candidate: { attribute: false },
    bed: { attribute: false },
    plants: { attribute: false },
    open: { attribute: false },
    weighed: { state: true },
    weighedOpen: { state: true },
  };

  declare walk: Walk;
  declare candidate: Survey | null;
  declare bed: string;
  declare plants: number | null;
  declare open: Survey | null;
  declare weighed: Weighed | null;
  /** The same under an open sky. */
  declare weighedOpen: Weighed | null;

  private turn = 0;

  static override styles = [
    base,
    css`
      p {
        margin-top: 0.4rem;
      }
    `,
  ];

  constructor() {
    super();
    this.candidate = null;
    this.bed = "";
    this.plants = null;
    this.open = null;
    this.weighed = null;
    this.weighedOpen = null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("candidate")) void this.ask();
  }

  /** Waits for the hand to rest: typing is not held up. */
  private async ask(): Promise<void> {
    const turn = ++this.turn;
    await new Promise((done) => setTimeout(done, 250));
    const { weigh } = this.walk;
    if (turn !== this.turn) return;
    const weighed = this.candidate && weigh ? await weigh(this.candidate).catch(() => null) : null;
    const open = this.open && weighed && weigh ? await weigh(this.open).catch(() => null) : null;
    if (turn !== this.turn) return;
    this.weighed = weighed;
    this.weighedOpen = open;
  }

  protected override render() {
    const litres = this.weighed?.beds.get(this.bed);
    if (litres === undefined) return nothing;
    const openSky = this.weighedOpen?.beds.get(this.bed);
    const show = this.walk.about;
    return html`<p>
      ${litresWords.bedNeeds(show(litres, "L"))}${
        openSky === undefined ? nothing : ` ${litresWords.openSky(show(openSky, "L"))}`
      }${this.plants ? ` ${litresWords.aPlant(show(litres / this.plants, "L"))}` : nothing}
    </p>`;
  }
}

customElements.define("gwb-walk-litres", WalkLitres);
