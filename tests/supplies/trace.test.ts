import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { traceIds } from "../../src/supplies/trace.ts";
import { catalogued, day, device, ordered, pack, stock } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));

const fleet: Fleet = {
  ...emptyFleet(),
  devices: [device("D1"), device("D2")],
  catalogue: [catalogued("Pads", "pads", { gtin: "09506000134352" }), catalogued("Pack", "pack")],
  datedStock: [
    stock("Pads", "2027-06-30", "D1", { lot: "AB12", quantity: 2 }),
    stock("Pads", "2027-06-30", "Store", { lot: " ab12 ", quantity: 6 }),
    stock("Pads", "2027-08-31", "D2", { lot: "AB13" }),
    stock("Pads", "2027-09-30", "Store", { lot: "ZZ1" }),
    stock("Pads", "2026-09-30", "Store", { lot: "ZZ0" }),
    stock("Gel", "2027-08-31", "D2", { lot: "G1" }),
  ],
  packs: [
    pack("AB1299", { item: "Pack", device: "D1" }),
    pack("P2", { item: "Pack" }),
    pack("AB1300", { item: "Pack", device: "D2", retired: day("2025-01-01") }),
  ],
  onOrder: [ordered("Pads", 20, { order: "PO-7" })],
};

describe("traceIds", () => {
  it("follows a lot to its devices and stores, whatever case and blanks, and says what is lacking", () => {
    const trace = traceIds(fleet, policy, ["ab12"]);
    expect(trace.ids).toEqual([{ id: "ab12", as: ["lot"] }]);
    expect(trace.stock.map(({ row, installed, swapBy }) => [row.place, row.quantity, installed, swapBy])).toEqual([
      ["D1", 2, true, day("2027-06-16")],
      ["Store", 6, false, day("2027-06-16")],
    ]);
    expect(trace.places).toEqual([
      { place: "D1", device: true, units: 2, packs: 0 },
      { place: "Store", device: false, units: 6, packs: 0 },
    ]);
    // the lot that is left in the store replaces one of the two; the expired one none
    expect(trace.items).toEqual([
      { item: "Pads", inUse: 2, onShelves: 6, onOrder: 0, usableElsewhere: 1, lacking: 1, coveredOn: null },
    ]);
  });

  // By hand: B1 and B2 are in use and B3 lies on the shelf, fit to be used; B4 is past its date, B5 held
  it("counts a battery once that stands among packs and in dated stock, and takes its lot for its own", () => {
    const placed: Record<string, string> = { B1: "D1", B9: "D9" };
    const batteries: Fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2"), device("D9", { retired: day("2026-01-01") })],
      packs: ["B1", "B2", "B3", "B4", "B5", "B9"].map((serial) =>
        pack(serial, { item: "Cell", device: placed[serial] ?? null }),
      ),
      datedStock: [
        stock("Cell", "2028-01-31", "D1", { serial: "B1", lot: "Q7" }),
        stock("Cell", "2028-01-31", "D2", { serial: "b2", lot: "Q7" }),
        stock("Cell", "2028-01-31", "Store", { serial: "B3", lot: "Q8" }),
        stock("Cell", "2026-10-31", "Store", { serial: "B4", lot: "Q8" }),
        stock("Cell", "2028-01-31", "Store", { serial: "B5", lot: "Q8", held: "swollen" }),
        stock("Cell", "2028-01-31", "D9", { serial: "B9", lot: "Q7" }),
      ],
    };
    const trace = traceIds(batteries, policy, ["Q7"]);
    expect(trace.packs.map(({ serial, device: at }) => [serial, at])).toEqual([
      ["B1", "D1"],
      ["B2", "D2"],
      ["B9", "D9"],
    ]);
    // D9 is a device, though out of service: what lies there leaves no gap
    expect(trace.places).toEqual(["D1", "D2", "D9"].map((place) => ({ place, device: true, units: 0, packs: 1 })));
    expect(trace.items).toMatchObject([{ inUse: 2, onShelves: 1, usableElsewhere: 1, lacking: 1 }]);
  });

  it("takes units that are of one of several lots for touched, since nobody can tell them apart", () => {
    const mixed = {
      ...emptyFleet(),
      datedStock: ["A1 / W2708", "A1, w2709", "12/W2708", "A1"].map((lot, at) =>
        stock("Pads", "2027-06-30", `Store ${at + 1}`, { lot, quantity: 2 }),
      ),
    };
    const placesOf = (id: string) => traceIds(mixed, policy, [id]).places.map(({ place }) => place);
    expect(placesOf("W2708")).toEqual(["Store 1"]);
    expect(placesOf("W27*")).toEqual(["Store 1", "Store 2"]);
    expect(placesOf("A1")).toEqual(["Store 1", "Store 2", "Store 4"]);
    expect(placesOf("12/W2708")).toEqual(["Store 3"]);
  });

  it("takes a star for the rest of a lot or serial, and a list of several", () => {
    const trace = traceIds(fleet, policy, ["AB1*", "", "G1", "none"]);
    expect(trace.ids).toEqual([
      { id: "AB1*", as: ["lot", "serial"] },
      { id: "G1", as: ["lot"] },
      { id: "none", as: [] },
    ]);
    expect(trace.stock).toHaveLength(4);
    expect(trace.packs.map(({ serial }) => serial)).toEqual(["AB1299", "AB1300"]);
    // a retired pack is listed but stands nowhere and leaves no gap
    expect(trace.places.find(({ place }) => place === "D2")).toMatchObject({ units: 2, packs: 0 });
    expect(trace.items.find(({ item }) => item === "Pack")).toMatchObject({ inUse: 1, usableElsewhere: 1, lacking: 0 });
    expect(traceIds(fleet, policy, ["*"]).stock).toEqual([]);
  });

  // By hand: one unit lacks; 2 arrive on 20 November, and an order placed today takes 30 days, to 1 December
  it("says when what is lacking can be there, by open orders or by one that leaves today", () => {
    const covered = (leadDays: number | null, onOrder: Fleet["onOrder"]) => {
      const of = { ...fleet, catalogue: [catalogued("Pads", "pads", { leadDays })], onOrder };
      return traceIds(of, policy, ["ab12"]).items[0]!.coveredOn;
    };
    const arriving = ordered("Pads", 2, { arrives: day("2026-11-20") });
    expect(covered(30, [])).toBe(day("2026-12-01"));
    expect(covered(30, [arriving])).toBe(day("2026-11-20"));
    expect(covered(null, [arriving])).toBe(day("2026-11-20"));
    expect(covered(7, [arriving])).toBe(day("2026-11-08"));
    // what should have come in October comes today at the soonest
    expect(covered(null, [{ ...arriving, arrives: day("2026-10-20") }])).toBe(policy.asOf);
    expect(covered(null, [{ ...arriving, quantity: 0 }])).toBeNull();
    expect(traceIds(fleet, policy, ["ZZ1"]).items[0]).toMatchObject({ lacking: 0, coveredOn: policy.asOf });
  });

  it("follows the lot of a scanned label, of its product only where the catalogue knows it", () => {
    const places = (id: string) => traceIds(fleet, policy, [id]).stock.map(({ row }) => row.place);
    expect(places("(01)09506000134352(10)AB12")).toEqual(["D1", "Store"]);
    expect(places("010950600013435217270630" + "10AB12")).toEqual(["D1", "Store"]);
    // another product's lot of the same number
    expect(places("(01)09521234543213(10)AB12")).toEqual([]);
    expect(traceIds(fleet, policy, ["(01)09506000134352"]).ids[0]!.as).toEqual(["gtin"]);
  });

  // By hand: 3 (5 + 4 + 1 + 0 + 6 + 5 + 0) + 3 + 3 + 0 + 0 + 0 + 9 = 78, so 2 is right. Source of G: ANSI/HIBC 2.6.
  it("says why a label cannot be trusted, and looks for nothing of it", () => {
    const ids = ["(01)09506000134353(10)AB12", "+A123BJC5D6E71H", "010950"];
    expect(traceIds(fleet, policy, ids)).toMatchObject({
      ids: [
        { id: ids[0], as: [], wrong: "has a wrong check digit in (01)" },
        { id: ids[1], as: [], wrong: "has a wrong check character" },
        { id: ids[2], as: [] },
      ],
      stock: [],
    });
  });

  it("follows a GTIN without its leading zero to stock and orders, and an order by its number", () => {
    const trace = traceIds(fleet, policy, ["9506000134352"]);
    expect(trace.ids[0]!.as).toEqual(["gtin"]);
    expect(trace.stock.every(({ row }) => row.item === "Pads")).toBe(true);
    expect(trace.orders).toHaveLength(1);
    expect(traceIds(fleet, policy, ["po-7"]).items).toMatchObject([{ item: "Pads", onOrder: 20, inUse: 0 }]);
  });
});
