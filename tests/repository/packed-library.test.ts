import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { folderWith, removeFolders } from "../folders.ts";

const ROOT = resolve(import.meta.dirname, "../..");
const section = readFileSync(join(ROOT, "DEVELOPERS.md"), "utf8").split("\n## As a library\n")[1]!.split("\n## ")[0]!;
const example = /```js\n(.*?)```/s.exec(section)![1]!;

describe("the package, packed and installed elsewhere without a network", () => {
  let folder: string;
  const node = (...args: string[]) => execFileSync(process.execPath, args, { cwd: folder, encoding: "utf8" });

  beforeAll(() => {
    folder = folderWith({ "package.json": '{ "type": "module" }', "example.js": example });
    const npm = (cwd: string, ...args: string[]) => execFileSync("npm", args, { cwd, encoding: "utf8" });
    const archive = npm(ROOT, "pack", "--silent", "--ignore-scripts", "--pack-destination", folder).trim();
    npm(folder, "install", "--offline", "--silent", "--no-audit", "--no-fund", `./${archive}`);
    return removeFolders;
  });

  it("brings no other package, and its program runs", () => {
    expect(readdirSync(join(folder, "node_modules")).filter((name) => !name.startsWith("."))).toEqual(["wanecast"]);
    expect(node("node_modules/.bin/wanecast", "--version")).toMatch(/^\d+\.\d+\.\d+\n$/);
  });

  it("runs the example of DEVELOPERS.md as it stands", () => {
    // By hand: expiry 2027-03-31 less 14 days is 17 March; a month's needs fall on its first day, 1 March, less 14 days
    // of safety and 30 days of lead time is 44 days before: 16 January. Two pads expire, and no use is known.
    expect(node("example.js")).toBe("2027-01-16 2 adult pads\n");
  });

  it("has types: the example, with those of its own parameters added, is strict TypeScript", () => {
    const typed = example.replace("(name, ...lines)", "(name: string, ...lines: string[])");
    const wrong = "\n// @ts-expect-error: a month is text\nplan.horizon.from.toFixed();\n";
    writeFileSync(join(folder, "example.ts"), typed + wrong);
    const strict = ["--strict", "--noEmit", "--module", "nodenext", "--lib", "es2022,dom", "--types", ""];
    const tsc = join(ROOT, "node_modules/typescript/bin/tsc");
    expect(node(tsc, "--ignoreConfig", ...strict, "example.ts")).toBe("");
  });
});
