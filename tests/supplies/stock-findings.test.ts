import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { splitBulk } from "../../src/supplies/bulk-issues.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { rollMinutes, rollsPerStrip } from "../../src/supplies/paper.ts";
import { routineUses } from "../../src/supplies/routine-use.ts";
import { catalogued, day, device, pack, routine, stock, use } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const at = (line: number) => ({ source: { file: "stock.csv", sheet: null, line } });

describe("stock findings", () => {
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: [
      device("D1", { type: "A" }),
      device("D2", { type: "A" }),
      device("D3", { type: "A", site: "North" }),
      device("D9", { type: "A", retired: day("2026-01-01") }),
    ],
    catalogue: [catalogued("Pads", "pads", { fits: ["A"], perDevice: 1 })],
    datedStock: [
      stock("Pads", "2028-01-31", "D1", { quantity: 1, ...at(2) }),
      stock("Pads", "2028-02-29", "D1", { quantity: 2, ...at(5) }),
      stock("Pads", "2028-01-31", "D2", at(3)),
      stock("Pads", "2028-01-31", "D9", at(4)),
      stock("Pads", "2028-01-31", "North", at(6)),
      stock("Pads", "2028-01-31", "Stroe", at(7)),
    ],
  };
  const { findings } = forecastDatedStock(fleet, policy);

  it("names counts, devices and places that do not fit, each with its lines, a reason and a fix", () => {
    expect(findings.map(({ code, line, lines, value }) => [code, line, lines, value])).toEqual([
      ["more-than-carried", 2, [5], "3"],
      ["device-without", 2, [], null],
      ["stock-at-retired", 4, [], "D9"],
      ["place-read-as-store", 7, [], "Stroe"],
    ]);
    expect(findings[1]!.message).toBe("The sheets have no Pads at 1 device that should take it: D3.");
    for (const { message, fix } of findings) {
      expect(message).toMatch(/^["A-Z0-9].*\.$/);
      expect(fix).toMatch(/^[A-Z].*\.$/);
    }
  });

  // Three devices carry one pack each: D1's first came out, though no line says so, and D3's is in no list
  it("names devices that hold more packs than they carry, or none", () => {
    const packs = [
      pack("S1", { item: "Pack", device: "d1", ...at(4) }),
      pack("S2", { item: "Pack", device: "D1", ...at(2) }),
      pack("S3", { item: "Pack", device: "D1", retired: day("2026-05-01"), ...at(3) }),
      pack("S4", { item: "Pack", device: "D2", ...at(5) }),
      pack("S5", { item: "Pack", ...at(6) }),
    ];
    const catalogue = [catalogued("Pack", "pack", { fits: ["A"], perDevice: 1 })];
    const told = { ...emptyFleet(), devices: fleet.devices.slice(0, 3), catalogue, packs };
    const found = forecastDatedStock(told, policy).findings;
    expect(found.map(({ code, line, lines, message }) => [code, line, lines, message])).toEqual([
      ["more-than-carried", 2, [4], "D1 holds 2 units of Pack, but a device carries 1."],
      ["device-without", 2, [], "The sheets have no Pack at 1 device that should take it: D3."],
    ]);
  });

  // D1's and D2's packs came out and D3's is due to, while D4 never had one: too many to say that all should have one
  it("names devices of which all packs have left, however many have none", () => {
    const retired = day("2026-10-01");
    const packs = [
      pack("S1", { item: "Pack", device: "D1", retired, ...at(2) }),
      pack("S2", { item: "Pack", device: "D2", retired, ...at(3) }),
      pack("S3", { item: "Pack", device: "D3", retired: day("2026-12-01"), ...at(4) }),
    ];
    const devices = ["D1", "D2", "D3", "D4", "D5"].map((name) => device(name, { type: "A" }));
    const catalogue = [catalogued("Pack", "pack", { fits: ["A"] }), catalogued("Pads", "pads", { fits: ["A"] })];
    const found = forecastDatedStock({ ...emptyFleet(), devices, catalogue, packs }, policy).findings;
    expect(found.map(({ message }) => message)).toEqual([
      "The sheets have no Pack at 2 devices that should take it: D1, D2.",
    ]);
    const other = pack("S4", { item: "Other", device: "D2", ...at(5) });
    const refitted = forecastDatedStock({ ...emptyFleet(), devices, catalogue, packs: [...packs, other] }, policy);
    expect(refitted.findings.map(({ message }) => message)).toEqual([
      "The sheets have no Pack at 1 device that should take it: D1.",
    ]);
  });

  // By hand: two pads each; D1 has both, D2 one of them and one that serves as well, D3 one, D4 none, and D5 is to come
  it("names devices that hold some of what they carry, but not all of it, where most hold all", () => {
    const devices = ["D1", "D2", "D3", "D4"].map((name) => device(name, { type: "A" }));
    const held = (places: string, item = "Pads") => [...places].map((n) => stock(item, "2028-01-31", `D${n}`));
    const catalogue = [
      catalogued("Pads", "pads", { fits: ["A"], perDevice: 2 }),
      catalogued("Other pads", "pads", { alternatives: ["Pads"] }),
    ];
    const told = (datedStock: Fleet["datedStock"]) => {
      const coming = device("D5", { type: "A", inService: day("2027-03-01") });
      const fleet = { ...emptyFleet(), devices: [...devices, coming], catalogue, datedStock };
      return forecastDatedStock(fleet, policy).findings.map(({ code, message }) => [code, message]);
    };
    const without = ["device-without", "The sheets have no Pads at 1 device that should take it: D4."];
    expect(told([...held("1123"), ...held("2", "Other pads"), ...held("5")])).toEqual([
      ["fewer-than-carried", "D3 holds 1 unit of Pads, but a device carries 2."],
      without,
    ]);
    // where most hold one, the catalogue's two are likelier wrong
    expect(told(held("1123"))).toEqual([without]);
  });

  // By hand: nine of ten vans carry gel, and no catalogue says who should; of twenty, 18 do; of nine, eight
  it("names devices without what nearly all of their like hold, where no catalogue says who takes it", () => {
    const told = (vans: number, others: number) => {
      const devices = Array.from({ length: vans }, (_, n) => device(`V${n}`, { type: "van" }));
      const datedStock = devices.slice(0, others).map(({ device }) => stock("Gel", "2028-01-31", device));
      return forecastDatedStock({ ...emptyFleet(), devices, datedStock }, policy).findings;
    };
    const message = "The sheets have no Gel at 1 device whose like have it: V9.";
    expect(told(10, 9)).toMatchObject([{ code: "device-without", message }]);
    expect(told(20, 18)).toHaveLength(1);
    expect(told(9, 8)).toEqual([]);
    expect(told(20, 17)).toEqual([]);
    expect(told(10, 10)).toEqual([]);
  });

  // By hand: of the shelf only a count of none is left; of the bag one unit that is past expiry
  it("says nothing of a place whose count is none, and counts no such row among what serves", () => {
    const none = stock("Pads", "2028-01-31", "Shelf", { quantity: 0 });
    const bag = [stock("Pads", "2026-10-31", "Bag"), stock("Pads", "2028-01-31", "bag ", { quantity: 0 })];
    const datedStock = [stock("Pads", "2028-01-31", "D1"), none, ...bag];
    const found = forecastDatedStock({ ...emptyFleet(), devices: [device("D1")], datedStock }, policy).findings;
    expect(found.map(({ message }) => message)).toEqual([
      '"Bag" is neither a device nor a site; it is read as a store, whose 1 unit cannot be fitted: held, past expiry or too short-dated.',
    ]);
  });

  // Where most lack an item, the catalogue's fits is likelier wrong than all of them
  it("says nothing of devices without an item that most of their like have not got either", () => {
    const rare = { ...fleet, datedStock: [fleet.datedStock[0]!] };
    expect(forecastDatedStock(rare, policy).findings).toEqual([]);
  });

  it("has none for a fleet that fits", () => {
    const clean = {
      ...fleet,
      devices: fleet.devices.slice(0, 2),
      datedStock: [fleet.datedStock[0]!, fleet.datedStock[2]!],
    };
    expect(forecastDatedStock(clean, policy).findings).toEqual([]);
  });
});

describe("stock at a device that has left service", () => {
  it("is told with the packs that the sheets still have there, each unit once", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D9", { retired: day("2026-01-01") })],
      packs: [
        pack("S1", { item: "Pack", device: "D1", ...at(2) }),
        pack("S2", { item: "Pack", device: "d9", ...at(3) }),
        pack("S3", { item: "Pack", device: "D9", retired: day("2026-01-01"), ...at(4) }),
      ],
      datedStock: [
        stock("Pads", "2028-01-31", "D9", at(6)),
        stock("Pack", "2028-01-31", "D9", { serial: "S2", ...at(7) }),
      ],
    };
    const { findings } = forecastDatedStock(fleet, policy);
    expect(findings.map(({ code, line, lines, message }) => [code, line, lines, message])).toEqual([
      ["stock-at-retired", 3, [6], "D9 has left service; its 2 units will serve nothing."],
    ]);
  });
});

describe("stock at a place that is no device", () => {
  it("does not say of held or expired units that they serve", () => {
    const told = (rows: Fleet["datedStock"]) =>
      forecastDatedStock({ ...emptyFleet(), devices: [device("D1")], datedStock: rows }, policy).findings[0]!.message;
    const held = stock("Pads", "2028-01-31", "Store", { quantity: 5, held: "recalled" });
    expect(told([held])).toBe(
      '"Store" is neither a device nor a site; it is read as a store, whose 5 units cannot be fitted: held, past expiry or too short-dated.',
    );
    expect(
      told([held, stock("Pads", "2026-10-31", "Store"), stock("Pads", "2028-01-31", "Store", { quantity: 3 })]),
    ).toContain("3 units can serve every place");
    // to be swapped in as-of's month, November: by 29 November, and by 1 December
    const soon = ["2026-12-13", "2026-12-15"].map((expiry) => stock("Pads", expiry, "Store"));
    expect(told(soon)).toContain("1 unit can serve every place");
  });
});

describe("bulk issues", () => {
  const log = (quantities: readonly number[]) =>
    quantities.map((quantity, n) => use(`2026-0${(n % 9) + 1}-10`, "Pads", "D1", { quantity }));

  // By hand: median 1, deviation taken as one unit, so more than 1 + 5 units in one row are bulk
  it("splits off a row far larger than the usual use, and says so", () => {
    const rows = log([1, 1, 2, 1, 1, 1, 2, 1, 1, 40]);
    expect(splitBulk(rows).bulk.map((row) => row.quantity)).toEqual([40]);
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1")],
      datedStock: [stock("Pads", "2028-01-31", "D1")],
      useLog: rows,
    };
    const { needing, findings } = forecastDatedStock(fleet, policy);
    expect(needing.items[0]!.use!.meanUnitsPerUse).toBeCloseTo(11 / 9, 12);
    expect(findings).toMatchObject([{ code: "bulk-issue", value: "40" }]);
  });

  it("leaves rows alone where they are few, spread, or often large", () => {
    // one row of a short log is one too many all the same, but not of three
    expect(splitBulk(log([1, 1, 2, 1, 40])).bulk.map((row) => row.quantity)).toEqual([40]);
    expect(splitBulk(log([1, 1, 2, 1, 7])).bulk.map((row) => row.quantity)).toEqual([7]);
    expect(splitBulk(log([1, 1, 2, 1, 6])).bulk).toEqual([]);
    expect(splitBulk(log([1, 1, 40])).bulk).toEqual([]);
    expect(splitBulk(log([2, 9, 4, 14, 7, 11, 3, 20])).bulk).toEqual([]);
    expect(splitBulk(log([1, 1, 1, 1, 1, 12, 12])).bulk).toEqual([]);
  });

  it("does not carry on the uses of a device that has left service", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2", { retired: day("2026-06-01") })],
      datedStock: [stock("Pads", "2028-01-31", "D1")],
      useLog: [use("2026-01-10", "Pads", "D2"), use("2026-02-10", "Pads", "D1")],
    };
    const { needing } = forecastDatedStock(fleet, policy);
    expect(needing.items[0]!.use!.places.map(({ key, events }) => [key, events])).toEqual([["d1", 1]]);
  });
});

describe("paper", () => {
  // Source: 25 mm/s is the usual speed of an ECG trace (physiology texts); 30 m / 0.025 m/s = 1200 s; a 10 s strip 0.25 m
  it("a roll of 30 m lasts 20 minutes or 120 strips", () => {
    expect(rollMinutes(30)).toBeCloseTo(20, 12);
    expect(rollMinutes(20)).toBeCloseTo(13 + 20 / 60, 12);
    expect(rollsPerStrip(30)).toBeCloseTo(1 / 120, 12);
  });

  it("a task without a quantity takes a strip of paper, and one unit of anything else", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1", { duty: "van" })],
      catalogue: [
        catalogued("Paper", "paper", { carriedBy: ["van"], unitLengthM: 30 }),
        catalogued("Gel", "gel", { carriedBy: ["van"] }),
      ],
      routine: [routine("shift check", 365, { item: "Paper" }), routine("yearly check", 1, { item: "Gel" })],
    };
    const { needing } = forecastDatedStock(fleet, policy);
    expect(needing.items.map(({ item, places }) => [item.name, places[0]!.routinePerYear])).toEqual([
      ["Gel", 1],
      ["Paper", 365 / 120],
    ]);
    expect(routineUses(fleet.routine, needing)).toMatchObject([
      { item: "Paper", devices: 1, assumed: true, unitsPerYear: 365 / 120, minutesPerRoll: 20 },
      { item: "Gel", devices: 1, quantity: 1, assumed: true, unitsPerYear: 1, minutesPerRoll: null },
    ]);
  });
});
