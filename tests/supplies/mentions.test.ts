import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { mentionsBeside } from "../../src/supplies/mentions.ts";
import { traceIds } from "../../src/supplies/trace.ts";
import { AS_OF, textFile } from "../sheets/sheet-file.ts";

/** File and line of what is told beside the traced rows, by identifier. */
function told(ids: string[], sheets: Record<string, string[]>): string[] {
  const files = Object.entries(sheets).map(([name, lines]) => textFile(name, lines.join("\n")));
  const reading = readSheets(files, { asOf: AS_OF, dateOrder: null });
  const trace = traceIds(reading.fleet, defaultPolicy(AS_OF), ids);
  return mentionsBeside(files, null, reading, trace, AS_OF).map(({ id, file, line }) => `${id} ${file}:${line}`);
}

const STOCK = ["item,lot,expiry,quantity,place", "pads,AA1,2027-05-31,2,D1"];

describe("mentionsBeside: lines that name what is recalled and that no trace counts", () => {
  it("tells of rows set aside: no date, a clash, a quantity out of bounds", () => {
    const sheets = {
      "packs.csv": ["serial,item,in_service,device", "P2,bat,2024-01-01,D1", "P2,bat,2025-01-01,D2"],
      "stock.csv": [...STOCK, "pads,ZZ1,2027-13-45,2,D2", "pads,aa1,,1,D3", "pads,ZZ2,2027-05-31,-4,D4"],
    };
    expect(told(["P2"], sheets)).toEqual(["P2 packs.csv:2", "P2 packs.csv:3"]);
    // ZZ1 is known nowhere else, AA1 lies in D1 as well
    expect(told(["ZZ1", "AA1"], sheets)).toEqual(["ZZ1 stock.csv:3", "AA1 stock.csv:4"]);
    expect(told(["ZZ*"], sheets)).toEqual(["ZZ* stock.csv:3", "ZZ* stock.csv:5"]);
  });

  it("tells of a used row whose pads have no date, and of a word in a column that was not read", () => {
    const wide = ["Device,Site,Pads lot,Pads expiry,Remarks", "D1,North,AA1,2027-05-31,", "D2,North,AA1,soon,"];
    expect(told(["AA1"], { "wide.csv": wide })).toEqual(["AA1 wide.csv:3"]);
    expect(told(["B7"], { "wide.csv": [...wide, "D3,North,AA2,2027-05-31,also one of (B7)"] })).toEqual([
      "B7 wide.csv:4",
    ]);
  });

  it("tells of tests only where nothing else bears the serial", () => {
    const tests = ["serial,date,percent", "P1,2026-01-05,90", "P9,2026-01-05,90"];
    const packs = ["serial,item,in_service,device", "P1,bat,2024-01-01,D1"];
    expect(told(["P1"], { "packs.csv": packs, "tests.csv": tests })).toEqual([]);
    expect(told(["P9"], { "packs.csv": packs, "tests.csv": tests })).toEqual(["P9 tests.csv:3"]);
  });

  it("passes over what was traced, what repeats it, and numbers that count or date", () => {
    expect(told(["AA1"], { "stock.csv": STOCK })).toEqual([]);
    const packs = ["serial,item,in_service,device", "P1,bat,2024-01-01,D1", "P1,bat,2024-01-01,D1"];
    expect(told(["P1"], { "packs.csv": packs })).toEqual([]);
    expect(told(["2"], { "stock.csv": STOCK })).toEqual([]);
  });
});
