import { escapeHtml } from "../report/field-sheet-style.ts";
import type { WorkedOut } from "../report/work-out.ts";
import type { ClassSheetWords } from "../words/en/class-sheet.ts";
import { classSheetStyle } from "./class-sheet-style.ts";
import { type ClassDay, type ClassWeek, classWeek } from "./class-week.ts";
import { amount, type Say } from "./say.ts";

/** What a class is given: a bed by its id, and the week's first day; the most telling week where that is null. */
export interface ClassSheetAsk {
  bed: string;
  /** Day number. */
  from: number | null;
}

/**
 * A worked example for a class as one HTML page to print: one bed, one week, with blanks to fill in, and the answers
 * on a second sheet. The numbers are the engine's own.
 * @returns null where there is no such bed, or the record has not all of that week
 */
export function classSheet(
  worked: WorkedOut,
  ask: ClassSheetAsk,
  words: ClassSheetWords,
  say: Say,
): string | null {
  const week = classWeek(worked, say, ask.bed, ask.from);
  if (!week) return null;
  const title = words.title(week.name, say.date(week.days[0]!.day), say.date(week.days.at(-1)!.day));
  return `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeHtml(title)}</title>
<style>${classSheetStyle}</style>
</head>
<body>
<main>
${blankSheet(week, title, words, say)}
${answerSheet(week, title, words, say)}
</main>
</body>
</html>
`;
}

/** Two places, as the sheet says: a class works in hundredths. */
export function inHundredths(value: number, say: Say): string {
  const text = say.number(Math.round(value * 100) / 100, 2);
  return text.replace(/^-/, "−").replace(/^−0$/, "0");
}

function mm(value: number, say: Say): string {
  return `${inHundredths(value, say)}\u00A0mm`;
}

function blankSheet(week: ClassWeek, title: string, words: ClassSheetWords, say: Say): string {
  return `<section class="sheet" aria-labelledby="class-blanks">
<h1 id="class-blanks">${escapeHtml(title)}</h1>
<p class="head">${escapeHtml(words.blanks)} ${line(words.group)} ${line(words.date)}</p>
<p>${escapeHtml(words.invented)} ${escapeHtml(words.where)}</p>
<div class="pair">
<div><h2>${escapeHtml(words.given)}</h2>
${known(week, words, say)}</div>
<div><h2>${escapeHtml(words.rules)}</h2>
<ol>${rules(week, words, say)
    .map((rule) => `<li>${escapeHtml(rule)}</li>`)
    .join("")}</ol></div>
</div>
<h2>${escapeHtml(words.week)}</h2>
${table(week, words, say, false)}
<h2>${escapeHtml(words.questions)}</h2>
<ol class="questions">${words.question.map((question) => `<li>${escapeHtml(question)}<span class="answer"></span></li>`).join("")}</ol>
<p class="small">${escapeHtml(words.source)}</p>
</section>`;
}

function answerSheet(week: ClassWeek, title: string, words: ClassSheetWords, say: Say): string {
  return `<section class="sheet" aria-labelledby="class-answers">
<h1 id="class-answers">${escapeHtml(title)}</h1>
<p class="head">${escapeHtml(words.answers)}</p>
${table(week, words, say, true)}
<ul>${answers(week, words, say)
    .map((sentence) => `<li>${escapeHtml(sentence)}</li>`)
    .join("\n")}</ul>
<p class="small">${escapeHtml(words.source)}</p>
</section>`;
}

function line(label: string): string {
  return `<span class="label">${escapeHtml(label)}<span class="line"></span></span>`;
}

function known(week: ClassWeek, words: ClassSheetWords, say: Say): string {
  const { givenRows } = words;
  const [first] = week.days;
  const rows = [
    [givenRows.area, amount(week.area_m2, "m²", say)],
    [givenRows.available, mm(week.available_mm, say)],
    [givenRows.start(say.date(first!.day)), mm(first!.numbers.rootBefore_mm, say)],
    ...(week.decides ? [[givenRows.trigger, mm(week.trigger_mm, say)]] : []),
    [givenRows.efficiency, say.number(week.efficiency, 3)],
  ];
  return `<dl>${rows.map(([name, value]) => `<dt>${escapeHtml(name!)}</dt><dd>${escapeHtml(value!)}</dd>`).join("")}</dl>`;
}

function rules({ decides, most_mm }: ClassWeek, { rule }: ClassSheetWords, say: Say): string[] {
  const water = decides
    ? most_mm === Number.POSITIVE_INFINITY
      ? rule.water
      : rule.waterMost(mm(most_mm, say))
    : rule.waterGiven;
  return [water, rule.wetted, rule.stress, rule.use, rule.drain, rule.evening];
}

function table(week: ClassWeek, words: ClassSheetWords, say: Say, filled: boolean): string {
  const { columns } = words;
  const given = [
    columns.day,
    ...(week.decides ? [columns.mayWater] : []),
    columns.et0,
    columns.rain,
    columns.kcb,
    columns.ke,
    columns.p,
  ];
  const asked = [columns.water, columns.wetted, columns.ks, columns.etc, columns.drainage, columns.evening];
  const head = [...given, ...asked].map((name) => `<th scope="col">${escapeHtml(name)}</th>`).join("");
  return `<div class="frame" role="region" tabindex="0" aria-label="${escapeHtml(words.week)}"><table>
<thead><tr>${head}</tr></thead>
<tbody>
${week.days.map((day) => row(week, day, words, say, filled)).join("\n")}
</tbody>
</table></div>`;
}

function row(week: ClassWeek, day: ClassDay, words: ClassSheetWords, say: Say, filled: boolean): string {
  const { numbers } = day;
  const number = (value: number) => `<td>${inHundredths(value, say)}</td>`;
  const blank = (value: number) => (filled ? number(value) : `<td class="empty"></td>`);
  const may = week.decides ? [`<td>${day.mayWater ? words.yes : words.no}</td>`] : [];
  return `<tr><th scope="row">${escapeHtml(say.date(day.day))}</th>${[
    ...may,
    number(numbers.et0_mm),
    number(numbers.rain_mm),
    number(numbers.kcb),
    number(numbers.ke),
    number(numbers.fraction),
    week.decides ? blank(numbers.net_mm) : number(numbers.net_mm),
    blank(numbers.rootWetted_mm),
    blank(numbers.ks),
    blank(day.etc_mm),
    blank(day.drainage_mm),
    blank(day.rootEnd_mm),
  ].join("")}</tr>`;
}

/** The answers in sentences: each day's event, then the week. */
function answers(week: ClassWeek, { said }: ClassSheetWords, say: Say): string[] {
  const litres = (value: number) => amount(Math.round(value), "L", say);
  const events = week.days.flatMap(({ day, numbers, drainage_mm, gross_L }) => {
    const date = say.date(day);
    const sentences: string[] = [];
    if (numbers.net_mm > 0)
      sentences.push(
        week.decides
          ? said.watered(
              date,
              mm(numbers.rootBefore_mm, say),
              mm(week.trigger_mm, say),
              mm(numbers.net_mm, say),
              litres(gross_L),
            )
          : said.got(date, mm(numbers.net_mm, say), litres(gross_L)),
      );
    if (numbers.rain_mm > 0)
      sentences.push(
        drainage_mm > 0
          ? said.rainDrained(date, mm(numbers.rain_mm, say), mm(drainage_mm, say))
          : said.rain(date, mm(numbers.rain_mm, say)),
      );
    if (numbers.ks < 1) sentences.push(said.short(date, inHundredths(numbers.ks, say)));
    return sentences;
  });
  return [...events, ...ofTheWeek(week, said, say, litres)];
}

function ofTheWeek(
  week: ClassWeek,
  said: ClassSheetWords["said"],
  say: Say,
  litres: (value: number) => string,
): string[] {
  const { days, area_m2 } = week;
  const sum = (figure: (day: ClassDay) => number) => days.reduce((total, day) => total + figure(day), 0);
  const etc_mm = sum((day) => day.etc_mm);
  const let_L = sum((day) => day.gross_L);
  const start_mm = days[0]!.numbers.rootBefore_mm;
  const end_mm = days.at(-1)!.rootEnd_mm;
  const number = (value: number) => inHundredths(value, say);
  return [
    let_L > 0 ? said.let(litres(let_L)) : said.neverWatered,
    ...(days.every(({ numbers }) => numbers.ks === 1) ? [said.neverShort] : []),
    said.took(mm(etc_mm, say), litres(etc_mm * area_m2)),
    said.closes(
      number(sum(({ numbers }) => numbers.rain_mm)),
      number(sum(({ numbers }) => numbers.net_mm)),
      number(etc_mm),
      number(sum((day) => day.drainage_mm)),
      number(start_mm - end_mm),
      number(start_mm),
      number(end_mm),
    ),
  ];
}
