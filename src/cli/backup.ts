import { backUp } from "../server/store/backup.ts";
import { backupWords } from "../words/en/backup.ts";
import { readDataFlags } from "./data-flags.ts";
import { refusable } from "./refusable.ts";

await refusable(async () => {
  const flags = readDataFlags(process.argv.slice(2), "out");
  if (flags === null) return console.log(backupWords.backupHelp);
  const sites = await backUp(flags.data, flags.file);
  console.log(backupWords.written(flags.file, sites));
});
