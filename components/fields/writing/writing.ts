/** What a text field makes of what is typed, and how it writes what is there. */
export interface Writing {
  /** The value that a text stands for; undefined for a blank one. */
  read(text: string): Reading;
  /** A value as text; what could not be read before comes back as it was typed. */
  show(value: unknown): string;
  /** Stands beside the field: m², %, a day. */
  unit: string;
  inputMode: "decimal" | "text";
  /** Characters that the field is wide. */
  width: number;
  /** Lines that it is high; one where not said. */
  lines?: number;
}

/** A value, or why there is none: no number, or a number in a unit that the field does not know. */
export type Reading = { value: unknown } | { wrong: "unreadable" } | { wrong: "unit"; unit: string };

export const blank: Reading = { value: undefined };

export function isBlank(text: string): boolean {
  return text.trim() === "";
}
