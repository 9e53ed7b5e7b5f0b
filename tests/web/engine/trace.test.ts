import { describe, expect, it } from "vitest";
import { emptyFleet } from "../../../src/fleet/rows.ts";
import { trace as traceOn } from "../../../web/engine/trace.ts";
import { smallReading } from "../../browser/fixtures/small-plan.ts";
import { catalogued } from "../../fleet/make-rows.ts";

const trace = (wanted: string, of: Parameters<typeof traceOn>[1]) => traceOn(wanted, of, 20_758);
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
    expect(trace("L 77", known).map(({ place, site }) => [place, site])).toEqual([["D1", "Harbour"]]);
    expect(trace("L78", known).map(({ place, site }) => [place, site])).toEqual([["Store", null]]);
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
