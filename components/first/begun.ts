import type { FirstEntries } from "../../src/survey/first/entries.ts";

const key = "grounds-water-balance.first";

/** A first answer under way, and the text that each entry was typed as. */
export interface Begun {
  entries: FirstEntries;
  typed: Readonly<Record<string, string>>;
}

const nothing: Begun = { entries: {}, typed: {} };

/** What was entered here before, on this computer; nothing where the browser keeps nothing. */
export function readBegun(): Begun {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
    return typeof kept === "object" && kept !== null && "entries" in kept ? (kept as Begun) : nothing;
  } catch {
    return nothing;
  }
}

export function keepBegun(begun: Begun): void {
  try {
    localStorage.setItem(key, JSON.stringify(begun));
  } catch {
    // a browser that keeps nothing still works it out
  }
}

export function forgetBegun(): void {
  try {
    localStorage.removeItem(key);
  } catch {
    // nothing was kept
  }
}

export function firstIsBegun(): boolean {
  return Object.keys(readBegun().entries).length > 0;
}
