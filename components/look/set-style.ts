import { noChange } from "lit";
import { Directive, directive, type ElementPart, type PartInfo, PartType } from "lit/directive.js";

/** Sets styles through the element itself: a style attribute is what the page's security policy refuses. */
class SetStyle extends Directive {
  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new TypeError("setStyle stands in an element's tag.");
  }

  render(_styles: Readonly<Record<string, string>>): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [styles]: [Readonly<Record<string, string>>]): typeof noChange {
    for (const [name, value] of Object.entries(styles))
      (element as HTMLElement | SVGElement).style.setProperty(name, value);
    return noChange;
  }
}

/** `<span ${setStyle({ width: "3ch" })}>`; names as in CSS, custom properties too. */
export const setStyle = directive(SetStyle);
