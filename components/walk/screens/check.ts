import { css, html, nothing } from "lit";
import { type Question, questionsAbout } from "../../../src/survey/measuring/unlikely.ts";
import type { Survey } from "../../../src/survey/survey.ts";
import { checkWords } from "../../../src/words/en/walk-more.ts";
import { missingWords, questionSentence } from "../../../src/words/en/walk-questions.ts";
import { roundWords } from "../../../src/words/en/walk-screens.ts";
import { stopWords } from "../../../src/words/en/walk-stops.ts";
import { howComplete, type MissingHere } from "../missing.ts";
import { mostWanted } from "../order.ts";
import { Screen } from "../screen.ts";
import { doneBy } from "../standing.ts";
import { stopsOf } from "../stops.ts";

/** What is unlikely, as questions; what is missing, with the way to it; what would move the answer most. */
export class CheckScreen extends Screen {
  static override styles = [
    ...Screen.styles,
    css`
      .question {
        padding: 0.8rem 0;
        border-bottom: 1px solid var(--hair);
      }
      .measure {
        height: 14px;
        margin-top: 0.6rem;
        border: 1.5px solid var(--ink);
      }
      .measure rect {
        fill: var(--ink);
      }
    `,
  ];

  protected override render() {
    const { survey, weights, group, show } = this.walk;
    const { asked, filled, missing } = howComplete(survey);
    const questions = asksOf(survey);
    const open = stopsOf(survey).filter((stop) => !doneBy(survey, stop, group));
    const most = mostWanted(open, weights);
    return html`<section class="screen" aria-labelledby="head">
      ${this.top()}
      <h2 id="head" tabindex="-1">${checkWords.heading}</h2>
      <p class="lead">${checkWords.complete(filled, asked, show(filled / asked, "share"))}</p>
      <svg class="measure" width="100%" height="14" aria-hidden="true">
        <rect width="${(100 * filled) / asked}%" height="14" />
      </svg>
      ${most ? html`<p class="note">${checkWords.most(most.name, stopWords[most.kind]!.name.toLowerCase())}</p>` : nothing}
      <h3>${checkWords.questions}</h3>
      ${questions.length === 0 ? html`<p>${checkWords.noQuestions}</p>` : questions.map((question) => this.question(question))}
      <h3>${checkWords.missing}</h3>
      ${missing.length === 0 ? html`<p>${checkWords.nothingMissing}</p>` : html`<ul class="answers">${missing.map((one) => this.gap(one))}</ul>`}
    </section>`;
  }

  private question(question: Question) {
    const stop = stopsOf(this.walk.survey).find(({ at, also }) => [at, ...also].includes(question.at));
    return html`<div class="question">
      ${stop ? html`<p class="of"><bdi>${stop.name}</bdi></p>` : nothing}
      <p>${questionSentence(question, this.walk.show)}</p>
      ${question.source ? html`<p class="hint">${checkWords.usual(question.source)}</p>` : nothing}
      ${stop ? html`<button class="plain" @click=${() => this.walk.go(`stop/${stop.key}`)}>${checkWords.look}</button>` : nothing}
    </div>`;
  }

  private gap({ at, code, thing, stop }: MissingHere) {
    const words = html`<span class="words"><bdi>${thing ?? checkWords.site}</bdi>: ${missingWords[code]}</span>`;
    const field = this.walk.fields?.(`at/${encodeURIComponent(at)}`);
    if (!stop)
      return html`<li>${field ? html`<a class="answer" href=${field}>${words}</a>` : html`<p class="answer">${words}</p>`}</li>`;
    return html`<li>
      <button class="answer" @click=${() => this.walk.go(`stop/${stop.key}`)}>
        ${words}<span class="end">${roundWords.minutes(stop.minutes)}</span>
      </button>
    </li>`;
  }
}

/** A survey still being put together asks what it can. */
function asksOf(survey: Survey): Question[] {
  try {
    return questionsAbout(survey);
  } catch {
    return [];
  }
}

customElements.define("gwb-walk-check", CheckScreen);
