// Runs the bench scripts, each in a process of its own: npm run bench [-- NAME...]
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";

const FOLDER = "tests/bench";
/** A script is NAME.bench-script.ts; one that takes minutes is NAME.long.bench-script.ts and runs only when it is named. */
const SCRIPT = /^([\w-]+)(\.long)?\.bench-script\.ts$/;

const scripts = readdirSync(FOLDER)
  .sort()
  .flatMap((file) => {
    const [, name, long] = SCRIPT.exec(file) ?? [];
    return name === undefined ? [] : [{ name, long: long !== undefined, path: join(FOLDER, file) }];
  });

const named = process.argv.slice(2);
const unknown = named.filter((name) => scripts.every((script) => script.name !== name));
if (unknown.length > 0) {
  const list = scripts.map(({ name, long }) => (long ? `${name} (long: only when named)` : name));
  console.error(`No bench is called ${unknown.join(" or ")}. There are: ${list.join(", ")}.`);
  process.exitCode = 2;
} else {
  for (const { name, path } of scripts.filter(({ name, long }) => (named.length > 0 ? named.includes(name) : !long))) {
    console.log(`\n${name}`);
    // bundled and minified as the program is, so that the figures are those of what people run
    const outfile = `dist/bench/${name}.cjs`;
    buildSync({ entryPoints: [path], outfile, bundle: true, minify: true, platform: "node", target: "node20" });
    const { status } = spawnSync(process.execPath, [outfile], { stdio: "inherit" });
    if (status !== 0) process.exitCode = 1;
  }
}
