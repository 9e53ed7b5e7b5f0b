import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: { name: "unit", include: ["tests/**/*.test.ts"], exclude: ["tests/browser/**"], testTimeout: 120_000, hookTimeout: 120_000 },
      },
      {
        root,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/find-chromium.ts"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
