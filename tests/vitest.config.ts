import { defineConfig } from "vitest/config";

const root = new URL("..", import.meta.url).pathname;
const patient = { testTimeout: 120_000, hookTimeout: 120_000 };

/** Whatever touches dates runs again far east of Greenwich, and half an hour off the full hours to the west. */
const elsewhere = ["Pacific/Auckland", "America/St_Johns"].map((zone) => ({
  root,
  test: {
    name: zone,
    include: ["tests/{calendar,fleet,sheets,fade,supplies,orders,out}/**/*.test.ts"],
    exclude: [
      "tests/sheets/fuzz.test.ts",
      "tests/orders/optimum.test.ts",
      "tests/fade/{item-fit,pack-outlook,pack-posterior}.test.ts",
    ],
    env: { TZ: zone },
    ...patient,
  },
}));

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/browser/**"],
          env: { TZ: "UTC" },
          ...patient,
        },
      },
      ...elsewhere,
      {
        root,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/find-chromium.ts"],
          fileParallelism: false,
          ...patient,
        },
      },
    ],
  },
});
