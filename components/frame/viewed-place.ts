import type { AnswerView } from "../../src/report/view.ts";
import type { Ask } from "../look/ask.ts";
import { AnsweredPlace } from "./answered-place.ts";

/** A place with a view of its own, made beside the page for each answer. */
export abstract class ViewedPlace<View> extends AnsweredPlace {
  static override properties = { ...AnsweredPlace.properties, seen: { state: true } };

  declare protected seen: View | null;

  /** The answer that the view was last made of, or is being made of. */
  private of: AnswerView | null = null;

  constructor() {
    super();
    this.seen = null;
  }

  /** Has the view made of the answer last worked out; null where a later call overtook it. */
  protected abstract look(): Promise<View | null>;

  /** A question of the screen; unanswered where the answer it is about is gone. */
  protected readonly ask: Ask = (question) => this.model.ask(question);

  protected override updated(): void {
    const { model } = this;
    if (model.worked.is !== "ready" || model.view === null || model.view === this.of) return;
    this.of = model.view;
    void this.lookAnew(model.view);
  }

  private async lookAnew(of: AnswerView): Promise<void> {
    try {
      const view = await this.look();
      if (view !== null && this.of === of) [this.seen, this.stopped] = [view, null];
    } catch (error) {
      this.stopped = error instanceof Error ? error.message : String(error);
    }
  }

  override disconnectedCallback(): void {
    this.of = null;
    super.disconnectedCallback();
  }
}
