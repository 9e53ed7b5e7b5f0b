import { chmodSync, existsSync, linkSync, mkdirSync, readFileSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { UsageError } from "../../cli/exit-codes.ts";
import { requireWritable, writeFiles } from "../../cli/write-files.ts";
import { folderWith } from "../folders.ts";
import { wanecast } from "./run-wanecast.ts";

const files = [{ name: "a.txt", chunks: ["one ", "two"] }];

it("writeFiles makes the folders that are missing", () => {
  const folder = join(folderWith(), "x", "y");
  writeFiles(folder, files, []);
  expect(readFileSync(join(folder, "a.txt"), "utf8")).toBe("one two");
});
it("writeFiles refuses a folder without a name, such as a shell's empty variable", () => {
  expect(() => writeFiles("", files, [])).toThrow(UsageError);
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
it.skipIf(!existsSync("/proc/self"))("writeFiles says so at once where a system takes no folder", () => {
  expect(() => writeFiles("/proc/wanecast/out", files, [])).toThrow(/^Nothing could be written into /);
});
// links need rights of their own on some systems
it.skipIf(process.platform === "win32")("writeFiles writes over no input, whichever link leads to it", () => {
  const folder = folderWith({ "sheets/a.txt": "mine" });
  const [sheets, link, input] = [join(folder, "sheets"), join(folder, "link"), join(folder, "sheets", "a.txt")];
  symlinkSync(sheets, link);
  for (const [out, read] of [
    [link, input],
    [sheets, join(link, "a.txt")],
  ] as const) {
    expect(() => writeFiles(out, files, [read])).toThrow(/would be written over/);
  }
  mkdirSync(join(folder, "out"));
  linkSync(input, join(folder, "out", "a.txt"));
  expect(() => writeFiles(join(folder, "out"), files, [input])).toThrow(/would be written over/);
  expect(readFileSync(input, "utf8")).toBe("mine");
});
it.skipIf(process.platform === "win32")("writeFiles follows no link that lies where it writes meanwhile", () => {
  const folder = folderWith({ "victim.txt": "mine" });
  symlinkSync(join(folder, "victim.txt"), join(folder, `.a.txt.${process.pid}.part`));
  writeFiles(folder, files, []);
  expect(readFileSync(join(folder, "victim.txt"), "utf8")).toBe("mine");
  expect(readFileSync(join(folder, "a.txt"), "utf8")).toBe("one two");
});
it("scan never writes over a fleet's own dated stock", () => {
  const folder = folderWith({ "dated_stock.csv": "item,expiry\npads,2027-01-31\n" });
  const { code, stderr } = wanecast(["scan", "--out", folder], { input: "" });
  expect([code, stderr]).toEqual([
    2,
    `error: ${join(folder, "dated_stock.csv")} is there already; choose another folder, or move it away.\n`,
  ]);
});
