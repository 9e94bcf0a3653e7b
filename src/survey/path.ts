/** Where something stands in the document: field names and list positions. */
export type Path = readonly (string | number)[];

const plain = /^[A-Za-z_$][\w$]{0,63}$/;

/** `beds[2].area_m2`; a name that is not a plain one stands in quotes: `site["a b"]`. */
export function pathText(path: Path): string {
  let text = "";
  for (const step of path) {
    if (typeof step === "number") text += `[${step}]`;
    else if (plain.test(step)) text += text === "" ? step : `.${step}`;
    else text += `["${oneLine(step, 60)}"]`;
  }
  return text === "" ? "survey" : text;
}

/** What was typed, on one line, shortened, with nothing that a terminal would act on. */
export function oneLine(text: string, longest: number): string {
  const start = text.length > longest ? `${text.slice(0, longest)}…` : text;
  return start.replace(
    /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/gu,
    (mark) => `\\u${mark.codePointAt(0)!.toString(16).padStart(4, "0")}`,
  );
}
