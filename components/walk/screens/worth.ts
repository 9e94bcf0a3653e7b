import { css, html, nothing, type PropertyValues } from "lit";
import type { Unit } from "../../../src/quantities.ts";
import { worthWords } from "../../../src/words/en/walk-more.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { standsSaid, valueSaid } from "../said.ts";
import { Screen } from "../screen.ts";
import { standingOf } from "../standing.ts";
import { type Guessed, guessesOf, type Worth, worthOf } from "../worth.ts";

/** What each group's measuring was worth: guess against reading, in litres. */
export class WorthScreen extends Screen {
  static override properties = { ...Screen.properties, worth: { state: true } };

  declare worth: readonly Worth[] | null;

  private weighedFor: unknown = null;

  static override styles = [
    ...Screen.styles,
    css`
      .one {
        padding: 0.9rem 0 1rem;
        border-bottom: 1px solid var(--hair);
      }
      .one svg {
        margin-top: 0.5rem;
      }
      .off {
        font-weight: 600;
      }
    `,
  ];

  constructor() {
    super();
    this.worth = null;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has("walk") && this.weighedFor !== this.walk.survey) void this.work();
  }

  private async work(): Promise<void> {
    const { survey, weigh, group } = this.walk;
    this.weighedFor = survey;
    if (!weigh) return;
    const worth = await worthOf(survey, guessesOf(survey, group), weigh).catch(() => null);
    if (this.weighedFor === survey) this.worth = worth;
  }

  protected override render() {
    const { survey, group, weigh } = this.walk;
    const show = (value: number, unit: "L") => this.walk.about(value < 0.5 ? 0 : value, unit);
    const guesses = guessesOf(survey, group);
    const sum = (of: (worth: Worth) => number) => (this.worth ?? []).reduce((all, one) => all + of(one), 0);
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${worthWords.heading}</h2>
      <p class="lead">${guesses.length === 0 ? worthWords.none : worthWords.lead}</p>
      ${
        this.worth && guesses.length > 0
          ? html`<p class="result" role="status">${worthWords.all(
              show(
                sum(({ off_L }) => off_L),
                "L",
              ),
              show(
                sum(({ left_L }) => left_L),
                "L",
              ),
            )}</p>`
          : weigh && guesses.length > 0
            ? html`<p class="note">${worthWords.working}</p>`
            : nothing
      }
      ${guesses.map((one) =>
        this.one(
          one,
          this.worth?.find(({ row }) => row.id === one.row.id),
        ),
      )}
    </section>`;
  }

  private one({ stop, guess }: Guessed, worth: Worth | undefined) {
    const { walk } = this;
    const { stands } = standingOf(walk.survey, stop);
    const figure = stands ? standsSaid(walk, stop, stands) : "";
    const guessed = valueSaid(walk, stop, guess) ?? String(guess);
    const read = stands && "figure" in stands ? stands.figure.figure : null;
    return html`<div class="one">
      <h3><bdi>${stop.name}</bdi>: ${stopWords[stop.kind]!.name.toLowerCase()}</h3>
      <p>${worthWords.line(guessed, figure)}</p>
      ${typeof guess === "number" && read !== null ? bars(guess, read, (value) => walk.show(value, stop.unit as Unit)) : nothing}
      ${
        worth
          ? html`<p class="off">${worth.off_L < 0.5 ? worthWords.same : worthWords.litres(walk.about(worth.off_L, "L"), stop.name)}</p>
              ${worth.left_L > 0.5 ? html`<p class="note">${worthWords.left(walk.about(worth.left_L, "L"))}</p>` : nothing}`
          : nothing
      }
    </div>`;
  }
}

/** Guess and reading as two rods, the guess dashed. */
function bars(guess: number, read: number, show: (value: number) => string) {
  const most = Math.max(guess, read, 1e-9);
  const at = (value: number) => 4 + (210 * value) / most;
  return html`<svg viewBox="0 0 330 62" width="330" height="62" aria-hidden="true">
    <path class="ink dashed" d="M4 16H${at(guess)}M4 10v12M${at(guess)} 10v12" />
    <text class="small" x=${at(guess) + 8} y="21">${worthWords.guessed} ${show(guess)}</text>
    <path class="ink strong" d="M4 46H${at(read)}M4 39v14M${at(read)} 39v14" />
    <text x=${at(read) + 8} y="51">${worthWords.read} ${show(read)}</text>
  </svg>`;
}

customElements.define("gwb-walk-worth", WorthScreen);
