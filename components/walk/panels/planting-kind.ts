import { html, LitElement } from "lit";
import { thirstPanelWords } from "../../../src/words/en/walk-aids.ts";
import { plantKinds } from "../../../src/words/en/walk-answers.ts";
import type { Walk } from "../context.ts";
import type { Stop } from "../stops.ts";
import { walkStyles } from "../styles.ts";

/** Which planting of a bed a stop is about. */
class PlantingKind extends LitElement {
  static override properties = { walk: { attribute: false }, stop: { attribute: false } };

  declare walk: Walk;
  declare stop: Stop;

  static override styles = walkStyles;

  protected override render() {
    const { plantings } = this.walk.survey.beds[this.stop.index]!;
    const { kind } = plantings[this.stop.planting]!;
    return html`<p class="note">
      ${thirstPanelWords.planting(plantKinds[kind] ?? kind, this.stop.planting + 1, plantings.length)}
    </p>`;
  }
}

customElements.define("gwb-planting-kind", PlantingKind);
