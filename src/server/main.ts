import { resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { serverWords } from "../words/en/server.ts";
import { createApp } from "./app.ts";
import { readArgs } from "./args.ts";
import { CannotListen, listen, portOf } from "./listen.ts";
import { buildPage } from "./page/build.ts";
import { readPageFiles } from "./page/files.ts";
import type { PageFile } from "./parts.ts";
import { printDemo } from "./print-demo.ts";
import { realParts } from "./real-parts.ts";
import { stopGracefully } from "./stop.ts";
import { CannotOpenStore, openStore, type Store } from "./store/open.ts";
import { surroundings } from "./store/surroundings.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

async function main(): Promise<number | undefined> {
  const args = readArgs(process.argv.slice(2));
  if ("faults" in args) {
    for (const fault of args.faults) console.error(fault);
    return 2;
  }
  if (args.help) {
    console.log(serverWords.help);
    return 0;
  }
  const store = openedStore(args.data);
  if (store === null) return 1;
  printDemo(root);
  const page = await builtPage();
  let port = args.port;
  const app = createApp({ ...realParts(root, () => port, page), store });
  try {
    const server = await listen(app, args.port);
    port = portOf(server);
    console.log(serverWords.listening(`http://127.0.0.1:${port}/`));
    stopOnSignal(async () => {
      await stopGracefully(server);
      store.db.close();
    });
  } catch (error) {
    if (!(error instanceof CannotListen)) throw error;
    console.error(error.message);
    return 1;
  }
  return undefined;
}

/** The store of a data folder; null where it cannot be used, and the terminal says why. */
function openedStore(folder: string): Store | null {
  try {
    return openStore(resolve(folder), surroundings);
  } catch (error) {
    if (!(error instanceof CannotOpenStore)) throw error;
    console.error(error.message);
    return null;
  }
}

/** The page's files; none where it cannot be built, and the terminal says so. */
async function builtPage(): Promise<PageFile[]> {
  try {
    return await readPageFiles(await buildPage(root, () => console.log(serverWords.building)));
  } catch (error) {
    console.error(error);
    console.error(serverWords.buildFailed);
    return [];
  }
}

/** The first signal stops gracefully, a second one at once. */
function stopOnSignal(stop: () => Promise<void>): void {
  let isStopping = false;
  const onSignal = async () => {
    if (isStopping) process.exit(130);
    isStopping = true;
    console.log(serverWords.stopping);
    await stop();
    process.exit(0);
  };
  process.on("SIGINT", onSignal);
  process.on("SIGTERM", onSignal);
}

process.exitCode = await main();
