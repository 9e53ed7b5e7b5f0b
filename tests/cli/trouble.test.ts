import { execFileSync } from "node:child_process";
import { closeSync, existsSync, openSync, readdirSync, symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith } from "../folders.ts";
import { lonelyProgram, SAMPLE, SAMPLE_NOTE, wanecast, wanecastIntoHead } from "./run-wanecast.ts";
import { SMALL_FLEET } from "./small-fleet.ts";

describe("wanecast in trouble", () => {
  it("leaves quietly where the reader of its pipe does", () => {
    expect(wanecastIntoHead(["check", SAMPLE, "--json"])).toEqual({ stdout: '{\n  "', stderr: SAMPLE_NOTE });
  });
  it("exits with 1 and one line, no stack, where the fault is its own", () => {
    const { code, stdout, stderr } = wanecast(["page", folderWith(SMALL_FLEET)], {
      program: lonelyProgram(["options.cjs", "verbs.cjs", "index.cjs"]),
    });
    expect([code, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/^Our fault, not yours: ENOENT: no such file or directory, open '.*page\.html'\. .*\.\n$/);
  });
  it("exits with 2 where --out is no folder, and leaves nothing behind", () => {
    const folder = folderWith({ "notes.txt": "" });
    const { code, stderr } = wanecast(["check", SAMPLE, "--out", join(folder, "notes.txt")]);
    expect(code).toBe(2);
    expect(stderr).toMatch(/^error: Nothing could be written into .*notes\.txt: .*notes\.txt is no folder\.\n$/);
    expect(readdirSync(folder)).toEqual(["notes.txt"]);
  });
  it.each([
    ["--write-clean", "notes.txt"],
    ["--write-columns", join("notes.txt", "columns.json")],
  ])("exits with 2 before it reads anything where %s leads to no folder", (option, path) => {
    const folder = folderWith({ "notes.txt": "" });
    const { code, stdout, stderr } = wanecast(["check", SAMPLE, option, join(folder, path)]);
    expect([code, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^error: Nothing could be written into .*notes\.txt: .*notes\.txt is no folder\.\n$/);
  });
  it.skipIf(!existsSync("/dev/full"))("says so in one line where what takes its output is full", () => {
    const full = openSync("/dev/full", "w");
    const { code, stderr } = wanecast(["check", SAMPLE], { stdio: ["ignore", full, "pipe"] });
    closeSync(full);
    expect([code, stderr]).toEqual([
      2,
      `${SAMPLE_NOTE}error: The output could not be written: ENOSPC: no space left on device, write.\n`,
    ]);
  });
  // two units stand in the sheet, however often it is named
  it("reads a file once that is named twice, lies in a folder that is named, or is led to by a link", () => {
    const folder = folderWith({ "stock.csv": "item,expiry,quantity,place\npads,2027-05-31,2,D1\n" });
    const file = join(folder, "stock.csv");
    const link = join(folderWith({}), "link.csv");
    symlinkSync(file, link);
    for (const again of [file, folder, link]) {
      const { code, stdout, stderr } = wanecast(["check", folder, again, "--as-of", "2026-11-01", "--json"]);
      const { inputs, fleet } = JSON.parse(stdout) as { inputs: unknown[]; fleet: { dated_stock: unknown[] } };
      expect([code, inputs.length, fleet.dated_stock.length]).toEqual([0, 1, 1]);
      expect(stderr).toBe(`Read once, though named twice: ${again === folder ? file : again}.\n`);
    }
  });
  it("tells two files of one name apart, as those of two sites' folders", () => {
    const [north, south] = ["N", "S"].map((site) =>
      folderWith({ "packs.csv": `serial,in_service\n${site}1,soon\n${site}2,2024-01-01\n` }),
    );
    const { code, stdout, stderr } = wanecast(["check", north!, south!, "--as-of", "2026-11-01", "--json"]);
    const { inputs, findings } = JSON.parse(stdout) as Record<"inputs" | "findings", { file: string; line: number }[]>;
    expect([code, inputs.map(({ file }) => file)]).toEqual([0, ["packs (2).csv", "packs.csv"]]);
    // "soon" is no date in either
    expect(findings.map(({ file, line }) => `${file}:${line}`)).toEqual(["packs (2).csv:2", "packs.csv:2"]);
    expect(stderr).toBe(`Told as packs (2).csv, since another file has its name: ${join(south!, "packs.csv")}.\n`);
  });
  it("passes over what is hidden in a folder: half a file, a lock, a copy of what is open", () => {
    const older = "serial,in_service\nA,2020-01-01\n";
    const names = [".packs.csv.77.part", "._packs.csv", ".~lock.packs.csv#", "~$packs.xlsx", ".DS_Store"];
    const hidden = Object.fromEntries(names.map((name) => [name, older]));
    const folder = folderWith({ ...hidden, "packs.csv": "serial,in_service\nA,2024-01-01\n" });
    const { code, stdout } = wanecast(["check", folder, "--as-of", "2026-11-01", "--json"]);
    expect(code).toBe(0);
    expect(JSON.parse(stdout).inputs.map(({ file }: { file: string }) => file)).toEqual(["packs.csv"]);
  });
  it("refuses a folder without files, and says that folders inside it are not read", () => {
    const folder = folderWith({ "sheets/2026/packs.csv": "serial\nA\n" });
    const { code, stderr } = wanecast(["packs", join(folder, "sheets"), "--as-of", "2026-11-01"]);
    expect(code).toBe(3);
    expect(stderr).toMatch(/^Refused:\nsheets: The folder holds no files; folders inside a folder are not read/);
  });
  // a name that would clear the screen and set the window's title, as a folder from elsewhere may hold it
  it.skipIf(process.platform === "win32")("steers no terminal by what it says of names and arguments", () => {
    const steering = "a\u001b[2J\u001b]0;b\u0007\u202e";
    const folder = folderWith({ [`${steering}.xlsx`]: "PK\u0003\u0004" });
    for (const args of [
      ["plan", folder],
      ["plan", folder, "--policy", `${steering}=1`],
      ["compare", `${steering}.json`, `${steering}.json`],
      [steering],
      ["plan", folder, `--${steering}`],
    ]) {
      const { code, stderr } = wanecast(args);
      expect(code, stderr).not.toBe(0);
      expect(stderr).toContain("a [2J ]0;b");
      expect(stderr).not.toMatch(/[^\P{Cc}\n]|\u202e/u);
    }
  });
  it.skipIf(process.platform === "win32")("reads a folder's files alone: no folder behind a link, no pipe", () => {
    const folder = folderWith({ "sheets/packs.csv": "serial\nA\n", "other/more.csv": "serial\nB\n" });
    const sheets = join(folder, "sheets");
    symlinkSync(join(folder, "other"), join(sheets, "other"));
    execFileSync("sh", ["-c", 'mkfifo "$1"', "sh", join(sheets, "pipe.csv")]);
    const { code, stdout } = wanecast(["check", sheets, "--as-of", "2026-11-01", "--json"], { timeout: 60_000 });
    expect(code).toBe(0);
    expect(JSON.parse(stdout).inputs.map(({ file }: { file: string }) => file)).toEqual(["packs.csv"]);
  });
  it("refuses a broken workbook, named or in a folder, and says the way out", () => {
    const folder = folderWith({ "register.xlsx": "PK\u0003\u0004", "packs.csv": "serial\nA\n" });
    const refused = {
      code: 3,
      stdout: "",
      stderr: "Refused:\nregister.xlsx: The workbook is cut off or damaged; copy or save it again. [truncated]\n",
    };
    expect(wanecast(["packs", folder, "--as-of", "2026-11-01"])).toEqual(refused);
    const sample = wanecast(["packs", SAMPLE, join(folder, "register.xlsx")]);
    expect(sample).toEqual({ ...refused, stderr: SAMPLE_NOTE + refused.stderr });
  });
});
