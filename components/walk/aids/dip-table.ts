import { css, html, LitElement } from "lit";
import { dipTable, type TankShape } from "../../../src/survey/measuring/tank-volume.ts";
import { dipWords } from "../../../src/words/en/walk-aids.ts";
import { base, pressable } from "../../look/base.ts";
import type { Walk } from "../context.ts";
import { printOnly } from "../print.ts";

/**
 * A tank's dip table: the stick's wet length and the litres, to hang beside the tank.
 *
 * @property walk
 * @property shape
 * @property to_m the greatest depth
 * @property name the tank's
 */
export class DipTable extends LitElement {
  static override properties = {
    walk: { attribute: false },
    shape: { attribute: false },
    to_m: { attribute: false },
    name: { attribute: false },
  };

  declare walk: Walk;
  declare shape: TankShape;
  declare to_m: number;
  declare name: string;

  static override styles = [
    base,
    pressable,
    css`
      summary {
        display: inline-flex;
        align-items: center;
        min-height: 44px;
        cursor: pointer;
        text-decoration: underline;
        text-decoration-thickness: 1px;
        text-underline-offset: 0.22em;
        list-style: none;
      }
      .scroll {
        max-height: 20rem;
        overflow: auto;
        border-block: 1px solid var(--ink);
      }
      table {
        border-collapse: collapse;
        min-width: 14rem;
      }
      th {
        position: sticky;
        top: 0;
        background: var(--paper);
        font-weight: 500;
        color: var(--grey);
      }
      th,
      td {
        padding: 0.3rem 1.5rem 0.3rem 0;
        text-align: end;
      }
      tr + tr td {
        border-top: 1px solid var(--hair);
      }
    `,
  ];

  protected override render() {
    return html`<details>
      <summary>${dipWords.title}</summary>
      <div class="scroll" tabindex="0" role="region" aria-label=${dipWords.title}>${this.table()}</div>
      <button class="plain" @click=${this.print}>${dipWords.print}</button>
    </details>`;
  }

  private table() {
    const { show } = this.walk;
    const us = this.walk.system === "us";
    const step_m = us ? 0.0254 * 2 : this.to_m > 3 ? 0.1 : 0.05;
    const lines = dipTable(this.shape, this.to_m, step_m);
    return html`<table>
      <thead>
        <tr><th scope="col">${dipWords.depth}</th><th scope="col">${dipWords.litres}</th></tr>
      </thead>
      <tbody>
        ${lines.map(
          ({ depth_m, litres }) =>
            html`<tr><td>${show(depth_m * 1000, "mm")}</td><td>${show(litres, "L")}</td></tr>`,
        )}
      </tbody>
    </table>`;
  }

  private readonly print = (): void =>
    printOnly(html`<h1>${dipWords.heading(this.name)}</h1>
    <p>${dipWords.how}</p>
    ${this.table()}`);
}

customElements.define("gwb-dip-table", DipTable);
