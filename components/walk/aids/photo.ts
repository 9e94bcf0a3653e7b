import { css, html, LitElement, nothing } from "lit";
import { countGreen } from "../../../src/survey/measuring/green.ts";
import { photoWords } from "../../../src/words/en/walk-aids.ts";
import { base, pressable } from "../../look/base.ts";
import { openPicture } from "../picture.ts";

/** Sides of the picture that is counted, px: more tells no more. */
const counted_px = 640;

/**
 * A photograph of one's own and the green in it: a help beside the eye. It is not kept and not sent.
 *
 * @fires green `{ green, pixels }`
 */
export class WalkPhoto extends LitElement {
  static override properties = { why: { state: true }, shown: { state: true }, marked: { state: true } };

  declare why: "too-large" | "no-picture" | "unread" | null;
  declare shown: boolean;
  declare marked: boolean;

  private picture: HTMLCanvasElement | null = null;

  static override styles = [
    base,
    pressable,
    css`
      :host {
        display: block;
        margin-top: 1rem;
      }
      .press {
        position: relative;
        min-height: 52px;
      }
      .press:focus-within {
        outline: 3px solid var(--tank);
        outline-offset: 3px;
      }
      input {
        position: absolute;
        inset: 0;
        width: 100%;
        height: 100%;
        opacity: 0;
        cursor: pointer;
      }
      canvas {
        display: block;
        width: 100%;
        max-width: 26rem;
        height: auto;
        margin-top: 0.8rem;
        border: 1px solid var(--ink);
      }
      .wrong {
        margin-top: 0.5rem;
        padding-inline-start: 0.7rem;
        border-inline-start: 3px solid var(--ink);
        font-weight: 600;
      }
      p {
        margin-top: 0.5rem;
      }
    `,
  ];

  constructor() {
    super();
    this.why = null;
    this.shown = false;
    this.marked = true;
  }

  protected override render() {
    return html`<label class="press">
        ${this.shown ? photoWords.another : photoWords.choose}
        <input type="file" accept="image/jpeg,image/png,image/webp" @change=${this.take} />
      </label>
      <p class="quiet">${photoWords.stays}</p>
      ${this.why ? html`<p class="wrong" role="alert">${photoWords.why[this.why]}</p>` : nothing}
      <canvas ?hidden=${!this.shown} role="img" aria-label=${photoWords.about}></canvas>
      ${
        this.shown
          ? html`<button class="plain" aria-pressed=${this.marked} @click=${this.turn}>
              ${this.marked ? photoWords.unmarked : photoWords.marked}
            </button>`
          : nothing
      }`;
  }

  private readonly take = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const opened = await openPicture(file, counted_px);
    input.value = "";
    this.why = "why" in opened ? opened.why : null;
    if ("why" in opened) return;
    this.picture = opened.canvas;
    const { green, pixels } = countGreen(this.data().data);
    this.shown = true;
    this.marked = true;
    await this.updateComplete;
    this.paint();
    this.dispatchEvent(new CustomEvent("green", { detail: { green, pixels } }));
  };

  private data(): ImageData {
    const { width, height } = this.picture!;
    return this.picture!.getContext("2d", { willReadFrequently: true })!.getImageData(0, 0, width, height);
  }

  private readonly turn = (): void => {
    this.marked = !this.marked;
    this.paint();
  };

  /** What is not counted as a leaf is faded, so that the eye can check the count. */
  private paint(): void {
    const canvas = this.renderRoot.querySelector("canvas")!;
    const data = this.data();
    canvas.width = data.width;
    canvas.height = data.height;
    if (this.marked) fade(data.data);
    canvas.getContext("2d")!.putImageData(data, 0, 0);
  }
}

function fade(rgba: Uint8ClampedArray): void {
  for (let i = 0; i < rgba.length; i += 4) {
    if (countGreen(rgba.subarray(i, i + 4)).green === 1) continue;
    const grey = (rgba[i]! + rgba[i + 1]! + rgba[i + 2]!) / 3;
    const pale = 205 + grey / 8;
    rgba[i] = pale;
    rgba[i + 1] = pale;
    rgba[i + 2] = pale;
  }
}

customElements.define("gwb-walk-photo", WalkPhoto);
