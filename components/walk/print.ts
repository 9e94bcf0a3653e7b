import { html, LitElement, type TemplateResult } from "lit";

const style = `
h1 { font-size: 17pt; margin: 0 0 3mm } p { margin: 1mm 0 } table { border-collapse: collapse; margin-top: 4mm }
th, td { padding: 1.2mm 8mm 1.2mm 0; text-align: right; border-bottom: .2mm solid #999 }
:host { display: block; color: #000; background: #fff } @media screen { :host { display: none } }
`;

/** What is on the paper while something is printed alone; the page is put away meanwhile. */
class PaperSheet extends LitElement {
  declare content: TemplateResult;
  declare css: string;

  constructor() {
    super();
    this.content = html``;
    this.css = style;
  }

  protected override createRenderRoot(): ShadowRoot {
    const root = this.attachShadow({ mode: "open" });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(this.css);
    root.adoptedStyleSheets = [sheet];
    return root;
  }

  protected override render() {
    return this.content;
  }
}

customElements.define("gwb-paper", PaperSheet);

/** Prints one thing alone: the rest of the page is hidden while the paper is made. */
export function printOnly(content: TemplateResult, css = style): void {
  const paper = document.createElement("gwb-paper") as PaperSheet;
  paper.content = content;
  paper.css = css;
  const hide = new CSSStyleSheet();
  hide.replaceSync("@media print { body > :not(gwb-paper) { display: none !important } }");
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, hide];
  document.body.append(paper);
  const away = () => {
    paper.remove();
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((sheet) => sheet !== hide);
  };
  addEventListener("afterprint", away, { once: true });
  void paper.updateComplete.then(() => print());
}
