import { html, type TemplateResult } from "lit";
import type { Paper } from "../../src/report/sheets/style.ts";
import { monthNames } from "../../src/words/en/rounds.ts";
import { paperPage as words } from "../../src/words/en/rounds-months.ts";
import type { FileAsked, SheetKind } from "./messages.ts";
import { choices } from "./monday-part.ts";

/** What somebody chose for paper and calendar. */
export interface PaperChoice {
  paper: Paper;
  /** Months from today's, 0–11. */
  ahead: number;
  alarm: keyof typeof words.alarms;
}

export const firstPaper: PaperChoice = { paper: "A4", ahead: 0, alarm: "none" };

export interface PaperParts {
  choice: PaperChoice;
  /** Today's year and month, 1–12. */
  year: number;
  month: number;
  hasLog: boolean;
  now_ms(): number;
  change(part: Partial<PaperChoice>): void;
  print(file: FileAsked): void;
  save(file: FileAsked, name: string, type: string): void;
  saveLog(name: string): void;
}

/** The year and month, 1–12, so many months on. */
export function monthAhead(year: number, month: number, ahead: number): { year: number; month: number } {
  const at = month - 1 + ahead;
  return { year: year + Math.floor(at / 12), month: (at % 12) + 1 };
}

const kinds = Object.keys(words.sheets) as SheetKind[];
const calendarType = "text/calendar";

/** Minutes before a watering at which its entry rings. */
const alarms_min: Readonly<Record<PaperChoice["alarm"], number | null>> = {
  none: null,
  start: 0,
  quarter: 15,
  hour: 60,
  half: 720,
};

/** Sheets to print, a calendar file, the table as a file. */
export function paperPart(parts: PaperParts): TemplateResult {
  const { choice, change, print, save } = parts;
  const when = monthAhead(parts.year, parts.month, choice.ahead);
  const alarm_min = alarms_min[choice.alarm];
  const sheets = (kind: SheetKind | "all"): FileAsked => ({
    is: "sheets",
    kind,
    paper: choice.paper,
    ...when,
  });
  const button = (label: string, press: () => void) =>
    html`<button type="button" class="press" @click=${press}>${label}</button>`;
  return html`<div class="sheet-top">
    <h2 class="headline">${words.headline}</h2>
    <p class="lead">${words.lead}</p>
    <div class="cells">
      ${choices("paper", words.paper, words.papers, choice.paper, (paper) => change({ paper }))}
      <label class="pick"><span>${words.month}</span>
        <select @change=${(event: Event) => change({ ahead: Number((event.target as HTMLSelectElement).value) })}>
          ${Array.from({ length: 12 }, (_, ahead) => {
            const { year, month } = monthAhead(parts.year, parts.month, ahead);
            return html`<option value=${ahead} ?selected=${ahead === choice.ahead}>${monthNames[month - 1]} ${year}</option>`;
          })}
        </select></label>
    </div>
    <ul class="to-print">
      ${kinds.map((kind) => {
        const [name, about] = words.sheets[kind];
        return html`<li><span><strong>${name}</strong> <span class="quiet">${about}</span></span>
          <button type="button" class="press" aria-label=${words.printIt(name)} @click=${() => print(sheets(kind))}>${words.print}</button></li>`;
      })}
    </ul>
    <section class="part">
      <h3 class="ruled">${words.calendar}</h3>
      <p class="lead">${words.calendarLead}</p>
      ${choices("alarm", words.alarm, words.alarms, choice.alarm, (alarm) => change({ alarm }))}
      <p class="press-row">
        ${button(words.weekFile, () => save({ is: "week-calendar", alarm_min, now_ms: parts.now_ms() }, words.fileNames.week, calendarType))}
        ${button(words.monthFile, () => save({ is: "month-calendar", ...when, alarm_min, now_ms: parts.now_ms() }, words.fileNames.month, calendarType))}
      </p>
    </section>
    <section class="part">
      <h3 class="ruled">${words.files}</h3>
      <p class="press-row">
        ${button(words.table, () => save({ is: "table" }, words.fileNames.table, "text/csv"))}
        ${button(words.html, () => save(sheets("all"), words.fileNames.sheets, "text/html"))}
        ${parts.hasLog ? button(words.log, () => parts.saveLog(words.fileNames.log)) : ""}
      </p>
    </section>
  </div>`;
}
