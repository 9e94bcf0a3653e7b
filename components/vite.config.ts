import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { keptPage } from "./walk/offline/offline.config.ts";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The page's keeper runs without a page: what both are made of comes in a file without a page's parts. */
const keeper = /offline[\\/]keeper\.ts$/;
const ofBoth = /offline[\\/]kept\.ts$/;

/** The page, built into dist/page: hashed files, nothing inline, nothing from elsewhere. */
export default defineConfig({
  root: at("."),
  base: "/",
  publicDir: false,
  resolve: {
    // the packages' own production builds, whatever environment builds the page
    conditions: ["module", "browser", "production"],
    alias: { "@fontsource-variable": at("../node_modules/@fontsource-variable") },
  },
  build: {
    outDir: at("../dist/page"),
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: true,
    rolldownOptions: {
      output: {
        // What several places share comes in few files, as every file is another way to the server and back. Of the
        // counts tried (2, 3, 4, 6), these gave the walk and the survey their first words soonest (npm run audit) while the
        // first answer, which needs least of them, lost little.
        codeSplitting: {
          groups: [
            { name: "kept", test: ofBoth, priority: 1 },
            { name: "frame", tags: ["$initial"], test: (file) => !keeper.test(file) },
            { name: "packages", test: /node_modules/, minShareCount: 3 },
            { name: "common", minShareCount: 4 },
          ],
        },
      },
    },
  },
  worker: { format: "es" },
  plugins: [keptPage()],
});
