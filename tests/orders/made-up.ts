import { dayFromIso } from "../../src/calendar/day.ts";
import { monthOfDay } from "../../src/calendar/month.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import { blankCatalogueRow } from "../../src/fleet/blank-catalogue-row.ts";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { type CatalogueRow, emptyFleet, type Fleet, type SupplierRow } from "../../src/fleet/rows.ts";
import type { UsableLot } from "../../src/supplies/types.ts";

const SOURCE = { file: "made-up.csv", sheet: null, line: 2 };

export function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new RangeError(iso);
  return found;
}

export const AS_OF = day("2026-11-25");

export function policyWith(choices: Partial<Policy> = {}): Policy {
  return { ...defaultPolicy(AS_OF), horizonMonths: 24, ...choices };
}

export function catalogueRow(facts: Partial<CatalogueRow> & { item: string }): CatalogueRow {
  const usual = { kind: "pads", supplier: "North Supplies", price: "10.00", currency: "EUR", leadDays: 30 } as const;
  return { ...blankCatalogueRow(facts.item), ...usual, source: SOURCE, ...facts };
}

export function supplierRow(facts: Partial<SupplierRow> = {}): SupplierRow {
  return {
    supplier: "North Supplies",
    orderFee: "25.00",
    freeOver: null,
    orderEveryMonths: null,
    currency: "EUR",
    source: SOURCE,
    ...facts,
  };
}

export function fleetWith(rows: Partial<Fleet>): Fleet {
  return { ...emptyFleet(), ...rows };
}

export function shelfLot(facts: Partial<UsableLot> & { item: string; quantity: number }): UsableLot {
  return { availableFrom: AS_OF, usableUntil: null, place: "store", origin: "shelf", reference: null, ...facts };
}

/** Needs that are known: every quantile of a span is its sum. */
export function certainDemand(item: string, needs: readonly number[]): ItemDemand {
  const sum = (after: number, through: number) => needs.slice(after + 1, through + 1).reduce((a, b) => a + b, 0);
  return demandOf(item, needs, sum, () => Int32Array.from(needs));
}

/** Independent Poisson needs by month; quantiles by summing the distribution function. */
export function poissonDemand(item: string, means: readonly number[]): ItemDemand {
  const quantile = (after: number, through: number, level: number) => {
    const mean = means.slice(after + 1, through + 1).reduce((a, b) => a + b, 0);
    let chance = Math.exp(-mean);
    let below = chance;
    let units = 0;
    while (below < level) {
      units++;
      chance *= mean / units;
      below += chance;
    }
    return units;
  };
  return demandOf(item, means, quantile, (_, random) => Int32Array.from(means, (mean) => poisson(mean, random)));
}

function poisson(mean: number, random: () => number): number {
  let units = 0;
  for (let left = random(); left > Math.exp(-mean); left *= random()) units++;
  return units;
}

function demandOf(
  item: string,
  means: readonly number[],
  needsQuantile: ItemDemand["needsQuantile"],
  samplePath: ItemDemand["samplePath"],
): ItemDemand {
  const zero = () => new Float64Array(means.length);
  const mean = Float64Array.from(means);
  return {
    item,
    from: monthOfDay(AS_OF),
    months: means.length,
    mean,
    causes: {
      fade: zero(),
      limit: zero(),
      failure: zero(),
      expiry: zero(),
      use: mean,
      routine: zero(),
      growth: zero(),
    },
    needsQuantile,
    draws: 200,
    samplePath,
  };
}
