import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/setup.ts"],
    // a journey with a page to build and every rule of accessibility to ask takes its time on two cores
    testTimeout: 180_000,
    hookTimeout: 180_000,
    // what a page comes to show is waited for as patiently as a step of a journey
    expect: { poll: { timeout: 20_000 } },
    maxWorkers: 2,
    retry: process.env.CI ? 1 : 0,
  },
});
