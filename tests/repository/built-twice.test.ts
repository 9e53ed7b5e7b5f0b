import { execFileSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { afterAll, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const again = mkdtempSync(join(tmpdir(), "wanecast-built-"));
afterAll(() => rmSync(again, { recursive: true, force: true }));

it("the program built once more has the bytes that it has in dist/", () => {
  const vite = resolve(ROOT, "node_modules/vite/bin/vite.js");
  const { NODE_ENV: _, ...env } = process.env;
  execFileSync(
    process.execPath,
    [vite, "build", "--config", "cli/vite.config.ts", "--logLevel", "warn", "--outDir", again],
    { cwd: ROOT, env },
  );
  const names = readdirSync(again);
  expect(names).toContain("wanecast.cjs");
  const different = names.filter(
    (name) => !readFileSync(join(again, name)).equals(readFileSync(join(ROOT, "dist", name))),
  );
  expect(different, "where dist/ is older than the code, npm run build first").toEqual([]);
});
