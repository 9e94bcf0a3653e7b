import type { UnitSystem } from "../../src/units.ts";

const KEY = "grounds-water-balance.units";

function known(text: string | null): UnitSystem | null {
  return text === "metric" || text === "us" ? text : null;
}

/** Units by the address, else as chosen last on this computer, else metric. */
export function readUnits(): UnitSystem {
  const asked = known(new URL(location.href).searchParams.get("units"));
  if (asked) return asked;
  try {
    return known(localStorage.getItem(KEY)) ?? "metric";
  } catch {
    return "metric";
  }
}

/** Keeps a choice, in the address (to be passed on) and on this computer. */
export function keepUnits(units: UnitSystem): void {
  const address = new URL(location.href);
  address.searchParams.set("units", units);
  history.replaceState(null, "", address);
  try {
    localStorage.setItem(KEY, units);
  } catch {
    // a browser that keeps nothing still shows the choice
  }
}
