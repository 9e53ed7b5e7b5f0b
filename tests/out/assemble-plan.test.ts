import { describe, expect, it } from "vitest";
import { dayFromIso } from "../../src/calendar/day.ts";
import { monthFromParts } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import { itemBook } from "../../src/fleet/item-book.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type PackRow } from "../../src/fleet/rows.ts";
import type { LifeForecast, PackLife } from "../../src/life/types.ts";
import type { OrderLine } from "../../src/orders/types.ts";
import { assemblePlan, type PlanParts } from "../../src/out/assemble-plan.ts";
import { STANDING_CAUTIONS } from "../../src/out/cautions.ts";
import { packRows } from "../../src/out/plan-packs.ts";
import { planSchema } from "../../src/out/plan-schema.ts";
import type { ReadTable } from "../../src/sheets/reading.ts";
import type { DatedStockForecast } from "../../src/supplies/forecast-dated-stock.ts";
import { stockOf } from "../supplies/stock-of.ts";

const AS_OF = dayFromIso("2026-11-01")!;
const NOVEMBER = monthFromParts(2026, 11);
const source = { file: "packs.csv", sheet: null, line: 2 };

function packLife(serial: string): PackLife {
  const pack: PackRow = {
    serial,
    item: "pack-md",
    device: null,
    site: null,
    made: null,
    inService: null,
    cycles: null,
    cyclesOn: null,
    retired: null,
    retiredBecause: null,
    temperatureC: null,
    held: null,
    source,
  };
  return {
    pack,
    item: "pack-md",
    site: "Harbour",
    basis: "pooled",
    readings: 2,
    capacityNow: { p10: 0.812345, p50: 0.85, p90: 0.900049 },
    path: { p10: [0.8, 0.79], p50: [0.85, 0.84], p90: [0.9, 0.89999] },
    belowBy: { kind: "beyond-horizon", p10: AS_OF + 40, p50: AS_OF + 400, p90: null },
    replaceBy: { kind: "beyond-horizon", p10: AS_OF + 40, p50: AS_OF + 400, p90: null, because: "fade", note: null },
    dueChance: Float64Array.of(0.1, 0.30000000000000004),
    causes: { fade: Float64Array.of(0.1, 0.2), limit: new Float64Array(2), failure: new Float64Array(2) },
    says: "Two tests.",
  };
}

function demand(item: string): ItemDemand {
  const none = () => new Float64Array(2);
  return {
    item,
    from: NOVEMBER,
    months: 2,
    mean: Float64Array.of(0.1234567, 1.5),
    causes: {
      fade: Float64Array.of(0.1234567, 1.5),
      limit: none(),
      failure: none(),
      expiry: none(),
      use: none(),
      routine: none(),
      growth: none(),
    },
    // a quantile that shows which span and level it was asked for
    needsQuantile: (after, through, level) => (through - after) * 100 + Math.round(level * 100),
    draws: 1,
    samplePath: () => Int32Array.of(0, 0),
  };
}

/** A row at each of two places, a third of whose units is used before. */
function datedStock(places: readonly string[]) {
  const rows = places.map((place) => ({
    ...{ item: "pads-adult", expiry: AS_OF + 60, lot: null, serial: null, quantity: 2, place },
    ...{ made: null, opened: null, label: null, held: null, source },
  }));
  return stockOf(rows, defaultPolicy(AS_OF), 1 / 3);
}

const line: OrderLine = {
  id: "s / pack-md / 2026-11",
  order: "s / 2026-11-01",
  orderBy: AS_OF,
  arriveBy: AS_OF + 42,
  late: true,
  uncoveredUntil: AS_OF + 41,
  supplier: "s",
  item: "pack-md",
  gtin: null,
  quantity: 2,
  boxes: 2,
  unitPrice: "412.00",
  lineCost: 82_400,
  feeShare: 0,
  currency: "EUR",
  covers: { from: NOVEMBER, to: NOVEMBER + 1 },
  reason: "Two packs.",
  expectedWaste: -0,
};

const table: ReadTable = {
  file: "packs.csv",
  sheet: null,
  table: 1,
  kinds: ["packs"],
  headerLines: [1],
  rows: 2,
  used: 2,
  setAside: 0,
  sha256: "ab",
  columns: [],
};

function parts(): PlanParts {
  const fleet = emptyFleet();
  const life: LifeForecast = {
    months: 2,
    draws: 1,
    packs: [packLife("B"), packLife("A")],
    stock: [],
    addDueByDraw: () => {},
    newPackDueByDraw: () => {},
    fadeGroups: [
      { item: "pack-md", packs: 2, readings: 4, completedLives: 0, parameters: { mu: 1 / 3 }, basis: "pooled" },
    ],
    findings: [],
    suddenFailures: [],
    earlySigns: [],
    cautions: ["The knee is unseen.", STANDING_CAUTIONS[0]!],
  };
  const dated = {
    findings: [],
    cautions: ["The swap visits do not suffice in 2027-08."],
    crowdedMonths: [],
    swapCalendar: [],
    moves: [],
    needing: { book: itemBook(fleet, []), stock: datedStock(["MD-02", "MD-01"]) },
  } as unknown as DatedStockForecast;
  return {
    reading: { fleet, inputs: [{ ...table, file: "tests.csv" }, table], findings: [], setAside: [], refused: [] },
    policy: { ...defaultPolicy(AS_OF), horizonMonths: 2 },
    life,
    packs: packRows(life, NOVEMBER),
    dated,
    demand: [demand("pads-adult"), demand("pack-md")],
    schedule: { orders: [{ ...line, id: "z", item: "z" }, line], budget: [], cautions: ["No currency is named."] },
    short: [
      {
        month: NOVEMBER,
        devices: 3,
        withoutBuying: { expected: 1.00049, anyChance: 1 + 2e-16 },
        withSchedule: { expected: 0, anyChance: 0 },
      },
    ],
    capped: null,
  };
}

describe("assemblePlan", () => {
  const plan = assemblePlan(parts());

  it("makes a plan of the format, months inclusive", () => {
    expect(planSchema.safeParse(plan).error).toBeUndefined();
    expect(plan.horizon).toEqual({ from: "2026-11", to: "2026-12" });
    expect(plan.policy).toMatchObject({ as_of: "2026-11-01", use_log_from: null, service_level: 0.95 });
    expect(plan.inputs.map(({ file }) => file)).toEqual(["packs.csv", "tests.csv"]);
  });
  it("rounds capacity and chances to 4 digits, expected units to 3, parameters to 10 significant", () => {
    const [pack] = plan.packs;
    expect(pack?.capacityNow).toEqual({ p10: 0.8123, p50: 0.85, p90: 0.9 });
    expect(pack?.dueBy).toEqual({ from: "2026-11", chance: [0.1, 0.3] });
    expect(plan.datedStock[0]?.chanceUsed).toBe(0.3333);
    expect(plan.fadeGroups[0]?.parameters).toEqual({ mu: 0.3333333333 });
    expect(plan.demand[0]?.mean).toEqual([0.123, 1.5]);
    expect(plan.short[0]?.withoutBuying).toEqual({ expected: 1, anyChance: 1 });
    expect(Object.is(plan.orders[0]?.expectedWaste, 0)).toBe(true);
  });
  it("asks each month alone and all months up to it for their quantiles", () => {
    expect(plan.demand[0]).toMatchObject({
      p50: [150, 150],
      p90: [190, 190],
      cumulative: { mean: [0.123, 1.623], p50: [150, 250], p80: [180, 280], p95: [195, 295] },
    });
  });
  it("puts the standing cautions first and says none twice", () => {
    expect(plan.cautions).toEqual([
      ...STANDING_CAUTIONS,
      "The knee is unseen.",
      "The swap visits do not suffice in 2027-08.",
      "No currency is named.",
    ]);
  });
  it("does not depend on the order of rows", () => {
    const turned = parts();
    turned.life.packs.reverse();
    turned.reading.inputs.reverse();
    const reversed = assemblePlan({
      ...turned,
      packs: packRows(turned.life, NOVEMBER),
      dated: { ...turned.dated, needing: { ...turned.dated.needing, stock: datedStock(["MD-01", "MD-02"]) } },
      demand: [...turned.demand].reverse(),
      schedule: { ...turned.schedule, orders: [...turned.schedule.orders].reverse() },
    });
    expect(reversed).toEqual(plan);
    expect(plan.packs.map(({ serial }) => serial)).toEqual(["A", "B"]);
    expect(plan.datedStock.map(({ place }) => place)).toEqual(["MD-01", "MD-02"]);
    expect(plan.orders.map(({ item }) => item)).toEqual(["pack-md", "z"]);
  });
});
