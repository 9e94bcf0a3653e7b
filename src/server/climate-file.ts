import { readFileSync } from "node:fs";
import { gunzipSync } from "node:zlib";
import type { Climate } from "../survey/normals/climate.ts";
import { decodeClimate } from "../survey/normals/decode.ts";

const file = new URL("../../data/climate/halfdeg.bin.gz", import.meta.url);

let kept: Climate | null = null;

/** The world's normals from the data folder: read on the first call, kept for the next. */
export function readClimate(): Climate {
  kept ??= decodeClimate(gunzipSync(readFileSync(file)));
  return kept;
}
