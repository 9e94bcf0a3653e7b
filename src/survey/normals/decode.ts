import type { Climate } from "./climate.ts";

export const rows = 360;
export const columns = 720;

const heightUnit_m = 5;
const fields = 4;

/** The bytes are not those of the climate file. */
export class NotClimate extends Error {
  override readonly name = "NotClimate";
  constructor(found_bytes: number, wanted_bytes: number) {
    super(`The climate file must have ${wanted_bytes} bytes; it has ${found_bytes}.`);
  }
}

/**
 * Reads the climate file, gunzipped: land bits, heights, then four fields of twelve months in which each
 * byte is the step from the code before it.
 */
export function decodeClimate(bytes: Uint8Array): Climate {
  const landBytes = (rows * columns) / 8;
  const landCell = landCells(bytes.subarray(0, landBytes));
  const land = landCell.reduce((most, cell) => Math.max(most, cell), -1) + 1;
  const wanted = landBytes + 2 * land + fields * 12 * land;
  if (land === 0 || bytes.length !== wanted) throw new NotClimate(bytes.length, wanted);

  const words = new DataView(bytes.buffer, bytes.byteOffset + landBytes, 2 * land);
  const height_m = Int16Array.from(
    { length: land },
    (_, cell) => heightUnit_m * words.getInt16(2 * cell, true),
  );
  const months = Array.from({ length: fields * 12 }, (_, month) => {
    const start = landBytes + 2 * land + month * land;
    return undoSteps(bytes.subarray(start, start + land));
  });
  return {
    landCell,
    height_m,
    rain: months.slice(0, 12),
    rainDays: months.slice(12, 24),
    tmin: months.slice(24, 36),
    range: months.slice(36),
  };
}

function landCells(bits: Uint8Array): Int32Array {
  let land = 0;
  return Int32Array.from({ length: rows * columns }, (_, cell) => {
    const isLand = ((bits[cell >> 3] ?? 0) & (0x80 >> (cell & 7))) !== 0;
    return isLand ? land++ : -1;
  });
}

/** A Uint8Array wraps at 256 by itself. */
function undoSteps(steps: Uint8Array): Uint8Array {
  const codes = new Uint8Array(steps.length);
  let code = 0;
  steps.forEach((step, cell) => {
    code += step;
    codes[cell] = code;
  });
  return codes;
}
