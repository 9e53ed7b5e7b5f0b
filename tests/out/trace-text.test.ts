import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { traceCsv } from "../../src/out/trace-csv.ts";
import { traceJson } from "../../src/out/trace-json.ts";
import { traceText } from "../../src/out/trace-text.ts";
import { traceIds } from "../../src/supplies/trace.ts";
import type { Trace } from "../../src/supplies/traced.ts";
import { day, device, ordered, pack, stock } from "../fleet/make-rows.ts";

const AS_OF = day("2026-11-01");
const inDevice = stock("Pads", "2027-06-30", "D1", { lot: "AB12", quantity: 2 });
const onShelf = stock("Pads", "2027-06-30", "Store", { lot: "=AB12", quantity: 6, held: "seal in doubt" });
const retired = pack("AB1300", { item: "Pack", device: "D2", retired: day("2025-01-01") });

const trace: Trace = {
  ids: [
    { id: "AB1*", as: ["lot", "serial"] },
    { id: "G1", as: ["lot"] },
    { id: "none", as: [] },
  ],
  stock: [
    { row: inDevice, installed: true, swapBy: day("2027-06-16") },
    { row: onShelf, installed: false, swapBy: day("2027-06-16") },
  ],
  packs: [pack("AB1299", { item: "Pack", device: "D1" }), pack("AB1301", { item: "Pack", site: "North" }), retired],
  orders: [ordered("Pads", 20, { order: "PO-7", supplier: "Acre", arrives: day("2026-12-01") })],
  places: [
    { place: "D1", device: true, units: 2, packs: 1 },
    { place: "Store", device: false, units: 6, packs: 0 },
    { place: "(no place given)", device: false, units: 1, packs: 0 },
  ],
  items: [
    {
      item: "Pads",
      inUse: 2,
      onShelves: 6,
      onOrder: 20,
      usableElsewhere: 1,
      lacking: 1,
      coveredOn: day("2026-12-01"),
    },
    { item: "Pack", inUse: 1, onShelves: 0, onOrder: 0, usableElsewhere: 3, lacking: 0, coveredOn: AS_OF },
  ],
};
const text = traceText(trace, [], AS_OF, { width: 100 });
const rowOf = (start: string, within = text) => within.split("\n").find((line) => line.startsWith(start));

describe("traceText", () => {
  it("says what each identifier is, and which is in no sheet", () => {
    expect(text).toContain("Traced as of 2026-11-01: AB1*, G1, none");
    expect(text).toContain("\nLots: AB1*, G1.\n");
    expect(text).toContain("\nAB1* is the start of a serial in these sheets.\n");
    expect(text).toContain("\nNot in these sheets: none. Check the spelling");
  });

  it("tells a label that cannot be trusted from what is in no sheet", () => {
    const ids = [{ id: "(01)95", as: [], wrong: "gives (01) 2 instead of 14 characters" }];
    const told = traceText({ ...trace, ids }, [], AS_OF, { width: 80 });
    expect(told).toContain("\nThe label (01)95 gives (01) 2 instead of 14 characters. Scan it again.\n");
    expect(told).not.toContain("Not in these sheets");
  });

  it("sends to the lines that name it and that nothing counts, and does not call it unknown then", () => {
    const lines = (count: number) =>
      Array.from({ length: count }, (_, at) => ({ id: "none", file: "stock.csv", sheet: null, line: at + 2 }));
    const told = (count: number) => traceText(trace, lines(count), AS_OF, { width: 400 });
    expect(told(2)).toContain("\nnone stands in lines that nothing here counts");
    expect(told(2)).toContain(": stock.csv, line 2; stock.csv, line 3. Look there, too;");
    expect(told(2)).not.toContain("Not in these sheets");
    // eight are listed
    expect(told(10)).toContain("stock.csv, line 9 and 2 more.");
    const csv = Papa.parse<Record<string, string>>(traceCsv(trace, lines(1), AS_OF), {
      header: true,
      skipEmptyLines: true,
    });
    expect(csv.data.at(-1)).toMatchObject({ what: "not counted", lot: "none", file: "stock.csv", line: "2" });
    expect(traceJson(trace, lines(1), AS_OF)).toMatchObject({ notCounted: lines(1) });
  });

  it("counts identifiers instead of listing them where they are more than five", () => {
    const ids = Array.from({ length: 6 }, (_, at) => ({ id: `L${at}`, as: ["lot" as const] }));
    expect(traceText({ ...trace, ids }, [], AS_OF, { width: 80 })).toMatch(/^Traced as of 2026-11-01: 6 identifiers\n/);
  });

  it("tells what is lacking and when it is covered, and where everything lies", () => {
    expect(rowOf("Pads ")?.split(/\s{2,}/)).toEqual(["Pads", "2", "6", "20", "1", "1", "2026-12-01"]);
    expect(rowOf("Pack ")?.split(/\s{2,}/)).toEqual(["Pack", "1", "0", "0", "3", "0", "now"]);
    const places = text.slice(text.indexOf("Where it lies"), text.indexOf("Dated stock"));
    expect(rowOf("D1", places)?.split(/\s{2,}/)).toEqual(["D1", "device", "2", "1"]);
    expect(rowOf("Store", places)?.split(/\s{2,}/)).toEqual(["Store", "store or site", "6", "0"]);
    expect(rowOf("(no place", places)?.split(/\s{2,}/)).toEqual(["(no place given)", "-", "1", "0"]);
    expect(text).toContain("- 20 units of Pads, order PO-7, from Acre, arriving 2026-12-01.");
  });

  it("says no day where none is known, and none is asked for where nothing is lacking", () => {
    const [pads, packs] = trace.items;
    const open = traceText({ ...trace, items: [{ ...pads!, coveredOn: null }] }, [], AS_OF, { width: 100 });
    expect(rowOf("Pads ", open)).toMatch(/not known$/);
    expect(traceText({ ...trace, items: [packs!] }, [], AS_OF, { width: 100 })).not.toContain("covered on");
  });

  it("always ends with the cautions: what is recalled comes out now", () => {
    const nothing = { ...trace, stock: [], packs: [], orders: [], places: [], items: [] };
    for (const told of [text, traceText(nothing, [], AS_OF, { width: 60 })]) {
      expect(told.replace(/\s+/g, " ")).toContain("is recalled comes out now, whatever the forecast says.");
    }
  });
});

describe("traceCsv", () => {
  it("is a list to walk round with: a line a row, what it is and where, no cell a formula", () => {
    const lines = Papa.parse<Record<string, string>>(traceCsv(trace, [], AS_OF), {
      header: true,
      skipEmptyLines: true,
    }).data;
    expect(lines.map(({ what, place, device, item, quantity }) => [what, place, device, item, quantity])).toEqual([
      ["dated stock", "D1", "yes", "Pads", "2"],
      ["dated stock", "Store", "no", "Pads", "6"],
      ["pack", "D1", "yes", "Pack", "1"],
      ["pack", "North", "no", "Pack", "1"],
      ["retired pack", "D2", "yes", "Pack", "1"],
      ["on order", "", "no", "Pads", "20"],
    ]);
    expect(lines[1]).toMatchObject({
      lot: "'=AB12",
      expiry: "2027-06-30",
      swap_by: "2027-06-16",
      held: "seal in doubt",
    });
    expect(lines[2]).toMatchObject({ serial: "AB1299", expiry: "", swap_by: "" });
    expect(lines[5]).toMatchObject({ order: "PO-7", arrives: "2026-12-01" });
    for (const { file, line } of lines) expect([file, line]).not.toContain("");
    // a line of a workbook is found by its tab
    const source = { file: "fleet.xlsx", sheet: "Pads", line: 17 };
    const inTab = traceCsv(
      { ...trace, stock: [{ row: { ...inDevice, source }, installed: true, swapBy: AS_OF }] },
      [],
      AS_OF,
    );
    const [first] = Papa.parse<Record<string, string>>(inTab, { header: true }).data;
    expect(first).toMatchObject({ file: "fleet.xlsx", sheet: "Pads", line: "17" });
  });
});

// By hand: M1 left in October and is a device all the same; P1 leaves in a month's time and is in it today, P2 left today
describe("traceCsv of what has left service, or will", () => {
  it("calls a device a device, and a pack retired from the day on which it is", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("M1", { retired: day("2026-10-01") }), device("M2")],
      packs: [
        pack("P1", { item: "Pack", device: "M2", retired: day("2026-12-01") }),
        pack("P2", { item: "Pack", device: "M2", retired: AS_OF }),
      ],
      datedStock: [
        stock("Pads", "2027-06-30", "m1", { lot: "P7" }),
        stock("Pads", "2027-06-30", "M2", { lot: "P8" }),
        stock("Pads", "2027-06-30", "Store", { lot: "P9" }),
      ],
    };
    const lines = traceCsv(traceIds(fleet, defaultPolicy(AS_OF), ["P*"]), [], AS_OF).split("\r\n");
    expect(lines.slice(1, 6).map((line) => line.split(",").slice(0, 3).join(" "))).toEqual([
      "dated stock M1 yes",
      "dated stock M2 yes",
      "dated stock Store no",
      "pack M2 yes",
      "retired pack M2 yes",
    ]);
  });
});

describe("traceJson", () => {
  it("has days as ISO dates and null where there is none", () => {
    const json = JSON.parse(JSON.stringify(traceJson(trace, [], AS_OF)));
    expect(json).toMatchObject({ format: "wanecast.trace/1", asOf: "2026-11-01" });
    expect(json.packs.map(({ retired: on }: { retired: string | null }) => on)).toEqual([null, null, "2025-01-01"]);
    expect(json.onOrder[0]).toMatchObject({ arrives: "2026-12-01", order: "PO-7" });
    expect(json.datedStock[0]).toMatchObject({ lot: "AB12", expiry: "2027-06-30", installed: true, held: null });
    expect(json.items[0]).toMatchObject({ lacking: 1, coveredOn: "2026-12-01" });
    const held = { ...trace, packs: [pack("AB1299", { item: "Pack", device: "D1", held: "swollen" })] };
    expect(JSON.parse(JSON.stringify(traceJson(held, [], AS_OF))).packs[0]).toMatchObject({ held: "swollen" });
    expect(rowOf("AB1299", traceText(held, [], AS_OF, { width: 100 }))).toMatch(/ swollen$/);
    expect(text).not.toMatch(/retired +held/);
  });
});
