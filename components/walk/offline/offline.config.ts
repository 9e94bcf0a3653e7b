import { fileURLToPath } from "node:url";
import type { Plugin } from "vite";

const keeper = fileURLToPath(new URL("./keeper.ts", import.meta.url));

/** Builds the page's keeper beside it, under a name that stays, with the list of the files that it keeps. */
export function keptPage(): Plugin {
  return {
    name: "kept-page",
    apply: "build",
    buildStart() {
      this.emitFile({ type: "chunk", id: keeper, fileName: "keeper.js" });
    },
    generateBundle: {
      // after the page's own step, which still takes files out
      order: "post",
      handler(_options, bundle) {
        const files = Object.keys(bundle).sort();
        this.emitFile({ type: "asset", fileName: "kept.json", source: JSON.stringify(files) });
      },
    },
  };
}
