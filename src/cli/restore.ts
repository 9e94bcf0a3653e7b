import { bringBackUp } from "../server/store/backup.ts";
import { storeFile } from "../server/store/open.ts";
import { backupWords } from "../words/en/backup.ts";
import { readDataFlags } from "./data-flags.ts";
import { refusable } from "./refusable.ts";

await refusable(async () => {
  const flags = readDataFlags(process.argv.slice(2), "from");
  if (flags === null) return console.log(backupWords.restoreHelp);
  const { setAside, sites } = await bringBackUp(flags.data, flags.file, new Date());
  if (setAside !== null) console.log(backupWords.setAside(setAside));
  console.log(backupWords.restored(storeFile(flags.data), sites));
});
