/** Text as it may stand in HTML, in attributes too. */
export function escapeHtml(text: string): string {
  return text.replace(
    /[&<>"']/g,
    (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" })[sign]!,
  );
}

/** Black on white, large enough for a pen on a clipboard; a way never breaks over two sheets. */
export const fieldSheetStyle = `
@page { size: A4; margin: 14mm }
body { font: 11pt/1.35 "Source Serif 4 Variable", Georgia, serif; color: #000; background: #fff; margin: 0 auto; max-width: 190mm; padding: 0 4mm }
h1 { font-size: 17pt; margin: 0 0 3mm } h2 { font-size: 12pt; margin: 3mm 0 1mm } h3 { font-size: 12pt; margin: 0 }
p { margin: 1mm 0 } ul, ol { margin: 1mm 0; padding-left: 6mm }
.sheet + .sheet { break-before: page } .ways { columns: 2; column-gap: 8mm }
.way { break-inside: avoid; border-top: .3mm solid #000; padding: 1.5mm 0 2mm }
.head { display: flex; flex-wrap: wrap; gap: 2mm 6mm } .blank { flex: 1 1 70mm; display: flex; gap: 2mm; align-items: end }
.seen .blank { flex-wrap: wrap } .seen .line { min-width: 24mm; min-height: 6.5mm } .line { flex: 1; border-bottom: .2mm solid #000; min-height: 8mm } .key { font-size: 9.5pt }
table { display: block } tr, th, td { display: block; padding: 0 } th { text-align: left; font-weight: normal }
.cell { display: inline-block; width: 17mm; height: 9mm; border: .2mm solid #000; margin: 0 1mm 1mm 0 }
.box { display: inline-block; width: 4mm; height: 4mm; border: .2mm solid #000; vertical-align: -0.6mm } .typed { font-size: 9.5pt }
.notes { border: .2mm solid #000; min-height: 25mm; padding: 2mm; break-inside: avoid }
@media (max-width: 640px) { .ways { columns: 1 } }
`;
