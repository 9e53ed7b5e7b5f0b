import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { folderWith, SAMPLE, wanecast } from "./run-wanecast.ts";

describe("trace", () => {
  it("finds every place of a lot, with the units that the sheet gives it", () => {
    const { stdout, code } = wanecast(["trace", "w2708", SAMPLE, "--json"]);
    expect(code).toBe(0);
    const traced = JSON.parse(stdout) as {
      format: string;
      ids: unknown;
      datedStock: { quantity: number }[];
      items: unknown;
    };
    expect(traced.format).toBe("wanecast.trace/1");
    expect(traced.ids).toEqual([{ id: "w2708", as: ["lot"] }]);
    const lines = readFileSync(join(SAMPLE, "dated_stock.csv"), "utf8").split(/\r?\n/);
    const bearing = lines.filter((line) => /(^|,)W2708(,|$)/.test(line));
    expect(traced.datedStock).toHaveLength(bearing.length);
    expect(bearing.length).toBeGreaterThan(5);
  });

  it("takes a recall notice's list, and says what is in no sheet", () => {
    const list = join(folderWith({ "lots.txt": "W2708\n\nNO-SUCH-LOT\n" }), "lots.txt");
    const { stdout, code } = wanecast(["trace", "--ids", list, SAMPLE]);
    expect(code).toBe(0);
    expect(stdout).toContain("W2708 is a lot in these sheets.");
    expect(stdout).toContain("Not in these sheets: NO-SUCH-LOT.");
    expect(stdout).toContain("planning aid");
  });

  it("asks for the sheets where there are none", () => {
    const { stderr, code } = wanecast(["trace", "W2708"]);
    expect(code).toBe(2);
    expect(stderr).toContain("wanecast trace ID INPUT...");
  });
});

describe("scan", () => {
  // Source: GS1 General Specifications, element strings: (17) with day 00 is the month's last day, a lot may hold
  // digits that look like an identifier, and a separator ends it; the check digit of 0109506000134353 should be 2.
  it("turns scans into rows, and names the line of one that it cannot read", () => {
    const scans = "0109506000134352172606001021A\u001d21X17\n0109506000134353\n";
    const { stdout, stderr, code } = wanecast(["scan", "--as-of", "2026-11-01"], { input: scans });
    expect(code).toBe(0);
    expect(stdout.split("\n")[1]).toContain("09506000134352,2026-06-30,21A,X17,1,");
    expect(stderr).toContain("-:2: The label");
    const json = wanecast(["scan", "--as-of", "2026-11-01", "--json", "--fail-on", "set-aside"], { input: scans });
    expect(json.code).toBe(4);
    const check = JSON.parse(json.stdout) as { format: string; inputs: object[] };
    expect(check.format).toBe("wanecast.check/1");
    expect(check.inputs).toMatchObject([{ file: "-", rows: 2, used: 1, setAside: 1 }]);
  });
});

describe("columns files and clean sheets", () => {
  it("give back the same fleet", () => {
    const folder = folderWith();
    const columns = join(folder, "columns.json");
    const clean = join(folder, "clean");
    const first = wanecast(["check", SAMPLE, "--json", "--write-columns", columns, "--write-clean", clean]);
    expect(first.code).toBe(0);
    const again = wanecast(["check", SAMPLE, "--json", "--columns", columns]);
    expect((JSON.parse(again.stdout) as { fleet: unknown }).fleet).toEqual(
      (JSON.parse(first.stdout) as { fleet: unknown }).fleet,
    );
    const cleaned = wanecast(["check", join(clean, "fleet.xlsx"), "--json"]);
    const counts = (text: string) =>
      Object.values((JSON.parse(text) as { fleet: Record<string, unknown[]> }).fleet).map((rows) => rows.length);
    expect(counts(cleaned.stdout)).toEqual(counts(first.stdout));
  });

  it("refuse a columns file that is none", () => {
    const { stderr, code } = wanecast(["check", SAMPLE, "--columns", "package.json"]);
    expect(code).toBe(2);
    expect(stderr).toContain("--columns package.json");
  });
});
