const lineHeight_px = 19;

/** A drawing as a file of its own: its inks written into it, and the names below that its numbers stand for. */
export function drawingFile(drawing: SVGSVGElement, names: readonly string[]): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const [, , width = 0, height = 0] = (copy.getAttribute("viewBox") ?? "").split(" ").map(Number);
  copy.setAttribute("xmlns", svgNames);
  copy.setAttribute("viewBox", `0 0 ${width} ${height + lineHeight_px * (names.length + 1)}`);
  const style = document.createElementNS(svgNames, "style");
  style.textContent = paperInks;
  copy.prepend(style);
  names.forEach((name, i) => {
    const line = document.createElementNS(svgNames, "text");
    line.setAttribute("x", "26");
    line.setAttribute("y", String(height + lineHeight_px * (i + 1)));
    line.textContent = `${i + 1}. ${name}`;
    copy.append(line);
  });
  const text = new XMLSerializer().serializeToString(copy).replace(/<!--[\s\S]*?-->/g, "");
  return text.replaceAll("var(--grey)", "#56615e");
}

const svgNames = "http://www.w3.org/2000/svg";

const paperInks = `text { font: 13px Georgia, serif; fill: #22302f } .ink { fill: none; stroke: #22302f; stroke-width: 1.6 }
.bed { fill: #e9e5da; stroke: #22302f; stroke-width: 1.4 } .roof { fill: url(#roof); stroke: #22302f; stroke-width: 1.4 }
.loose { stroke-dasharray: 4 3 } .tank { fill: #0f6a8a; stroke: #22302f } .tap { fill: #fff; stroke: #22302f; stroke-width: 2 }`;
