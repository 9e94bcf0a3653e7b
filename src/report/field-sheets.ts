import { paceSlots } from "../survey/measuring/pacing.ts";
import { type Slot, type WalkPart, type Way, walkParts } from "../survey/measuring/way.ts";
import { waysOf } from "../survey/measuring/ways.ts";
import { type KeyRow, soilFeelKey, thirstKey } from "../tables/keys.ts";
import { escapeHtml, fieldSheetStyle } from "./field-sheet-style.ts";

/** The sentences of the sheets; the caller brings them, in its language. */
export interface FieldSheetWords {
  language: string;
  title: string;
  heading(part: string): string;
  parts: Readonly<Record<string, string>>;
  group: string;
  date: string;
  place: string;
  guess: string;
  notes: string;
  take: string;
  typed: string;
  cautions: string;
  key: string;
  goTo(question: string): string;
  done(word: string): string;
  way(code: string): { name: string; how: string };
  paced: { name: string; how: string };
  slot(way: string, slot: string): string;
  cautionsOf(part: string): readonly string[];
  /** What of a part is seen or told and not measured: a heading, and a line to fill for each question. */
  seenOf(part: string): readonly { name: string; lines: readonly string[] }[];
  keyQuestion(key: string, code: string): { question: string; answers: Readonly<Record<string, string>> };
  classWord(word: string): string;
}

/** What is done on screen alone. */
const onScreenOnly = new Set(["plan", "leaf-photograph"]);
const keys: Readonly<Record<string, readonly KeyRow[]>> = {
  "thirst-key": thirstKey,
  "soil-feel": soilFeelKey,
};

/** Blanks for repeats of one thing, and for readings in a row. */
const repeats = 3;
const inARow = 12;

/** Blank sheets as one HTML page to print, a part of the walk on each new sheet; for some parts or all of them. */
export function fieldSheets(words: FieldSheetWords, parts: readonly WalkPart[] = walkParts): string {
  const sheets = parts.map((part) => sheet(part, words)).join("\n");
  return `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(words.title)}</title>
<style>${fieldSheetStyle}</style>
</head>
<body>
<main>
${sheets}
</main>
</body>
</html>
`;
}

function sheet(part: WalkPart, words: FieldSheetWords): string {
  const ways = waysOf(part).filter(({ code }) => !onScreenOnly.has(code));
  const cautions = [...words.cautionsOf("always"), ...words.cautionsOf(part)];
  const blanks = [words.group, words.date].map((label) => blank(label)).join("");
  return `<section class="sheet" aria-labelledby="sheet-${part}">
<h1 id="sheet-${part}">${escapeHtml(words.heading(words.parts[part]!))}</h1>
<p class="head">${blanks}</p>
<h2>${escapeHtml(words.cautions)}</h2>
<ul>${cautions.map((caution) => `<li>${escapeHtml(caution)}</li>`).join("")}</ul>
<p>${escapeHtml(words.take)}</p>
${ways.map((way) => keyQuestions(way.code, words)).join("")}<div class="ways">
${part === "areas" ? paces(words) : ""}${ways.map((way) => block(way, words)).join("\n")}
${words
  .seenOf(part)
  .map((seen) => seenBlock(seen, words))
  .join("\n")}
</div>
<p class="notes">${escapeHtml(words.notes)}</p>
</section>`;
}

function paces(words: FieldSheetWords): string {
  return `<section class="way"><h3>${escapeHtml(words.paced.name)}</h3><p>${escapeHtml(words.paced.how)}</p>
${table("pacing", paceSlots, words)}</section>
`;
}

function block(way: Way, words: FieldSheetWords): string {
  const { name, how } = words.way(way.code);
  return `<section class="way"><h3>${escapeHtml(name)}</h3><p>${escapeHtml(how)}</p>
<p class="head">${blank(words.place)}${blank(words.guess)}</p>
${table(way.code, way.slots, words)}
<p class="typed"><span class="box"></span> ${escapeHtml(words.typed)}</p></section>`;
}

/** What is seen or told: typed in at its own stop, not as readings. */
function seenBlock(
  { name, lines }: { name: string; lines: readonly string[] },
  words: FieldSheetWords,
): string {
  return `<section class="way seen"><h3>${escapeHtml(name)}</h3>
<p class="head">${blank(words.place)}</p>
${lines.map((line) => `<p class="head">${blank(line)}</p>`).join("\n")}
<p class="typed"><span class="box"></span> ${escapeHtml(words.typed)}</p></section>`;
}

/** The blanks of a way, in the order that they are typed in. */
function table(way: string, slots: readonly Slot[], words: FieldSheetWords): string {
  const rows = slots.map((slot) => {
    const cells = slot.list ? inARow : slot.by ? repeats : 1;
    const label = escapeHtml(labelOf(words.slot(way, slot.name), slot));
    return `<tr data-slot="${slot.name}"><th scope="row">${label}</th><td>${'<span class="cell"></span>'.repeat(cells)}</td></tr>`;
  });
  return `<table>${rows.join("")}</table>`;
}

/** A blank's name with its unit; each of the readings that belong together has its own. */
function labelOf(name: string, { unit, each, together = 1 }: Slot): string {
  const units = each ?? Array<Slot["unit"]>(together).fill(unit);
  const names = together > 1 ? name.split(", ") : [name];
  return names.map((one, i) => withUnit(one, units[i] ?? unit)).join(", ");
}

function withUnit(name: string, unit: Slot["unit"]): string {
  if (unit === "count" || unit === "code" || unit === "px") return name;
  return `${name} (${unit === "share" ? "%" : unit})`;
}

/** A decision key on paper, where a way has one: questions by number, answers by letter, each with where it leads. */
function keyQuestions(code: string, words: FieldSheetWords): string {
  const key = keys[code];
  if (!key) return "";
  const numberOf = (question: string) => String(key.findIndex((row) => row.question === question) + 1);
  const items = key.map(({ question, answers }) => {
    const asked = words.keyQuestion(code, question);
    const lines = answers.map(({ answer, next, ends }) => {
      const leads = next ? words.goTo(numberOf(next)) : words.done(words.classWord(ends!.is));
      return `<li>${escapeHtml(asked.answers[answer]!)} <i>(${escapeHtml(leads)})</i></li>`;
    });
    return `<li>${escapeHtml(asked.question)}<ol type="A">${lines.join("")}</ol></li>`;
  });
  const heading = `${words.way(code).name}: ${words.key}`;
  return `<h2>${escapeHtml(heading)}</h2><ol class="key">${items.join("")}</ol>
`;
}

function blank(label: string): string {
  return `<span class="blank">${escapeHtml(label)} <span class="line"></span></span>`;
}
