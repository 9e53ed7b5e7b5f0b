import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, it } from "vitest";
import { makeProgram } from "../../cli/program.ts";
import { SHEETS } from "../../src/fleet/columns.ts";
import { POLICY_KEYS } from "../../src/fleet/policy-keys.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const read = (name: string) => readFileSync(resolve(ROOT, name), "utf8");
const readme = read("README.md");
const developers = read("DEVELOPERS.md");
const manifest = JSON.parse(read("package.json")) as Record<
  "scripts" | "dependencies" | "devDependencies",
  Record<string, string>
>;

/** Paths in code quotes that start at a folder of the repository. */
const pathsIn = (text: string) =>
  [...text.matchAll(/`((?:src|tests|cli|web|sample-data|\.ci)\/[\w./-]*)`/g)].map((found) => found[1]!);

describe("README", () => {
  it("opens with the job in one paragraph, then the two commands", () => {
    const [title, job] = readme.split("\n\n");
    expect(title).toBe("# Wanecast");
    expect(job!.split(" ").length).toBeGreaterThan(40);
    const run = readme.indexOf("npm ci && npm start");
    const test = readme.indexOf("npm ci && npm test");
    expect(run).toBeGreaterThan(0);
    expect(test).toBeGreaterThan(run);
    expect(test).toBeLessThan(readme.indexOf("\n## "));
  });

  it("names every verb", () => {
    for (const { name } of makeProgram().commands.map((command) => ({ name: command.name() }))) {
      expect(readme, name).toMatch(new RegExp(`^\\| ${name} \\|`, "m"));
    }
  });

  it("names every option of every verb", () => {
    for (const { long } of makeProgram().commands.flatMap(({ options }) => options)) {
      expect(readme, long ?? "").toMatch(new RegExp(`${long}\\b`));
    }
  });

  it("names every sheet with its required columns in bold", () => {
    for (const { kind, columns } of SHEETS) {
      const row = readme.split("\n").find((line) => line.startsWith(`| ${kind} |`));
      expect(row, kind).toBeDefined();
      for (const { name, required } of columns) if (required) expect(row, `${kind} ${name}`).toContain(`**${name}**`);
    }
  });

  it("names every file that a verb writes", () => {
    const written = makeProgram().commands.flatMap(({ options }) =>
      options.flatMap(({ long, description }) =>
        long === "--out" ? (description.match(/\b\w+\.[a-z]+\b/g) ?? []) : [],
      ),
    );
    expect(written).toContain("plan.json");
    for (const file of written) expect(readme, file).toContain(file);
  });

  it("says what every policy key does, as the page does", () => {
    for (const { key, unit, default: byDefault, explains } of POLICY_KEYS) {
      expect(readme).toContain(`\n| \`${key}\` | ${unit} | ${byDefault} | ${explains} |\n`);
    }
  });

  it("names only files that are there", () => {
    for (const path of pathsIn(readme)) expect(existsSync(resolve(ROOT, path)), path).toBe(true);
  });
});

describe("DEVELOPERS.md", () => {
  it("names every script and every package", () => {
    // as a command in code quotes, and as a word of its own in the table: "vitest" does not name "vite"
    for (const name of Object.keys(manifest.scripts)) {
      expect(developers, name).toMatch(new RegExp(`\`(npm (run )?)?${name}\``));
    }
    const packages = developers.slice(developers.indexOf("## Packages"), developers.indexOf("## Style"));
    const named = new Set(packages.split("\n").flatMap((line) => line.split("|")[1]?.trim().split(/,\s*/) ?? []));
    for (const name of Object.keys({ ...manifest.dependencies, ...manifest.devDependencies })) {
      expect(named.has(name), name).toBe(true);
    }
  });

  it("names only files that are there", () => {
    const paths = pathsIn(developers);
    expect(paths.length).toBeGreaterThan(20);
    for (const path of paths) expect(existsSync(resolve(ROOT, path)), path).toBe(true);
  });
});

describe("README and DEVELOPERS.md", () => {
  const documents = `${readme}\n${developers}`;
  const tree = ["src", "cli", "web", "tests", "sample-data"].flatMap((folder) =>
    readdirSync(resolve(ROOT, folder), { recursive: true }).map((name) => `${folder}/${name}`),
  );
  const found = (pattern: RegExp, least: number) => {
    const all = [...documents.matchAll(pattern)].map((match) => match[1]!);
    expect(new Set(all).size).toBeGreaterThanOrEqual(least);
    return all;
  };

  it("name only scripts that there are", () => {
    const scripts = Object.keys(manifest.scripts);
    for (const name of found(/\bnpm run (?:--silent )?([\w:-]+)/g, 5)) expect(scripts).toContain(name);
    for (const name of found(/\bnpm (start|test)\b/g, 2)) expect(scripts).toContain(name);
  });

  it("name only benches that there are", () => {
    const benches = tree.map((path) => /^tests\/bench\/([\w-]+)\.(long\.)?bench-script\.ts$/.exec(path)?.[1]);
    for (const name of found(/npm run bench -- ([a-z]\w*)/g, 3)) expect(benches).toContain(name);
  });

  it("name only tests that there are in the commands that run them", () => {
    // vitest takes the start of a path
    for (const path of found(/--project \w+ (tests\/[\w/.-]+\w)/g, 4)) {
      expect(
        tree.some((name) => name.startsWith(path)),
        path,
      ).toBe(true);
    }
  });

  it("name only files of code that there are, with their folder or without", () => {
    for (const path of found(/`(?:\S*\/)?([\w-]+\.ts)`/g, 30)) {
      expect(
        tree.some((name) => name.endsWith(`/${path}`)),
        path,
      ).toBe(true);
    }
  });

  it("name only variables that something reads", () => {
    const code = tree.filter((path) => path.endsWith(".ts") && !path.includes("documents.test"));
    const text = code.map((path) => read(path)).join("\n");
    // Node's own, for whoever runs it
    for (const name of found(/`?\b([A-Z][A-Z_]{3,})=[\w-]/g, 4).filter(
      (one) => one !== "NODE_OPTIONS" && one !== "KEY",
    ))
      expect(text).toMatch(new RegExp(`\\benv\\.${name}\\b`));
  });
});

describe("pictures", () => {
  it("are small", () => {
    const pictures = [...readme.matchAll(/!\[[^\]]+\]\(([^)]+)\)/g)].map((found) => found[1]!);
    expect(pictures.length).toBeGreaterThan(0);
    for (const path of pictures) expect(statSync(resolve(ROOT, path)).size, path).toBeLessThan(150_000);
  });
});

describe("links", () => {
  it("lead somewhere", () => {
    for (const [, target] of `${readme}\n${developers}`.matchAll(/\]\(([^)#]+)\)/g)) {
      expect(existsSync(resolve(ROOT, target!)), target).toBe(true);
    }
  });
});
