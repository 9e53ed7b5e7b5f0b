import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, linkSync, mkdirSync, readdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { expect, it } from "vitest";
import { UsageError } from "../../cli/exit-codes.ts";
import { requireWritable, writeFiles } from "../../cli/write-files.ts";
import { folderWith } from "../folders.ts";
import { wanecast } from "./run-wanecast.ts";

const files = [{ name: "a.txt", chunks: ["one ", "two"] }];

it("writeFiles makes the folders that are missing", async () => {
  const folder = join(folderWith(), "x", "y");
  await writeFiles(folder, files, []);
  expect(readFileSync(join(folder, "a.txt"), "utf8")).toBe("one two");
});
it("writeFiles refuses a folder without a name, such as a shell's empty variable", async () => {
  await expect(writeFiles("", files, [])).rejects.toThrow(UsageError);
});
// who is root may write anywhere
it.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
  "requireWritable tells a folder that takes no files",
  () => {
    const folder = join(folderWith({ "closed/a.txt": "" }), "closed");
    chmodSync(folder, 0o555);
    expect(() => requireWritable(join(folder, "x", "y"))).toThrow(/^Nothing could be written into .*EACCES/);
  },
);
it("requireWritable takes a folder that is not there yet, and no file for one", () => {
  const folder = folderWith({ "a.txt": "" });
  expect(() => requireWritable(join(folder, "x", "y"))).not.toThrow();
  expect(() => requireWritable(join(folder, "a.txt", "y"))).toThrow(/a\.txt is no folder\.$/);
  expect(() => requireWritable("")).toThrow(UsageError);
  expect(existsSync(join(folder, "x"))).toBe(false);
});
it.skipIf(!existsSync("/proc/self"))("writeFiles says so at once where a system takes no folder", async () => {
  await expect(writeFiles("/proc/wanecast/out", files, [])).rejects.toThrow(/^Nothing could be written into /);
});
// links need rights of their own on some systems
it.skipIf(process.platform === "win32")("writeFiles writes over no input, whichever link leads to it", async () => {
  const folder = folderWith({ "sheets/a.txt": "mine" });
  const [sheets, link, input] = [join(folder, "sheets"), join(folder, "link"), join(folder, "sheets", "a.txt")];
  symlinkSync(sheets, link);
  for (const [out, read] of [
    [link, input],
    [sheets, join(link, "a.txt")],
  ] as const) {
    await expect(writeFiles(out, files, [read])).rejects.toThrow(/would be written over/);
  }
  mkdirSync(join(folder, "out"));
  linkSync(input, join(folder, "out", "a.txt"));
  await expect(writeFiles(join(folder, "out"), files, [input])).rejects.toThrow(/would be written over/);
  expect(readFileSync(input, "utf8")).toBe("mine");
});
it.skipIf(process.platform === "win32")("writeFiles follows no link that lies where it writes meanwhile", async () => {
  const folder = folderWith({ "victim.txt": "mine" });
  symlinkSync(join(folder, "victim.txt"), join(folder, `.a.txt.${process.pid}.part`));
  await writeFiles(folder, files, []);
  expect(readFileSync(join(folder, "victim.txt"), "utf8")).toBe("mine");
  expect(readFileSync(join(folder, "a.txt"), "utf8")).toBe("one two");
});
// Windows has no signals to send a program, only ends
it.skipIf(process.platform === "win32").each(["SIGINT", "SIGTERM"] as const)(
  "writeFiles leaves nothing of a half-written output behind where %s stops the program",
  (signal) => {
    const folder = folderWith();
    const script = join(folder, "stopped.cjs");
    const contents = `
      import { writeFiles } from "./cli/write-files.ts";
      function* chunks() {
        for (let at = 0; at < 200; at++) {
          if (at === 3) process.kill(process.pid, "${signal}");
          yield "x".repeat(1 << 20);
        }
      }
      writeFiles(${JSON.stringify(join(folder, "out"))}, [{ name: "a.txt", chunks: ["one"] }, { name: "b.txt", chunks: chunks() }], []);
    `;
    buildSync({
      stdin: { contents, resolveDir: process.cwd(), loader: "ts" },
      bundle: true,
      platform: "node",
      format: "cjs",
      outfile: script,
    });
    expect(spawnSync(process.execPath, [script]).signal).toBe(signal);
    expect(readdirSync(join(folder, "out"))).toEqual([]);
  },
);
it("scan never writes over a fleet's own dated stock", () => {
  const folder = folderWith({ "dated_stock.csv": "item,expiry\npads,2027-01-31\n" });
  const { code, stderr } = wanecast(["scan", "--out", folder], { input: "" });
  expect([code, stderr]).toEqual([
    2,
    `error: ${join(folder, "dated_stock.csv")} is there already; choose another folder, or move it away.\n`,
  ]);
});
