/** `npm run kill-test`: 200 kills of a saving server (or as many as named), and what they lost. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { killAgainAndAgain } from "../server/store/kill/kills.ts";

const wanted = Number(process.argv[2] ?? 200);
const folder = mkdtempSync(join(tmpdir(), "grounds-kills-"));
const { kills, answered, lost } = await killAgainAndAgain(folder, wanted, () => 10 + Math.random() * 700);
rmSync(folder, { recursive: true });
for (const what of lost) console.log(`✗ ${what}`);
console.log(`${kills} kills, ${answered} saves answered for, ${lost.length} lost`);
process.exitCode = lost.length === 0 ? 0 : 1;
