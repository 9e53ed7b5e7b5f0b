import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";

/*
 * Writes the library's types to dist/types: what the compiler says of src/index.ts and of all that it reaches. Types
 * that are inferred from a zod schema are written out, so that whoever uses the library needs no package for them.
 */

const ROOT = process.cwd();
const WORK = join(ROOT, "dist", "types-work");
const OUT = join(ROOT, "dist", "types");
/** Each file that holds a schema, the schema, and the type inferred from it. */
const INFERRED = [
  ["out/plan-schema", "planSchema", "Plan"],
  ["out/check-schema", "checkSchema", "Check"],
] as const;

rmSync(WORK, { recursive: true, force: true });
rmSync(OUT, { recursive: true, force: true });
mkdirSync(WORK, { recursive: true });
const asked = INFERRED.flatMap(([file, schema, type]) => [
  `import { ${schema} } from "../../src/${file}.ts";`,
  `export const of${type} = ${schema}.parse(null);`,
]);
writeFileSync(join(WORK, "inferred.ts"), asked.join("\n"));
const config = {
  extends: "../../tsconfig.json",
  compilerOptions: {
    noEmit: false,
    declaration: true,
    emitDeclarationOnly: true,
    types: [],
    rootDir: "../..",
    outDir: "emitted",
  },
  include: [],
  files: ["../../src/index.ts", "inferred.ts"],
};
writeFileSync(join(WORK, "tsconfig.json"), JSON.stringify(config));
execFileSync(process.execPath, [join(ROOT, "node_modules/typescript/bin/tsc"), "--project", WORK], {
  stdio: "inherit",
});

const emitted = join(WORK, "emitted", "src");
const inferred = readFileSync(join(WORK, "emitted", "dist", "types-work", "inferred.d.ts"), "utf8");
for (const [file, , type] of INFERRED) {
  const [, shape] = new RegExp(`export declare const of${type}: (\\{.*?^\\});`, "ms").exec(inferred) ?? [];
  if (shape === undefined) throw new Error(`The compiler wrote no type ${type}.`);
  const path = join(emitted, `${file}.d.ts`);
  const comment = new RegExp(`(/\\*\\*[^/]*\\*/\\n)export type ${type}\\b`).exec(readFileSync(path, "utf8"))?.[1] ?? "";
  writeFileSync(path, `${comment}export type ${type} = ${shape};\n`);
}

const reached = new Set<string>();
reach(join(emitted, "index.d.ts"));
for (const path of reached) cpSync(path, join(OUT, relative(emitted, path)));
rmSync(WORK, { recursive: true });

/** Notes a file of types and all that it imports, each import named as JavaScript would. */
function reach(path: string): void {
  if (reached.has(path)) return;
  reached.add(path);
  const text = readFileSync(path, "utf8");
  for (const [, from] of text.matchAll(/(?:from |import\()"([^"]+)"/g)) {
    if (!from!.startsWith(".")) throw new Error(`${relative(emitted, path)} needs the types of ${from}.`);
    reach(resolve(dirname(path), from!.replace(/\.ts$/, ".d.ts")));
  }
  writeFileSync(path, text.replace(/((?:from |import\()"\.[^"]+)\.ts"/g, '$1.js"'));
}
