import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { monthFromText } from "../../src/calendar/month.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { datesBehind } from "../../src/out/dates-behind.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { latestSchedule } from "../../src/supplies/swap-calendar.ts";
import { countVisits, monthsGivenUp, smallestCapacity } from "../../src/supplies/swap-capacity.ts";
import { day, device, pack, stock } from "../fleet/make-rows.ts";

interface Job {
  due: number;
  weight: number;
}

/** Least unit-months given up over all schedules, each tried; null where none meets every expiry. */
function bruteForce(jobs: readonly Job[], perMonth: number): number | null {
  const load = new Map<number, number>();
  let best: number | null = null;
  const place = (index: number, cost: number) => {
    if (best !== null && cost >= best) return;
    if (index === jobs.length) {
      best = cost;
      return;
    }
    for (let month = jobs[index]!.due; month >= 0; month--) {
      const used = load.get(month) ?? 0;
      if (used >= perMonth) continue;
      load.set(month, used + 1);
      place(index + 1, cost + jobs[index]!.weight * (jobs[index]!.due - month));
      load.set(month, used);
    }
  };
  place(0, 0);
  return best;
}

/**
 * The same as a minimum-cost flow from jobs to months of a capacity, by successive cheapest paths (Bellman and Ford);
 * null where not every job finds a month.
 */
function cheapestFlow(jobs: readonly Job[], perMonth: number): number | null {
  const months = Math.max(...jobs.map(({ due }) => due)) + 1;
  const at = new Array<number | null>(jobs.length).fill(null);
  const cost = (job: number, month: number) => jobs[job]!.weight * (jobs[job]!.due - month);
  for (let start = 0; start < jobs.length; start++) {
    const distance = new Array<number>(months).fill(Number.POSITIVE_INFINITY);
    const via = new Array<number>(months).fill(-1);
    for (let month = 0; month <= jobs[start]!.due; month++) {
      distance[month] = cost(start, month);
      via[month] = start;
    }
    for (let changed = true; changed; ) {
      changed = false;
      for (let job = 0; job < jobs.length; job++) {
        const from = at[job];
        if (from === null || from === undefined) continue;
        for (let month = 0; month <= jobs[job]!.due; month++) {
          const through = distance[from]! + cost(job, month) - cost(job, from);
          if (through < distance[month]! - 1e-9) {
            distance[month] = through;
            via[month] = job;
            changed = true;
          }
        }
      }
    }
    const free = distance
      .map((d, month) => ({ d, month }))
      .filter(({ d, month }) => Number.isFinite(d) && at.filter((m) => m === month).length < perMonth)
      .sort((a, b) => a.d - b.d)[0];
    if (!free) return null;
    let month = free.month;
    for (;;) {
      const job = via[month]!;
      const before = at[job];
      at[job] = month;
      if (job === start) break;
      month = before!;
    }
  }
  return at.reduce<number>((sum, month, job) => sum + cost(job, month!), 0);
}

const jobs = (most: number, lastDue: number) =>
  fc.array(fc.record({ due: fc.integer({ min: 0, max: lastDue }), weight: fc.integer({ min: 1, max: 9 }) }), {
    minLength: 1,
    maxLength: most,
  });

function check(visits: readonly Job[], perMonth: number, cheapest: number | null): void {
  const months = latestSchedule(visits, perMonth);
  const load = new Map<number, number>();
  visits.forEach(({ due }, index) => {
    expect(months[index]).toBeLessThanOrEqual(due);
    load.set(months[index]!, (load.get(months[index]!) ?? 0) + 1);
  });
  const feasible = [...load.values()].every((count) => count <= perMonth);
  expect(feasible).toBe(cheapest !== null);
  expect(perMonth >= smallestCapacity(countVisits(visits))).toBe(cheapest !== null);
  if (cheapest === null) return;
  expect(visits.reduce((sum, { due, weight }, index) => sum + weight * (due - months[index]!), 0)).toBe(cheapest);
  expect(monthsGivenUp(countVisits(visits), perMonth)).toBe(cheapest);
}

describe("latestSchedule", () => {
  it("gives up as little life as the best of all schedules", () => {
    fc.assert(
      fc.property(jobs(7, 4), fc.integer({ min: 1, max: 3 }), (visits, perMonth) => {
        check(visits, perMonth, bruteForce(visits, perMonth));
      }),
      { seed: 21, numRuns: 300 },
    );
  });

  it("gives up as little life as a minimum-cost flow", () => {
    fc.assert(
      fc.property(jobs(40, 11), fc.integer({ min: 1, max: 8 }), (visits, perMonth) => {
        check(visits, perMonth, cheapestFlow(visits, perMonth));
      }),
      { seed: 22, numRuns: 100 },
    );
  });

  // By hand: three places due in month 2, one visit a month: the two light ones go first
  it("puts the light visits off to earlier months", () => {
    const visits = [
      { due: 2, weight: 5 },
      { due: 2, weight: 1 },
      { due: 2, weight: 3 },
    ];
    expect([...latestSchedule(visits, 1)]).toEqual([2, 0, 1]);
    expect(monthsGivenUp(countVisits(visits), 1)).toBe(2 + 3);
  });
});

describe("forecastDatedStock: swap calendar", () => {
  const fleet = {
    ...emptyFleet(),
    devices: ["D1", "D2", "D3"].map((name) => device(name)),
    datedStock: [
      stock("Pads", "2027-01-31", "D1", { quantity: 2, lot: "L1" }),
      stock("Gel", "2027-01-20", "D1"),
      stock("Pads", "2027-01-31", "D2", { lot: "L1" }),
      stock("Pads", "2027-01-31", "D3", { lot: "L2" }),
      stock("Pads", "2026-09-30", "D3", { lot: "L0" }),
      stock("Pads", "2027-01-31", "Store", { quantity: 20 }),
      stock("Pads", "2035-01-31", "D2"),
    ],
  };
  const policy = { ...defaultPolicy(day("2026-11-01")), swapsPerMonth: 1 };

  it("meets every expiry with the visits allowed, an overdue one at once", () => {
    const { swapCalendar, swapCapacity } = forecastDatedStock(fleet, { ...policy, swapsPerMonth: 2 });
    expect(
      swapCalendar.map((visit) => [visit.month, visit.place, visit.item, visit.quantity, visit.daysGivenUp]),
    ).toEqual([
      [monthFromText("2026-11"), "D3", "Pads", 1, 0],
      [monthFromText("2026-12"), "D3", "Pads", 1, 31],
      [monthFromText("2027-01"), "D1", "Gel", 1, 0],
      [monthFromText("2027-01"), "D1", "Pads", 2, 0],
      [monthFromText("2027-01"), "D2", "Pads", 1, 0],
    ]);
    expect(swapCapacity).toMatchObject({ perMonth: 2, smallest: 2, enough: true });
    expect(swapCapacity.tradeOff()).toEqual([
      { perMonth: 2, unitMonthsGivenUp: 1 },
      { perMonth: 3, unitMonthsGivenUp: 0 },
    ]);
  });

  it("says the smallest number of visits and the trade-off where the policy gives none or too few", () => {
    expect(forecastDatedStock(fleet, policy).swapCapacity).toMatchObject({ perMonth: 1, smallest: 2, enough: false });
    const open = forecastDatedStock(fleet, { ...policy, swapsPerMonth: null });
    expect(open.swapCalendar).toEqual([]);
    expect(open.swapCapacity).toMatchObject({ perMonth: null, smallest: 2, enough: true });
  });
});

describe("a battery that stands among packs and, with its expiry, in dated stock", () => {
  // By hand: of 1 May, the battery in D1 and the pads in D2 both leave in May, as-of's month: that takes two visits
  it("takes a visit in the calendar and in the fewest visits alike", () => {
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1"), device("D2")],
      packs: [pack("B1", { item: "Cell", device: "D1" })],
      datedStock: [stock("Cell", "2027-05-20", "D1", { serial: "b1" }), stock("Pads", "2027-05-31", "D2")],
    };
    const at = (swapsPerMonth: number) =>
      forecastDatedStock(fleet, { ...defaultPolicy(day("2027-05-01")), horizonMonths: 7, swapsPerMonth });
    expect(at(2).swapCalendar.map(({ place }) => place)).toEqual(["D1", "D2"]);
    expect(at(2).swapCapacity).toMatchObject({ smallest: 2, enough: true });
    expect(at(1).swapCapacity.enough).toBe(false);
    expect(at(1).cautions[0]).toMatch(/^With 1 swap visit a month not every expiry can be met: it takes 2\./);
  });
});

describe("visits to devices that leave service", () => {
  // By hand: swaps are 14 days before expiry. D1 has left and D2 will have by 17 August, when its pads are due; D3's are due on 6 May,
  // four days before it leaves, and D4 stays
  it("are made up to the day before they leave", () => {
    const leaves = { retired: day("2027-05-10") };
    const fleet = {
      ...emptyFleet(),
      devices: [device("D1", { retired: day("2026-11-01") }), device("D2", leaves), device("D3", leaves), device("D4")],
      datedStock: [
        stock("pads", "2026-10-31", "D1"),
        stock("pads", "2027-08-31", "D2"),
        stock("pads", "2027-05-20", "D3"),
        stock("pads", "2027-05-24", "D4"),
        stock("pads", "2027-05-24", "Store"),
      ],
    };
    const policy = { ...defaultPolicy(day("2026-11-01")), swapsPerMonth: 5 };
    const dated = forecastDatedStock(fleet, policy);
    expect(dated.swapCalendar.map(({ place, swapBy }) => [place, swapBy])).toEqual([
      ["D3", day("2027-05-06")],
      ["D4", day("2027-05-10")],
    ]);
    // two visits by the seventh month are one in each of two months
    expect(dated.swapCapacity.smallest).toBe(1);
    const { places } = datesBehind(dated, []);
    expect(places.map(({ place, overdue, year }) => [place, overdue, year])).toEqual([
      ["D3", 0, 1],
      ["D4", 0, 1],
      ["Store", 0, 1],
    ]);
  });
});
