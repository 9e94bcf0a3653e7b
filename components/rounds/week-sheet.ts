import { html, nothing, type TemplateResult } from "lit";
import type { Survey } from "../../src/survey/survey.ts";
import type { Formatter } from "../../src/words/format.ts";
import type { WeekSaidAloud } from "../../src/words/rounds-said.ts";
import type { Explain } from "../figure/figure.ts";
import { bedFacts } from "./bed-facts.ts";
import type { RoundsWithWeek } from "./messages.ts";
import { type MondayParts, mondayPart } from "./monday-part.ts";
import { rulesPart } from "./rules-part.ts";
import { orderPart, tanksPart } from "./tank-part.ts";
import { weekDrawn } from "./week-days.ts";
import { weekAnswer, weekNotes, weekOnFoot, weekRest } from "./week-part.ts";

export interface WeekSheetParts {
  rounds: RoundsWithWeek;
  aloud: WeekSaidAloud;
  explain: Explain | undefined;
  survey: Survey;
  firstDay: number;
  say: Formatter;
  /** Width of the sheet in px; 0 before it is known. */
  width: number;
  busy: boolean;
  monday: Omit<MondayParts, "survey" | "firstDay" | "say">;
  /** Why a restriction was not added. */
  refused: string;
  refuse(why: string): void;
  change(survey: Survey, words: string): void;
  print(): void;
}

/** This week: Monday's entries beside the round, its tanks, what is left, order and rules. */
export function weekSheet(parts: WeekSheetParts): TemplateResult {
  const { rounds, aloud, explain, survey, firstDay, say, width, change } = parts;
  const beds = bedFacts(survey);
  const week = {
    rounds,
    aloud,
    explain,
    beds,
    drawn: weekDrawn(rounds.week, beds),
    say,
    width,
    print: parts.print,
  };
  const tanks = { week: rounds.week, aloud, explain, survey, beds, say, width, change };
  const rules = {
    survey,
    rounds,
    aloud,
    explain,
    firstDay,
    error: parts.refused,
    change,
    refuse: parts.refuse,
  };
  return html`<div class="spread">
    ${mondayPart({ ...parts.monday, survey, firstDay, say })}
    <div class="measured-sheet" aria-busy=${parts.busy}>
      ${weekAnswer(week)}
      ${
        // nothing stands below what is still to be drawn, or it would be pushed away under the reader
        width > 0
          ? html`${weekOnFoot(week)} ${tanksPart(tanks)} ${weekRest(week)}
              ${orderPart(tanks)} ${rulesPart(rules)} ${weekNotes(week)}`
          : nothing
      }
    </div>
  </div>`;
}
