/** Everything of the page but the sheets, out of the way while they print. */
const alone = `
@media screen { .pages-to-print { display: none; } }
@media print { body > :not(.pages-to-print) { display: none !important; } html { font-size: 100%; } }
`;

/**
 * Puts sheets into the page as they are to be printed: alone on paper, unseen on the screen.
 * @param sheets an HTML document of our own making, its text escaped
 * @returns takes them away again
 */
export function placePages(sheets: string): () => void {
  const { look, rest: without } = partStyle(sheets);
  const made = new DOMParser().parseFromString(without, "text/html");
  const { rest, pages } = partRules(look);
  const host = document.createElement("div");
  host.className = "pages-to-print";
  host.lang = made.documentElement.lang;
  const root = host.attachShadow({ mode: "open" });
  // made style sheets, since the page's policy lets no style stand in the page itself
  root.adoptedStyleSheets = [sheetOf(rest.replace(/^body\b/gm, ".body"))];
  const body = document.createElement("div");
  body.className = "body";
  body.append(...[...made.body.childNodes].map((node) => document.importNode(node, true)));
  root.append(body);
  const outer = sheetOf(`${alone}\n@media print { ${pages} }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, outer];
  document.body.append(host);
  return () => {
    host.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== outer);
  };
}

/** A document's style and the document without it: the page's policy lets no style stand in what is read. */
export function partStyle(sheets: string): { look: string; rest: string } {
  const style = /<style>([\s\S]*?)<\/style>/;
  return { look: style.exec(sheets)?.[1] ?? "", rest: sheets.replace(style, "") };
}

/** Rules of the page's size count in the document alone. */
export function partRules(look: string): { rest: string; pages: string } {
  const page = /@page[^{]*\{[^}]*\}/g;
  return { rest: look.replace(page, ""), pages: (look.match(page) ?? []).join("\n") };
}

function sheetOf(rules: string): CSSStyleSheet {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(rules);
  return sheet;
}

/** Prints sheets; they go when the printing is over. */
export function printPages(sheets: string): void {
  const remove = placePages(sheets);
  addEventListener("afterprint", remove, { once: true });
  print();
}

/** Saves text as a file. */
export function saveText(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // the browser reads it after the click
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
