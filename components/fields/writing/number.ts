/** The signs that a locale writes its numbers with. */
interface Signs {
  decimal: string;
  group: string;
}

const known = new Map<string, Signs>();

function signsOf(locale: string | undefined): Signs {
  const key = locale ?? "";
  const kept = known.get(key);
  if (kept) return kept;
  const parts = new Intl.NumberFormat(locale, { useGrouping: true, numberingSystem: "latn" }).formatToParts(
    1234567.5,
  );
  const part = (type: string) => parts.find((one) => one.type === type)?.value ?? "";
  const signs = { decimal: part("decimal") || ".", group: part("group") };
  known.set(key, signs);
  return signs;
}

/** Spaces and apostrophes between groups, and the unseen marks that turn the writing direction. */
const spaces = /[\s\u00A0\u202F\u2009'’\u061C\u200E\u200F]/g;

/**
 * A number as people write it: 1 000, 3,5, 1'234.5, −4. A lone point or comma before three digits is what the locale
 * makes of it: "1,234" is a thousand and more in English, one and a bit where numbers have a decimal comma.
 * @returns null where the text is no number
 */
export function readNumber(text: string, locale?: string): number | null {
  const plain = westernDigits(text).replace(spaces, "").replace(/^[−–]/, "-");
  if (!/^[-+]?(\d[\d.,]*|[.,]\d+)$/.test(plain)) return null;
  const decimal = decimalSign(plain, signsOf(locale));
  if (decimal === null) return null;
  const [whole = "", ...parts] = decimal === "" ? [plain] : plain.split(decimal);
  if (parts.length > 1 || /[.,]/.test(parts[0] ?? "") || !isGrouped(whole)) return null;
  const number = Number(`${whole.replace(/[.,]/g, "") || "0"}.${parts[0] || "0"}`);
  return Number.isFinite(number) ? number : null;
}

/** The sign that the fraction begins with; blank where there is none, null where it cannot be told. */
function decimalSign(plain: string, signs: Signs): string | null {
  const points = plain.split(".").length - 1;
  const commas = plain.split(",").length - 1;
  if (points === 0 && commas === 0) return "";
  if (points > 0 && commas > 0) {
    const last = plain.lastIndexOf(".") > plain.lastIndexOf(",") ? "." : ",";
    return (last === "." ? points : commas) === 1 ? last : null;
  }
  const sign = points > 0 ? "." : ",";
  if (points + commas > 1) return "";
  const looksGrouped = new RegExp(`^[-+]?[1-9]\\d{0,2}\\${sign}\\d{3}$`).test(plain);
  return looksGrouped && sign === signs.group ? "" : sign;
}

/** 12,345,678 and 1.234 are grouped by threes; 1,23,456 is not, but for the lakh and crore of South Asia. */
function isGrouped(whole: string): boolean {
  return /^[-+]?(\d*|\d{1,3}([.,])\d{3}(\2\d{3})*|\d{1,2}(,\d{2})*,\d{3})$/.test(whole);
}

/** Digits of other scripts as 0 to 9. */
function westernDigits(text: string): string {
  return text
    .replace(/[٠-٩]/g, (digit) => String(digit.charCodeAt(0) - 0x660))
    .replace(/[۰-۹]/g, (digit) => String(digit.charCodeAt(0) - 0x6f0))
    .replace(/[०-९]/g, (digit) => String(digit.charCodeAt(0) - 0x966))
    .replace(/٫/g, ".")
    .replace(/٬/g, "");
}

/** A number with as many digits as it has, written so that readNumber gets it back. */
export function showNumber(value: number, digits = 12, locale?: string): string {
  return new Intl.NumberFormat(locale, { maximumSignificantDigits: digits, numberingSystem: "latn" }).format(
    value,
  );
}
