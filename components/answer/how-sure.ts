import { html, nothing, type TemplateResult } from "lit";
import { weatherUnknown } from "../../src/engine/spread.ts";
import type { AnswerView } from "../../src/report/view.ts";
import { aside } from "../../src/words/en/page.ts";
import { unknownAdvice, unknownName } from "../../src/words/en/unknowns.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { AnswerWidth } from "../frame/work/messages.ts";

/** Of the width, below which no single unknown is worth naming. */
const worthSaying = 0.03;

/** What the answer was seen over, how far the years take it, and how far what is not measured. */
export function howSure(view: AnswerView, width: AnswerWidth | null, say: Formatter): TemplateResult {
  return html`${seenOver(view, say)} ${width ? drawn(view, width, say) : aside.factors}`;
}

function seenOver({ weather, years, mains, standing }: AnswerView, say: Formatter): string {
  const words = [
    weather.generated
      ? aside.howSureMade(weather.generated.years)
      : aside.howSureYears(years.length, String(years[0] ?? ""), String(years.at(-1) ?? "")),
  ];
  const isSaving = standing === "saving" || standing === "partly-known";
  if (isSaving && mains.giveUp_kL.p10 > 0 && years.length > 2)
    words.push(aside.spread(say.yearlyBare(mains.giveUp_kL.p10), say.yearly(mains.giveUp_kL.p90)));
  if (weather.filled > 0) words.push(aside.filled(say.number(weather.filled), say.number(weather.days)));
  return words.join(" ");
}

function drawn({ standing, beds }: AnswerView, width: AnswerWidth, say: Formatter) {
  const isSaving = standing === "saving" || standing === "partly-known";
  const range = isSaving ? width.giveUp_kL_year : width.need_kL_year;
  if (!range) return nothing;
  const [low, high] = [say.yearlyBare(range.p10), say.yearly(range.p90)];
  return html`${aside.drawn[isSaving ? "saving" : "need"](low, high, say.number(width.draws))}
  ${isSaving ? widest(width, beds, say) : nothing}`;
}

/** Which unknown makes the answer so wide, and what would narrow it. */
function widest({ byUnknown }: AnswerWidth, beds: AnswerView["beds"], say: Formatter) {
  const measurable = byUnknown.find(({ at }) => at !== weatherUnknown);
  if (!measurable || measurable.share < worthSaying) return aside.narrowYears;
  const { at, share } = measurable;
  const bed = /^beds\[(\d+)\]/.exec(at)?.[1];
  const name = unknownName(
    at,
    bed === undefined ? null : (beds.find(({ index }) => index === Number(bed))?.name ?? null),
  );
  return aside.widest(name, say.share(share), unknownAdvice(at));
}
