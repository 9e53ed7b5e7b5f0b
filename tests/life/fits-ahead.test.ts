import { expect, it } from "vitest";
import { fitFor, keepFit } from "../../src/fade/kept-fits.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { fitsToPlan, fitsToProve } from "../../src/life/fits-ahead.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { prove } from "../../src/life/prove/prove.ts";
import { catalogued, day, pack, runtimeTest } from "../fleet/make-rows.ts";

const policy = { ...defaultPolicy(day("2026-11-25")), horizonMonths: 12 };

/** Two items of ten packs with four tests each, one of two packs with one test each, and one that does not recharge. */
const ITEMS = { A: [10, 4], B: [10, 4], C: [2, 1], D: [3, 2] } as const;

function fleet(): Fleet {
  const found = emptyFleet();
  for (const [item, [packs, tests]] of Object.entries(ITEMS)) {
    for (let i = 0; i < packs; i++) {
      const serial = `${item}-${i}`;
      const inService = day("2023-01-10") + 40 * i;
      found.packs.push(pack(serial, { item, inService }));
      for (let test = 1; test <= tests; test++) {
        const percent = 100 - (3 + 0.2 * i) * test;
        found.runtimeTests.push(runtimeTest(serial, inService + 180 * test, { percent }));
      }
    }
  }
  found.catalogue = [catalogued("D", "primary")];
  return found;
}

/** Makes room for so many other fits that none of those kept before is left. */
function forgetFits(): void {
  for (let i = 0; i < 1000; i++) {
    const prior = { mean: Float64Array.of(i), deviation: Float64Array.of(1) };
    keepFit({ packs: [], prior }, { coordinates: [], trust: [] });
  }
}

const datesOf = (life: { packs: { says: string; dueChance: Float64Array }[] }) =>
  life.packs.map(({ says, dueChance }) => [says, ...dueChance]);

it("names the fits of a plan, first those of every item that fades, then those that borrow, and none once kept", () => {
  forgetFits();
  const first = fitsToPlan(fleet(), policy);
  expect(first.map(({ packs }) => packs.length)).toEqual([10, 10, 2]);
  for (const task of first) keepFit(task, fitFor(structuredClone(task)));
  const second = fitsToPlan(fleet(), policy);
  expect(second.map(({ packs }) => packs.length)).toEqual([2]);
  for (const task of second) keepFit(task, fitFor(structuredClone(task)));
  expect(fitsToPlan(fleet(), policy)).toEqual([]);
  const ahead = datesOf(forecastPacks(fleet(), policy));
  forgetFits();
  expect(fitsToPlan(fleet(), policy)).toHaveLength(3);
  expect(ahead).toEqual(datesOf(forecastPacks(fleet(), policy)));
  // and what planning has made by itself is all that was named
  expect(fitsToPlan(fleet(), policy)).toEqual([]);
});

it("names the fits of a proof", () => {
  forgetFits();
  expect(fitsToProve(fleet(), policy, [12]).length).toBeGreaterThan(3);
  prove(fleet(), policy, [12]);
  expect(fitsToProve(fleet(), policy, [12])).toEqual([]);
});
