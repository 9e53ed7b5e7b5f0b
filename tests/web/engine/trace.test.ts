import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../../src/fleet/policy.ts";
import { emptyFleet } from "../../../src/fleet/rows.ts";
import { trace as traceOn } from "../../../web/engine/trace.ts";
import { smallReading } from "../../browser/fixtures/small-plan.ts";
import { catalogued, day, device, ordered, pack, stock } from "../../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const trace = (wanted: string, of: Parameters<typeof traceOn>[1]) => traceOn(wanted, of, policy).rows;
const source = { file: "stock.csv", sheet: null, line: 4 };
const reading = {
  ...smallReading,
  fleet: {
    ...emptyFleet(),
    datedStock: [
      { item: "pads", expiry: 21000, lot: "L 77", serial: null, quantity: 3, place: "D1" },
      { item: "pads", expiry: 21000, lot: "L78", serial: null, quantity: 3, place: "Store" },
    ].map((row) => ({ ...row, made: null, opened: null, label: null, held: null, source })),
  },
};

describe("trace: every row that bears a name", () => {
  it("finds a lot without regard to case and blanks, with its line", () => {
    expect(trace(" l  77", reading)).toEqual([
      {
        kind: "dated stock",
        item: "pads",
        name: "L 77",
        place: "D1",
        // The small fleet's devices are not among these sheets.
        site: null,
        quantity: 3,
        // 21000 days after 1 January 1970.
        until: "2027-07-01",
        file: "stock.csv",
        sheet: null,
        line: 4,
      },
    ]);
  });

  it("says at which site the device stands that holds it", () => {
    const device = { ...smallReading.fleet.devices[0]!, device: "d1", site: "Harbour" };
    const known = { ...reading, fleet: { ...reading.fleet, devices: [device] } };
    expect(trace("L77", { ...known }).map(({ site }) => site)).toEqual([]);
    expect(trace("L 77", known).map(({ place, site }) => [place, site])).toEqual([["d1", "Harbour"]]);
    expect(trace("L78", known).map(({ place, site }) => [place, site])).toEqual([["Store", null]]);
  });

  // By hand: the row bears the serial M-7 and lies in M1, and is one unit by either
  it("counts a row once that bears what is asked for by serial and by place, however its item is spelled", () => {
    const row = { ...reading.fleet.datedStock[0]!, item: "PADS", place: "M1", serial: "M-7", lot: null, quantity: 1 };
    const fleet = { ...reading.fleet, catalogue: [catalogued("Pads", "pads")], datedStock: [row] };
    const traced = traceOn("m*", { ...reading, fleet }, policy);
    expect(traced.rows).toMatchObject([{ kind: "dated stock", item: "Pads", name: "M-7" }]);
    expect(traced.units).toBe(1);
  });

  it("sends to a row that was set aside, of which nothing else is known, and not to a repeat", () => {
    const aside = (line: number, reason: string) => ({
      ...{ file: "stock.csv", sheet: null, line, reason, message: "" },
      cells: ["pads", "L 79", null, 2],
    });
    const set = { ...reading, setAside: [aside(8, "missing-required"), aside(9, "repeat")] };
    const found = trace("l 79", set);
    expect(found).toMatchObject([{ kind: "set aside", file: "stock.csv", line: 8, place: null, quantity: null }]);
    expect(trace("L 80", set)).toEqual([]);
  });

  it("takes what ends in a star for a beginning", () => {
    expect(trace("l*", reading).map(({ name }) => name)).toEqual(["L 77", "L78"]);
    expect(trace("L7*", reading).map(({ name }) => name)).toEqual(["L78"]);
    expect(trace("*", reading)).toEqual([]);
  });

  // Source of the GTINs: GS1 General Specifications, examples with their check digits
  it("finds a product by its GTIN, and a label's lot of its own product only", () => {
    const catalogue = [
      catalogued("pads", "pads", { gtin: "09506000134352" }),
      catalogued("gel", "gel", { gtin: "09521234543213" }),
    ];
    const [, second] = reading.fleet.datedStock;
    const others = ["gel", "paper"].map((item) => ({ ...second!, item }));
    const fleet = { ...reading.fleet, catalogue, datedStock: [...reading.fleet.datedStock, ...others] };
    const items = (wanted: string) => trace(wanted, { ...reading, fleet }).map(({ item, name }) => [item, name]);
    expect(items("9506000134352")).toEqual([
      ["pads", "L 77"],
      ["pads", "L78"],
    ]);
    // of an item whose GTIN the sheets do not tell the lot may be the same
    expect(items("(01)09506000134352(10)L78")).toEqual([
      ["pads", "L78"],
      ["paper", "L78"],
    ]);
  });

  it("finds what lies in a device, and nothing for nothing", () => {
    expect(trace("d1", reading)).toHaveLength(1);
    expect(trace("  ", reading)).toEqual([]);
  });
});

// By hand: the lot lies in D1 (2) and the store (6); of the 4 usable units elsewhere on the shelf 3 are held.
// 30 days after 1 November is 1 December.
describe("trace: what it takes to do without", () => {
  const fleet = {
    ...emptyFleet(),
    devices: [device("D1"), device("D2")],
    catalogue: [catalogued("pads", "pads", { leadDays: 30 })],
    datedStock: [
      stock("pads", "2027-06-30", "D1", { lot: "AB12", quantity: 2 }),
      stock("pads", "2027-06-30", "Store", { lot: "AB12", quantity: 6 }),
      stock("pads", "2027-09-30", "Store", { lot: "ZZ1", quantity: 1 }),
      stock("pads", "2027-09-30", "Store", { lot: "ZZ2", quantity: 3, held: "recall" }),
    ],
    packs: [
      pack("B1", { item: "cell", device: "D2" }),
      pack("B2", { item: "cell", device: "D2", retired: day("2026-01-01") }),
    ],
    onOrder: [ordered("pads", 20, { order: "PO-7" })],
  };
  const tell = (wanted: string) => traceOn(wanted, { ...smallReading, fleet, setAside: [] }, policy);

  it("counts what is in use and what can take its place, and when what is lacking can be there", () => {
    const { units, places, without, wrong } = tell("ab12");
    expect([units, places, wrong]).toEqual([8, 2, null]);
    expect(without).toEqual([
      {
        ...{ item: "pads", inUse: 2, onShelves: 6, onOrder: 0 },
        ...{ usableElsewhere: 1, lacking: 1, coveredOn: "2026-12-01" },
      },
    ]);
  });

  it("counts no pack that has left, and of a device what lies in it", () => {
    const { rows, units, places, without } = tell("d2");
    expect(rows.map(({ kind, name, until }) => [kind, name, until])).toEqual([
      ["pack", "B1", null],
      ["retired pack", "B2", "2026-01-01"],
      ["device", "D2", null],
    ]);
    expect([units, places, without]).toEqual([1, 1, []]);
    expect(tell("B2").units).toBe(0);
  });

  it("counts a unit once that bears the name and lies in a device of it", () => {
    const named = { ...fleet, packs: [pack("D1", { item: "cell", device: "D1" })] };
    const { rows, units, places } = traceOn("D1", { ...smallReading, fleet: named, setAside: [] }, policy);
    expect(rows.map(({ kind, name }) => [kind, name])).toEqual([
      ["pack", "D1"],
      ["dated stock", "AB12"],
      ["device", "D1"],
    ]);
    expect([units, places]).toEqual([3, 1]);
  });

  // GS1 General Specifications: the last digit of a GTIN is its check digit, of 0950600013435 the 2
  it("says of a label that cannot be trusted why", () => {
    expect(tell("(01)09506000134353(10)AB12")).toMatchObject({ rows: [], wrong: "has a wrong check digit in (01)" });
  });
});
