import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
/** Data flows one way: a folder imports only from folders above it. */
const ORDER = [
  "calendar",
  "maths",
  "fleet",
  "sheets",
  "fade",
  "life",
  "supplies",
  "demand",
  "orders",
  "short",
  "out",
  "plan.ts",
  "index.ts",
];

function filesUnder(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return filesUnder(path);
    return /\.tsx?$/.test(name) ? [path] : [];
  });
}

/** What a file imports, as written. */
function importsOf(path: string): string[] {
  const text = readFileSync(path, "utf8");
  return [...text.matchAll(/(?:from|import)\s*\(?\s*["']([^"']+)["']/g)].map((match) => match[1]!);
}

/** The file's place in ORDER, by its first folder below src. */
const levelOf = (path: string) => ORDER.indexOf(relative(join(ROOT, "src"), path).split("/")[0]!);

describe("imports", () => {
  const source = filesUnder(join(ROOT, "src"));

  it("find every folder of src in the order", () => {
    expect(source.length).toBeGreaterThan(50);
    for (const path of source) expect(levelOf(path), relative(ROOT, path)).toBeGreaterThanOrEqual(0);
  });

  it("go one way through src", () => {
    const wrong = source.flatMap((path) =>
      importsOf(path)
        .filter((name) => name.startsWith("."))
        .map((name) => resolve(dirname(path), name))
        .filter((target) => !target.startsWith(join(ROOT, "src/")) || levelOf(target) > levelOf(path))
        .map((target) => `${relative(ROOT, path)} imports ${relative(ROOT, target)}`),
    );
    expect(wrong).toEqual([]);
  });

  it("keep maths and calendar free of everything of ours but calendar", () => {
    const wrong = source
      .filter((path) => levelOf(path) <= 1)
      .flatMap((path) =>
        importsOf(path)
          .filter((name) => name.startsWith("../"))
          .map((name) => `${relative(ROOT, path)} imports ${name}`),
      );
    expect(wrong).toEqual([]);
  });

  it("let cli and web reach src by its public list alone", () => {
    const wrong = ["cli", "web"]
      .flatMap((folder) => filesUnder(join(ROOT, folder)))
      .flatMap((path) =>
        importsOf(path)
          .filter((name) => name.startsWith("."))
          .map((name) => resolve(dirname(path), name))
          .filter((target) => target.startsWith(join(ROOT, "src/")) && target !== join(ROOT, "src/index.ts"))
          .map((target) => `${relative(ROOT, path)} imports ${relative(ROOT, target)}`),
      );
    expect(wrong).toEqual([]);
  });

  it("bring no node, clock, locale, chance or print into src", () => {
    const forbidden = /["']node:|Date\.now|new Date\(\)|Math\.random|toLocale|\bprocess\.|\bconsole\./;
    const wrong = source.flatMap((path) =>
      readFileSync(path, "utf8")
        .split("\n")
        .flatMap((line, i) => (forbidden.test(line) ? [`${relative(ROOT, path)}:${i + 1} ${line.trim()}`] : [])),
    );
    expect(wrong).toEqual([]);
  });

  it("leave the language's own dates to the calendar and to the reader of workbooks", () => {
    const forbidden = /new Date\b|\bDate\.|instanceof Date\b|: Date\b|\bIntl\.|["']@?date-fns/;
    const users = source
      .filter((path) => forbidden.test(readFileSync(path, "utf8")))
      .map((path) => dirname(relative(ROOT, path)));
    expect([...new Set(users)]).toEqual(["src/calendar", "src/sheets/workbook"]);
  });
});
