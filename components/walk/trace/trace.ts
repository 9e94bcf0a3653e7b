import { html, LitElement, nothing, type PropertyValues } from "lit";
import type { Corner } from "../../../src/survey/measuring/polygon.ts";
import { traceWords } from "../../../src/words/en/walk-trace.ts";
import { base, pressable } from "../../look/base.ts";
import { asBlob, openPicture } from "../picture.ts";
import type { WalkStore } from "../store.ts";
import { dropTemplate, toolsTemplate } from "./drop.ts";
import { actionOf } from "./keys.ts";
import { marksOf } from "./marks.ts";
import {
  did,
  emptyTrace,
  nearest,
  snapped,
  spread,
  type Traced,
  type Tracing,
  toPicture,
  undone,
  type View,
  wholeView,
  zoomed,
} from "./state.ts";
import { traceStyles } from "./styles.ts";

/** The longer side of the picture kept, and how near a mouse or a key snaps on the screen, px. */
const [most_px, reach_px] = [3000, 14];

/**
 * A plan or photograph of one's own, to mark a known length and then a shape on, by mouse, finger or keys. The picture
 * stays on the machine.
 *
 * @property store keeps the picture
 * @property picture its key in the store
 * @property traced what is marked so far, in pixels of the picture
 * @property setting whether the known length or the shape is being marked
 * @property outlines shapes before, to snap to
 * @fires trace `{ traced, height_px }`
 */
export class WalkTrace extends LitElement {
  static override properties = {
    store: { attribute: false },
    picture: { attribute: false },
    traced: { attribute: false },
    setting: { attribute: false },
    outlines: { attribute: false },
    url: { state: true },
    size: { state: true },
    why: { state: true },
    view: { state: true },
    tracing: { state: true },
    cross: { state: true },
    over: { state: true },
  };

  declare store: WalkStore;
  declare picture: string;
  declare traced: Traced;
  declare setting: "known" | "corners";
  declare outlines: readonly (readonly Corner[])[];
  declare url: string;
  declare size: { width: number; height: number } | null;
  declare why: "too-large" | "no-picture" | "unread" | null;
  declare view: View;
  declare tracing: Tracing;
  /** The keys' crosshair, px of the screen; null until keys are used. */
  declare cross: Corner | null;
  declare over: boolean;

  private fingers = new Map<number, Corner>();
  private held: { list: "known" | "corners"; at: number } | null = null;
  private moved = false;

  static override styles = [base, pressable, traceStyles];

  constructor() {
    super();
    this.traced = emptyTrace;
    this.setting = "known";
    this.outlines = [];
    this.url = "";
    this.size = null;
    this.why = null;
    this.view = wholeView;
    this.tracing = { now: emptyTrace, past: [] };
    this.cross = null;
    this.over = false;
  }

  override disconnectedCallback(): void {
    URL.revokeObjectURL(this.url);
    super.disconnectedCallback();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has("traced") && this.traced !== this.tracing.now)
      this.tracing = { now: this.traced, past: [] };
    if (changed.has("picture")) void this.takeUp();
  }

  private async takeUp(): Promise<void> {
    const kept = await this.store.picture(this.picture);
    if (kept) await this.show(kept);
  }

  private async show(blob: Blob): Promise<void> {
    const opened = await openPicture(blob, most_px);
    this.why = "why" in opened ? opened.why : null;
    if ("why" in opened) return;
    const { width, height } = opened.canvas;
    const own = await asBlob(opened.canvas);
    await this.store.keepPicture(this.picture, own);
    URL.revokeObjectURL(this.url);
    this.url = URL.createObjectURL(own);
    this.size = { width, height };
    await this.updateComplete;
    const wide = this.board!.clientWidth;
    this.view = { scale: wide / width, x: 0, y: 0 };
    this.tell();
  }

  private get board(): HTMLElement | null {
    return this.renderRoot.querySelector<HTMLElement>(".board");
  }

  /** Set by script, for the page's policy lets no style stand in an attribute. */
  protected override updated(): void {
    if (this.board && this.size) this.board.style.aspectRatio = `${this.size.width} / ${this.size.height}`;
  }

  protected override render() {
    return html`${this.size ? this.drawBoard(this.size) : this.drop()}
    ${this.why ? html`<p class="wrong" role="alert">${traceWords.why[this.why]}</p>` : nothing}`;
  }

  private drop() {
    return dropTemplate(
      this.over,
      (over) => {
        this.over = over;
      },
      (file) => void this.show(file),
    );
  }

  private drawBoard({ width, height }: { width: number; height: number }) {
    const { scale, x, y } = this.view;
    return html`<div
        class="board"
        role="application"
        tabindex="0"
        aria-label=${this.setting === "known" ? traceWords.markKnown : traceWords.markCorners}
        aria-describedby="keys"
        @pointerdown=${this.down}
        @pointermove=${this.move}
        @pointerup=${this.up}
        @pointercancel=${this.cancel}
        @wheel=${this.wheel}
        @keydown=${this.key}
      >
        <svg class="sheet" width="100%" height="100%">
          <g transform="translate(${x} ${y}) scale(${scale})"><image href=${this.url} width=${width} height=${height} /></g>
          ${marksOf(this.view, this.tracing.now, this.outlines, this.cross)}
        </svg>
      </div>
      ${toolsTemplate({
        canUndo: this.tracing.past.length > 0,
        zoom: this.zoom,
        undo: this.undo,
        clear: this.clear,
        take: (file) => void this.show(file),
      })}
      <p class="quiet" id="keys">${traceWords.keys}</p>
      <p class="unseen" role="status">${traceWords.said(this.tracing.now.known.length, this.tracing.now.corners.length)}</p>`;
  }

  private at(event: { clientX: number; clientY: number }): Corner {
    const box = this.board!.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  }

  private readonly down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const at = this.at(event);
    this.board!.setPointerCapture(event.pointerId);
    this.fingers.set(event.pointerId, at);
    this.moved = false;
    this.cross = null;
    const reach = event.pointerType === "mouse" ? reach_px : 2 * reach_px;
    const on =
      this.fingers.size === 1
        ? nearest(toPicture(this.view, at), this.tracing.now[this.setting], reach / this.view.scale)
        : null;
    this.held = on === null ? null : { list: this.setting, at: on };
  };

  private readonly move = (event: PointerEvent): void => {
    const before = this.fingers.get(event.pointerId);
    if (!before) return;
    const now = this.at(event);
    if (!this.moved && Math.hypot(now[0] - before[0], now[1] - before[1]) < 6 && this.fingers.size === 1)
      return;
    if (this.held) this.drag(now);
    else if (this.fingers.size === 2) this.pinch(event.pointerId, now);
    else
      this.view = { ...this.view, x: this.view.x + now[0] - before[0], y: this.view.y + now[1] - before[1] };
    this.moved = true;
    this.fingers.set(event.pointerId, now);
  };

  private drag(at: Corner): void {
    const { list, at: place } = this.held!;
    const { now, past } = this.tracing;
    const moved = { ...now, [list]: now[list].with(place, toPicture(this.view, at)) };
    // a whole drag is one step back
    this.tracing = this.moved ? { now: moved, past } : did(this.tracing, moved);
  }

  private pinch(id: number, now: Corner): void {
    const [other] = [...this.fingers].filter(([one]) => one !== id).map(([, at]) => at);
    const before = this.fingers.get(id)!;
    const by = spread(before, now, other!);
    this.view = zoomed(this.view, by, other!);
  }

  private readonly up = (event: PointerEvent): void => {
    const wasOne = this.fingers.size === 1;
    this.fingers.delete(event.pointerId);
    if (wasOne && !this.moved && !this.held)
      this.mark(this.at(event), event.pointerType === "mouse" ? reach_px : 1.3 * reach_px);
    if (this.held && this.moved) this.tell();
    this.held = null;
  };

  private readonly cancel = ({ pointerId }: PointerEvent): void => void this.fingers.delete(pointerId);

  /** Sets a point where the screen was touched. */
  private mark(at: Corner, reach: number): void {
    const { now } = this.tracing;
    const place = toPicture(this.view, at);
    if (this.setting === "known") {
      this.tracing = did(this.tracing, {
        ...now,
        known: now.known.length === 2 ? [place] : [...now.known, place],
      });
    } else {
      const corner = snapped(place, now.corners, this.outlines.flat(), reach / this.view.scale);
      this.tracing = did(this.tracing, { ...now, corners: [...now.corners, corner] });
    }
    this.tell();
  }

  private readonly wheel = (event: WheelEvent): void => {
    if (!event.ctrlKey && !this.matches(":focus-within")) return;
    event.preventDefault();
    this.view = zoomed(this.view, Math.exp(-event.deltaY / 400), this.at(event));
  };

  private readonly zoom = (by: number): void => {
    const { clientWidth, clientHeight } = this.board!;
    this.view = zoomed(this.view, by, this.cross ?? [clientWidth / 2, clientHeight / 2]);
  };

  private readonly undo = (): void => {
    this.tracing = undone(this.tracing);
    this.tell();
  };

  private readonly clear = (): void => {
    const { now } = this.tracing;
    this.tracing = did(this.tracing, { ...now, [this.setting]: [] });
    this.tell();
  };

  private readonly key = (event: KeyboardEvent): void => {
    const action = actionOf(event);
    if (action === null) return;
    event.preventDefault();
    const { clientWidth, clientHeight } = this.board!;
    const cross = this.cross ?? [clientWidth / 2, clientHeight / 2];
    if (action === "mark") this.mark(cross, reach_px);
    else if (action === "undo") this.undo();
    else if (action === "nearer") this.zoom(1.5);
    else if (action === "further") this.zoom(1 / 1.5);
    else
      this.cross = [
        Math.min(clientWidth, Math.max(0, cross[0] + action.move[0])),
        Math.min(clientHeight, Math.max(0, cross[1] + action.move[1])),
      ];
  };

  private tell(): void {
    this.traced = this.tracing.now;
    const detail = { traced: this.tracing.now, height_px: this.size?.height ?? 0 };
    this.dispatchEvent(new CustomEvent("trace", { detail }));
  }
}

customElements.define("gwb-walk-trace", WalkTrace);
