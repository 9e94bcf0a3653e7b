import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { keptPage } from "./walk/offline/offline.config.ts";

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

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
        // what several places share comes in few files: every file is another way to the server and back
        codeSplitting: {
          groups: [
            { name: "frame", tags: ["$initial"] },
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
