import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import { DEMAND_CAUSES, type ItemDemand } from "../../src/demand/types.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { quantileOfCounts } from "../../src/maths/convolution.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, pack, routine, stock, use } from "../fleet/make-rows.ts";
import { negativeBinomial } from "../maths/negative-binomial.ts";
import { certainIn, type MadeUpPack, madeUpLife } from "./made-up-life.ts";

const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: 36 };
const never = () => 0;

function demandOf(
  fleet: Fleet,
  packs: readonly MadeUpPack[] = [],
  newDue: (draw: number, m: number) => number = never,
  choices: Partial<typeof policy> = {},
): Map<string, ItemDemand> {
  const chosen = { ...policy, ...choices };
  const life = madeUpLife(chosen.horizonMonths, packs, newDue);
  const found = forecastDemand(chosen, life, forecastDatedStock(fleet, chosen));
  return new Map(found.map((demand) => [demand.item, demand]));
}

function monthly(demand: ItemDemand, level = 0.5): number[] {
  return Array.from({ length: demand.months }, (_, m) => demand.needsQuantile(m - 1, m, level));
}

function monthsWith(counts: readonly number[]): [number, number][] {
  return counts.flatMap((count, m) => (count > 0 ? [[m, count] as [number, number]] : []));
}

describe("forecastDemand: packs", () => {
  const rows = (count: number) => Array.from({ length: count }, (_, i) => pack(`S${i}`, { item: "Pack" }));

  // Source: Poisson-binomial by exact convolution, computed outside: quantiles .5 .9 .95 .99 are 3 4 5 6
  it("sums the packs' chances exactly", () => {
    const chances = [0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.35, 0.5, 0.8, 0.95];
    const packs = chances.map((p) => ({ item: "Pack", due: [new Array(36).fill(p)] }));
    const demand = demandOf({ ...emptyFleet(), packs: rows(10) }, packs).get("Pack")!;
    expect([0.5, 0.9, 0.95, 0.99].map((level) => demand.needsQuantile(-1, 0, level))).toEqual([3, 4, 5, 6]);
    expect(demand.mean[0]).toBeCloseTo(3.13, 12);
  });

  it("mixes the draws: all due or none is not half due", () => {
    const packs = Array.from({ length: 10 }, () => ({ item: "Pack", due: [certainIn(3, 36), new Array(36).fill(0)] }));
    const demand = demandOf({ ...emptyFleet(), packs: rows(10) }, packs).get("Pack")!;
    expect(demand.needsQuantile(-1, 35, 0.5)).toBe(0);
    expect(demand.needsQuantile(-1, 35, 0.51)).toBe(10);
    expect(demand.mean[3]).toBeCloseTo(5, 12);
  });

  it("replaces the replacements", () => {
    const packs = [2, 2, 5].map((m) => ({ item: "Pack", due: [certainIn(m, 36)] }));
    const demand = demandOf({ ...emptyFleet(), packs: rows(3) }, packs, (_, m) => (m >= 12 ? 1 : 0)).get("Pack")!;
    const expected = [2, 5, 14, 17, 26, 29].map((m) => [m, [2, 14, 26].includes(m) ? 2 : 1]);
    expect(monthsWith(monthly(demand))).toEqual(expected);
    expect(monthsWith([...demand.mean])).toEqual(expected);
    expect(demand.needsQuantile(1, 29, 0.95)).toBe(9);
  });

  it("stops with the device that leaves the fleet", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1", { retired: day("2027-06-01") })],
      packs: [pack("S0", { item: "Pack", device: "D1" }), pack("S1", { item: "Pack", device: "D1" })],
    };
    const packs = fleet.packs.map((row, i) => ({ row, item: "Pack", due: [certainIn(i === 0 ? 6 : 7, 36)] }));
    // 2027-05 is month 6, 2027-06 month 7: the second pack's need falls on the day of retirement
    expect(monthsWith(monthly(demandOf(fleet, packs).get("Pack")!))).toEqual([[6, 1]]);
  });

  it("needs packs for new devices, as many as their like hold, and their renewals", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1", { type: "A" }), device("D2", { type: "A", inService: day("2027-03-15") })],
      packs: [pack("S0", { item: "Pack", device: "D1" }), pack("S1", { item: "Pack", device: "D1" })],
    };
    const packs = fleet.packs.map((row) => ({ row, item: "Pack", due: [new Array(36).fill(0)] }));
    const demand = demandOf(fleet, packs, (_, m) => (m >= 20 ? 1 : 0)).get("Pack")!;
    expect(monthsWith(monthly(demand))).toEqual([
      [4, 2],
      [24, 2],
    ]);
    expect(demand.causes.growth[4]).toBe(2);
  });

  it("sends the needs of a replaced item to its replacement", () => {
    const fleet = {
      ...emptyFleet(),
      catalogue: [catalogued("Old", "pack", { replacedBy: "New" }), catalogued("New", "pack")],
      packs: [pack("S0", { item: "Old" })],
    };
    const demand = demandOf(fleet, [{ row: fleet.packs[0]!, item: "Old", due: [certainIn(4, 36)] }]);
    expect([...demand.keys()]).toEqual(["New"]);
    expect(monthsWith(monthly(demand.get("New")!))).toEqual([[4, 1]]);
  });

  it("comes close with many packs to what it is exactly with few", () => {
    const draws = 40;
    const months = 12;
    const made = (count: number) =>
      Array.from({ length: count }, (_, i) => ({
        item: "Pack",
        row: pack(`S${i}`, { item: "Pack" }),
        due: Array.from({ length: draws }, (_, d) =>
          Array.from({ length: months }, (_, m) => 1 - Math.exp(-(((m + 1) / (9 + (i % 13) + d / 5)) ** 3))),
        ),
      }));
    // 200 packs are few; one that is never due makes them many
    const never = {
      item: "Pack",
      row: pack("Spare", { item: "Pack" }),
      due: made(1)[0]!.due.map((of) => of.map(() => 0)),
    };
    const fleet = { ...emptyFleet(), catalogue: [catalogued("Pack", "pack")] };
    const few = demandOf(fleet, made(200), (_, m) => m / 40, { horizonMonths: months }).get("Pack")!;
    const many = demandOf(fleet, [...made(200), never], (_, m) => m / 40, { horizonMonths: months }).get("Pack")!;
    const spans = [[-1, 0], [-1, 5], [-1, 11], [3, 9], [7, 8]] as const; // biome-ignore format: one line
    for (const [after, through] of spans) {
      for (const level of [0.05, 0.5, 0.8, 0.95]) {
        const a = few.needsQuantile(after, through, level);
        const b = many.needsQuantile(after, through, level);
        expect(Math.abs(a - b), `${after}..${through} at ${level}`).toBeLessThanOrEqual(1);
      }
    }
    const { uniform } = seededRandom(6);
    const paths = Array.from({ length: 4000 }, (_, i) => many.samplePath(i % draws, uniform));
    for (const [after, through] of spans) {
      const sums = paths.map((path) => path.slice(after + 1, through + 1).reduce((a, b) => a + b, 0));
      for (const level of [0.5, 0.95]) {
        const stated = few.needsQuantile(after, through, level);
        // twice the standard error of a share of 4,000 futures, and what the approximation errs by
        expect(sums.filter((sum) => sum <= stated).length / 4000).toBeGreaterThan(level - 0.016 - 0.01);
        expect(sums.filter((sum) => sum < stated).length / 4000).toBeLessThan(level + 0.016 + 0.01);
      }
    }
  });
});

describe("forecastDemand: dated stock", () => {
  it("needs a unit on each swap day, overdue ones at once, and renews them with the life that they arrive with", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2"), device("D3")],
      catalogue: [catalogued("Pads", "pads", { arrivesWithMonths: 24 })],
      datedStock: [
        stock("Pads", "2027-03-31", "D1", { quantity: 2 }),
        stock("Pads", "2027-03-10", "D2"),
        stock("Pads", "2026-05-31", "D3"),
        stock("Pads", "2028-05-31", "D3", { held: "recall" }),
      ],
    };
    // swap days 2027-03-17 (month 4), 2027-02-24 (month 3), now (month 0) twice; new units last 24 months
    expect(monthsWith(monthly(demandOf(fleet).get("Pads")!))).toEqual([
      [0, 2],
      [3, 1],
      [4, 2],
      [24, 2],
      [27, 1],
      [28, 2],
    ]);
    // what the store has is fitted first, and is to be swapped in month 4 itself: 3 of it, beside D1's 2
    const stocked = {
      ...fleet,
      datedStock: [...fleet.datedStock, stock("Pads", "2027-03-31", "Store", { quantity: 9 })],
    };
    expect(monthsWith(monthly(demandOf(stocked).get("Pads")!))).toEqual([
      [0, 2],
      [3, 1],
      [4, 5],
      [28, 5],
    ]);
  });

  it("needs a new device's units by its first day and what routine consumes", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1", { duty: "ward", inService: day("2027-02-10") })],
      catalogue: [
        catalogued("Pads", "pads", { carriedBy: ["ward"], perDevice: 2 }),
        catalogued("Paper", "paper", { carriedBy: ["ward"] }),
      ],
      routine: [routine("check", 12, { item: "Paper", quantity: 0.25 })],
    };
    const found = demandOf(fleet);
    expect(monthsWith(monthly(found.get("Pads")!))).toEqual([[3, 2]]);
    const paper = found.get("Paper")!;
    // 3 rolls a year from February 2027 to October 2029: 2.72 years
    expect(paper.causes.routine.reduce((a, b) => a + b, 0)).toBeCloseTo(
      (3 * (day("2029-11-01") - day("2027-02-10"))) / 365.25,
      9,
    );
    expect(paper.needsQuantile(-1, 35, 0.95)).toBe(1 + 8);
  });

  it("draws uses from the place's negative binomial where nothing expires", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1", { duty: "ward" })],
      catalogue: [catalogued("Pads", "pads", { carriedBy: ["ward"] })],
      useLog: [1, 2, 3, 4].map((n) => use(`2026-0${n}-15`, "Pads", "D1")),
    };
    const from = day("2024-11-01");
    const demand = demandOf(fleet, [], never, { useLogFrom: from }).get("Pads")!;
    // one place, so one pooled rate: four events in the log's 24 months
    const rate = { shape: 4, exposure: (policy.asOf - from) / 30.4375 };
    const exact = negativeBinomial(rate, (day("2029-11-01") - policy.asOf) / 30.4375, 80);
    for (const level of [0.1, 0.5, 0.8, 0.95, 0.99]) {
      expect(demand.needsQuantile(-1, 35, level)).toBe(quantileOfCounts(exact, level));
    }
  });

  // By hand: a unit with a known rate u and R months left leaves by expiry with chance exp(-u R)
  it("counts on uses before expiry", () => {
    const devices = Array.from({ length: 60 }, (_, i) => device(`D${i}`, { duty: "ward" }));
    const fleet: Fleet = {
      ...emptyFleet(),
      devices,
      datedStock: devices.map((d) => stock("Pads", "2028-11-15", d.device)),
      useLog: devices.flatMap((d) => [1, 2, 3].map((n) => use(`2026-0${n}-15`, "Pads", d.device))),
    };
    const from = day("2024-11-01");
    const { causes, mean } = demandOf(fleet, [], never, { useLogFrom: from }).get("Pads")!;
    const perMonth = 3 / ((policy.asOf - from) / 30.4375);
    const months = (day("2028-11-01") - policy.asOf) / 30.4375;
    // 180 events behind the rate leave its mean good to 7 %; exp is averaged over that
    const rate = { shape: 180, exposure: 180 / perMonth };
    const expected = 60 * (rate.exposure / (rate.exposure + months)) ** rate.shape;
    expect(causes.expiry.reduce((a, b) => a + b, 0)).toBeCloseTo(expected, 0);
    expect(causes.use.reduce((a, b) => a + b, 0)).toBeCloseTo(
      (60 * perMonth * (day("2029-11-01") - policy.asOf)) / 30.4375,
      6,
    );
    expect(mean[24]).toBeGreaterThan(0);
  });
});

describe("forecastDemand: every item", () => {
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: ["D1", "D2", "D3", "D4"].map((name) => device(name, { duty: name < "D3" ? "ward" : "van", type: "A" })),
    catalogue: [
      catalogued("Pads", "pads", { arrivesWithMonths: 18, fits: ["A"] }),
      catalogued("Paper", "paper", { carriedBy: ["van"] }),
      catalogued("Pack", "pack"),
    ],
    packs: [pack("S0", { item: "Pack", device: "D1" }), pack("S1", { item: "Pack", device: "D2" })],
    datedStock: [
      stock("Pads", "2027-03-31", "D1", { quantity: 2 }),
      stock("Pads", "2027-09-30", "D2"),
      stock("Pads", "2028-01-31", "D3", { quantity: 3 }),
      stock("Pads", "2028-01-31", "Store", { quantity: 3 }),
      stock("Gel", "2028-01-31", "D4"),
    ],
    useLog: ["D1", "D3", "D3", "D3", "D4"].map((place, n) =>
      use(`2026-0${n + 1}-15`, "Pads", place, { quantity: 1 + (n % 2) }),
    ),
    routine: [routine("check", 52, { item: "Paper", quantity: 0.1 })],
  };
  const due = (scale: number) =>
    [0, 1].map((d) => Array.from({ length: 36 }, (_, m) => Math.min(1, ((m + 1) / 36) * scale * (d + 0.5))));
  const packs = fleet.packs.map((row, i) => ({ row, item: "Pack", due: due(i === 0 ? 0.6 : 0.9) }));
  const found = demandOf(fleet, packs, (_, m) => m / 50);

  it("has a demand for the catalogue's items and those that packs and stock name", () => {
    expect([...found.keys()]).toEqual(["Gel", "Pack", "Pads", "Paper"]);
  });

  it("adds its causes up to its mean, and longer spans and higher levels never need less", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...found.values()),
        fc.integer({ min: -1, max: 34 }),
        fc.integer({ min: 0, max: 34 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (demand, after, length, level) => {
          const through = Math.min(35, after + 1 + length);
          const quantile = demand.needsQuantile(after, through, level);
          expect(Number.isInteger(quantile)).toBe(true);
          if (through < 35) expect(demand.needsQuantile(after, through + 1, level)).toBeGreaterThanOrEqual(quantile);
          expect(demand.needsQuantile(after, through, Math.min(0.999, level + 0.1))).toBeGreaterThanOrEqual(quantile);
          const sum = DEMAND_CAUSES.reduce((total, cause) => total + demand.causes[cause][through]!, 0);
          expect(demand.mean[through]).toBeCloseTo(sum, 12);
        },
      ),
      { seed: 7, numRuns: 200 },
    );
  });

  it("samples futures with the mean and the quantiles that it states", () => {
    for (const demand of found.values()) {
      const random = seededRandom(4);
      const sums = Array.from({ length: 4000 }, (_, i) => {
        const path = demand.samplePath(i % demand.draws, random.uniform);
        return path.reduce((a, b) => a + b, 0);
      }).sort((a, b) => a - b);
      const mean = sums.reduce((a, b) => a + b, 0) / sums.length;
      const stated = demand.mean.reduce((a, b) => a + b, 0);
      // routine is exact in the mean and whole units in a future: up to one unit a place apart
      const apart = demand.item === "Paper" ? 2 : 0.05 * stated + 0.05;
      expect(Math.abs(mean - stated)).toBeLessThan(apart);
      const q = demand.needsQuantile(-1, 35, 0.9);
      const atMost = sums.filter((sum) => sum <= q).length / sums.length;
      expect(atMost).toBeGreaterThan(0.88);
      if (q > 0) expect(sums.filter((sum) => sum < q).length / sums.length).toBeLessThan(0.92);
    }
  });

  it("does not hang on the order of rows", () => {
    const reversed: Fleet = {
      ...fleet,
      devices: [...fleet.devices].reverse(),
      packs: [...fleet.packs].reverse(),
      datedStock: [...fleet.datedStock].reverse(),
      useLog: [...fleet.useLog].reverse(),
      catalogue: [...fleet.catalogue].reverse(),
    };
    const again = demandOf(reversed, [...packs].reverse(), (_, m) => m / 50);
    for (const [item, demand] of found) {
      const other = again.get(item)!;
      demand.mean.forEach((mean, m) => {
        expect(other.mean[m]).toBeCloseTo(mean, 10);
      });
      for (let through = 0; through < 36; through++) {
        expect(other.needsQuantile(-1, through, 0.95)).toBe(demand.needsQuantile(-1, through, 0.95));
      }
      expect(other.samplePath(1, seededRandom(9).uniform)).toEqual(demand.samplePath(1, seededRandom(9).uniform));
    }
  });
});
