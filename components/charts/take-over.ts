const SVG = "http://www.w3.org/2000/svg";

/** Where a drawing is made before it is shown. */
export function scratchDrawing(): SVGSVGElement {
  return document.createElementNS(SVG, "svg");
}

/** What is drawn, without its textures and the line that somebody reads by. */
function partsOf(svg: SVGSVGElement): Element[] {
  return [...svg.children].filter(
    (part) => part.localName !== "defs" && !part.classList.contains("reading-line"),
  );
}

/**
 * Takes a drawing made anew over from its scratch. Where its parts may be kept, those that are as they were stay, so
 * that nothing is laid out or painted for them: a ruler that moves draws a few paths, not sixty parts.
 */
export function takeOver(svg: SVGSVGElement, scratch: SVGSVGElement, keepsParts: boolean): void {
  const defs = scratch.querySelector("defs");
  if (defs && !svg.querySelector("defs")) svg.prepend(defs.cloneNode(true));
  const [before, now] = [partsOf(svg), partsOf(scratch)];
  const end = svg.querySelector(".reading-line");
  now.forEach((part, i) => {
    const old = before[i];
    if (old === undefined) svg.insertBefore(part, end);
    else if (!keepsParts || !old.isEqualNode(part)) old.replaceWith(part);
  });
  for (const old of before.slice(now.length)) old.remove();
  for (const part of partsOf(scratch)) part.remove();
}
