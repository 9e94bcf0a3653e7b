export type Paper = "A4" | "letter";

/** Black on white, large enough for the shed wall; each sheet begins a page. */
export function sheetStyle(paper: Paper): string {
  return `
@page { size: ${paper === "A4" ? "A4" : "8.5in 11in"} portrait; margin: 10mm 12mm; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 190mm; padding: 4mm; color: #000; background: #fff; font: 13pt/1.3 "Source Serif 4 Variable", "Source Serif 4", Georgia, "Times New Roman", serif; font-variant-numeric: lining-nums tabular-nums; }
@media print {
body { max-width: none; padding: 0 0.5mm 0 0; }
}
section { break-before: page; }
section:first-of-type, .card + .card { break-before: auto; }
h1 { font-size: 22pt; line-height: 1.1; margin: 0 0 2mm; }
h2 { font-size: 16pt; line-height: 1.2; margin: 3mm 0 1mm; break-after: avoid; }
p { margin: 0 0 2mm; }
table { width: 100%; border-collapse: collapse; margin: 2mm 0 4mm; }
th, td { border-bottom: 0.4pt solid #000; padding: 1.4mm 1.5mm; text-align: left; vertical-align: top; }
th { border-bottom-width: 1.2pt; font-size: 11pt; }
tr { break-inside: avoid; }
.wall td { font-size: 12.5pt; line-height: 1.15; padding: 0.6mm 1.2mm; }
.wall { table-layout: fixed; }
.wall th:nth-child(1) { width: 20%; }
.wall th:nth-child(2) { width: 14%; }
.wall th:nth-child(3) { width: 19%; }
.wall th:nth-child(4) { width: 12%; }
.wall th:nth-child(5) { width: 14%; }
.ticks { table-layout: fixed; }
.ticks :is(th, td):nth-child(1) { width: 13mm; }
.ticks :is(th, td):nth-child(2) { width: 15mm; }
.ticks :is(th, td):nth-child(4) { width: 34mm; }
.ticks :is(th, td):nth-child(5) { width: 22mm; }
.ticks :is(th, td):nth-child(6) { width: 18mm; }
.day { break-inside: avoid; }
.later thead { display: none; }
.later { border-top: 1.2pt solid #000; }
.ticks td { padding-block: 1mm; }
.ticks .small { display: block; line-height: 1.2; text-wrap: pretty; }
.ticks .blank { min-width: 15mm; }
.wall td:nth-child(4) { white-space: nowrap; }
.wall td:first-child { font-weight: 700; }
.dry { font-size: 10.5pt; line-height: 1.15; }
.grid { table-layout: fixed; break-inside: avoid; }
.grid td { height: 9mm; line-height: 1.05; padding: 0.5mm 1mm; border: 0.4pt solid #000; font-size: 12pt; }
.grid b { display: block; font-size: 10pt; font-weight: 400; }
.card { break-inside: avoid; border: 1pt solid #000; padding: 4mm; margin: 0 0 6mm; }
.card h2 { margin-top: 0; }
.card table { clear: both; table-layout: fixed; margin-bottom: 0; }
.card tbody tr:last-child td { border-bottom: 0; }
.card th:nth-child(1) { width: 15%; }
.card th:nth-child(2) { width: 27%; }
.card th:nth-child(4) { width: 14%; }
.card th:nth-child(5) { width: 16%; }
.card td:nth-child(4), .card td:nth-child(5) { white-space: nowrap; }
.week { table-layout: fixed; }
.week td { height: 10mm; border: 0.4pt solid #000; }
.week th { border-bottom-width: 0.4pt; }
.dips { display: flex; flex-wrap: wrap; gap: 0 8mm; }
.dips p { break-inside: avoid; white-space: nowrap; font-size: 12pt; }
.notes p, .notes li { font-size: 11.5pt; line-height: 1.2; }
.number { white-space: nowrap; }
.card svg { float: right; margin: 0 0 2mm 4mm; }
.place { float: right; width: 50mm; height: 34mm; border: 0.4pt dashed #000; margin: 0 0 2mm 4mm; padding: 2mm; font-size: 10pt; }
.tick { display: inline-block; width: 5mm; height: 5mm; border: 1pt solid #000; vertical-align: -0.8mm; }
.blank { display: inline-block; min-width: 22mm; border-bottom: 0.6pt solid #000; }
.small, .small li { font-size: 9.5pt; line-height: 1.22; }
.small > ul { columns: 2; column-gap: 8mm; }
.small li { break-inside: avoid; }
ul { margin: 0; padding-left: 5mm; }
footer { font-size: 9.5pt; border-top: 0.4pt solid #000; margin-top: 3mm; padding-top: 1mm; }
`;
}
