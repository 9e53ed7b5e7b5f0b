import { readFileSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, it } from "vitest";

const ROOT = resolve(import.meta.dirname, "../..");
const TYPES = join(ROOT, "dist/types");
const PAGE = join(ROOT, "src/reference.md");

/** What a docstring says first, up to its first tag or blank line. */
function told(comment: string): string {
  const lines = comment.split("\n").map((line) => line.replace(/^\s*(\/\*\*|\*\/|\*)\s?|\s*\*\/$/g, "").trim());
  const text = lines.join("\n").trim();
  return text
    .split(/\n\s*(?:\n|@)/)[0]!
    .replace(/\s+/g, " ")
    .trim();
}

/** A name that the library lets out: how it is declared, and what its docstring says. */
function entry(name: string, file: string): string {
  const text = readFileSync(join(TYPES, file.replace(/\.js$/, ".d.ts")), "utf8");
  const found = new RegExp(
    `(/\\*\\*(?:(?!\\*/).)*\\*/)\\s*export (?:declare )?(function|const|interface|type) ${name}\\b(.*)`,
    "s",
  ).exec(text);
  expect(found, `${name} has a docstring`).not.toBeNull();
  const [, comment, word, rest] = found!;
  const shape = word === "function" || word === "const" ? /^(.*?);\n(?![ }])/s.exec(rest!)![1]! : "";
  const declared = `${name}${shape}`.replace(/\s+/g, " ");
  return `- \`${word === "interface" ? "type" : word} ${declared}\`  \n  ${told(comment!)}`;
}

/** The page: every name of src/index.ts, functions and values before types. */
function reference(): string {
  const index = readFileSync(join(TYPES, "index.d.ts"), "utf8");
  const names = [...index.matchAll(/export (?:type )?\{([^}]*)\} from "(.*?)"/g)].flatMap(([, list, file]) =>
    list!.split(",").map((name) => [name.replace("type ", "").trim(), file!] as const),
  );
  const entries = names.map(([name, file]) => entry(name, file)).sort();
  const types = entries.filter((line) => line.startsWith("- `type "));
  const others = entries.filter((line) => !types.includes(line));
  return `# What the library lets out

\`import { makePlan } from "wanecast"\`; an example and the rule of versions stand in DEVELOPERS.md, "As a library". Days are
whole numbers, \`YYYY-MM-DD\` to and fro by \`dayFromIso\` and \`isoFromDay\`. This page is made from the docstrings; a test holds
it to them.

## Functions and values

${others.join("\n")}

## Types

${types.join("\n")}
`;
}

it("src/reference.md says what the docstrings say (UPDATE_REFERENCE=1 writes it anew)", () => {
  const made = reference();
  if (process.env.UPDATE_REFERENCE) writeFileSync(PAGE, made);
  expect(readFileSync(PAGE, "utf8")).toBe(made);
});
