/** Black on white, a sheet a side, boxes large enough for a pencil; on a screen the table scrolls in its own frame. */
export const classSheetStyle = `
@page { size: A4 landscape; margin: 10mm }
body { font: 10pt/1.3 "Source Serif 4 Variable", Georgia, serif; color: #000; background: #fff; margin: 0 auto; max-width: 270mm; padding: 0 4mm }
h1 { font-size: 15pt; margin: 0 0 2mm } h2 { font-size: 11.5pt; margin: 2mm 0 .5mm; break-after: avoid }
p { margin: 1mm 0 } ul, ol { margin: 1mm 0; padding-left: 6mm } li { break-inside: avoid }
.sheet + .sheet { break-before: page; margin-top: 12mm }
.head { display: flex; flex-wrap: wrap; gap: 2mm 8mm; align-items: end }
.label { flex: 1 1 50mm; display: flex; gap: 2mm; align-items: end } .line { flex: 1; border-bottom: .2mm solid #000; min-height: 7mm }
.answer { display: block; border-bottom: .2mm solid #000; height: 6mm }
.pair { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 3fr); gap: 0 8mm }
.questions { columns: 2; column-gap: 8mm } 
.small { font-size: 8.5pt }
.frame { overflow-x: auto }
table { border-collapse: collapse; width: 100%; font-variant-numeric: tabular-nums }
th, td { border: .2mm solid #000; padding: .5mm 1.5mm; text-align: right; font-weight: normal }
thead th { vertical-align: bottom } th:first-child { text-align: left; white-space: nowrap } tr { break-inside: avoid }
.empty { min-width: 14mm; height: 7.5mm }
dl { display: grid; grid-template-columns: minmax(0, auto) auto; justify-content: start; gap: 0 8mm; margin: 1mm 0 } dd { margin: 0; font-variant-numeric: tabular-nums; text-align: right }
@media (max-width: 700px) { .pair { grid-template-columns: 1fr } .questions { columns: 1 } }
`;
