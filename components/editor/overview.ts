import { html, nothing } from "lit";
import { type Address, rowsOf, valueIn } from "../../src/survey/edit/document.ts";
import { editorWords } from "../../src/words/en/editor.ts";
import { overviewWords } from "../../src/words/en/editor-overview.ts";
import { parts } from "../../src/words/en/editor-parts.ts";
import { type Editing, isCounted, type Shown } from "./editing.ts";
import { partList } from "./layout/screens.ts";
import { link } from "./link.ts";
import { nameOfRow, shownValue } from "./shown.ts";

/** What is asked of every bed, and the sheet that asks it. */
const asked = [
  { field: ["watering", "habit"], sheet: "habit", words: overviewWords.habit },
  { field: ["watering", "flow_L_min"], sheet: "watering", words: overviewWords.flow },
  { field: ["leafCover"], sheet: "cover", words: overviewWords.cover },
  { field: ["soil"], sheet: "soil", words: overviewWords.soil },
] as const;

const mostNamed = 6;

/** The survey in a sentence, and what is not known yet, each a way to where it is entered. */
export function overview(editing: Editing): Shown {
  const { draft } = editing;
  const total = (list: string, field: string) =>
    rowsOf(draft, list).reduce(
      (sum, row) => sum + (typeof row[field] === "number" ? Number(row[field]) : 0),
      0,
    );
  const area = (list: string) => shownValue(editing, [list, 0, "area_m2"], tidy(total(list, "area_m2")));
  const litres = shownValue(editing, ["tanks", 0, "capacity_L"], tidy(total("tanks", "capacity_L")));
  const [first] = partList;
  const beds = rowsOf(draft, "beds").filter(({ id }) => isCounted(editing, ["beds", { id: String(id) }]));
  const blanks = asked
    .map(({ field, sheet, words }) => ({ sheet, words, beds: beds.filter((bed) => isBlank(bed, field)) }))
    .filter((one) => one.beds.length > 0);
  return html`<p class="title">
      ${overviewWords.sentence({
        beds: rowsOf(draft, "beds").length,
        area: area("beds"),
        roofs: rowsOf(draft, "roofs").length,
        roofArea: area("roofs"),
        tanks: rowsOf(draft, "tanks").length,
        litres,
      })}
    </p>
    <p class="lead">${editorWords.contentsLead}</p>
    ${blanks.map(
      ({ sheet, words, beds: without }) => html`<p class="unknown">
        <strong>${words}</strong>
        ${without.slice(0, mostNamed).map((bed, i) => html`${i > 0 ? ", " : ""}${bedLink(editing, bed, sheet)}`)}${
          without.length > mostNamed ? html` ${overviewWords.more(without.length - mostNamed)}` : nothing
        }.
      </p>`,
    )}
    ${
      first
        ? html`<p class="onwards">${link(editing, first.slug, editorWords.next(parts[first.slug]?.name ?? ""))}</p>`
        : nothing
    }`;
}

function bedLink(editing: Editing, bed: Readonly<Record<string, unknown>>, sheet: string): Shown {
  return link(
    editing,
    `beds/${encodeURIComponent(String(bed.id))}/${sheet}`,
    html`<bdi>${nameOfRow(bed)}</bdi>`,
  );
}

function isBlank(bed: unknown, field: Address): boolean {
  const isWatered = valueIn(bed, ["watering", "supply"]) !== "none";
  return (isWatered || field[0] !== "watering") && valueIn(bed, field) === undefined;
}

function tidy(value: number): number {
  return Number(value.toPrecision(10));
}
