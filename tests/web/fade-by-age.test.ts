import { describe, expect, it } from "vitest";
import type { Plan, Reading } from "../../src/index.ts";
import { fadeByAge } from "../../web/fade-by-age.ts";

const MONTHS = 24;
const months = (value: (month: number) => number) => Array.from({ length: MONTHS }, (_, month) => value(month));
const DAYS_PER_YEAR = 365.25;
// 1 January 2027, counted from 1970: 57 years with 14 leap days.
const AS_OF = 57 * 365 + 14;

/** Packs of one item by their age at the start in years, each losing a percent a month from its capacity then. */
function fleetOf(packs: { years: number; percent: number }[], read: boolean) {
  const serials = packs.map((_, at) => `P${at}`);
  const plan = {
    asOf: "2027-01-01",
    horizon: { from: "2027-01", to: "2028-12" },
    packs: packs.map(({ percent }, at) => ({
      serial: serials[at],
      item: "pack",
      capacityNow: null,
      path: { p50: months((month) => (percent - month) / 100) },
    })),
  } as unknown as Plan;
  const made = packs.map(({ years }) => AS_OF - Math.round(years * DAYS_PER_YEAR));
  const reading = {
    fleet: { packs: serials.map((serial, at) => ({ serial, made: made[at], inService: null })) },
  } as unknown as Reading;
  const readings = new Map(read ? [["p0", [{ day: AS_OF - 30, percent: packs[0]!.percent }]]] : []);
  return fadeByAge("pack", plan, reading, readings as never);
}

describe("fadeByAge: the middle of several packs' paths", () => {
  const young = Array.from({ length: 6 }, () => ({ years: 1, percent: 95 }));
  const old = Array.from({ length: 6 }, () => ({ years: 3.5, percent: 90 }));

  it("begins anew where one age's packs end and another's begin, and nowhere else", () => {
    const { bands } = fleetOf([...young, ...old], true);
    const anew = bands.filter((band) => band.anew).map(({ age }) => age);
    // Two years of paths from 1 and from 3.5 years on, the first month's end the first point.
    expect(anew).toEqual([1.25, 3.75]);
    for (const [at, band] of bands.entries()) {
      if (at > 0 && !band.anew) expect(band.p50).toBeLessThan(bands[at - 1]!.p50);
    }
  });

  it("is none of packs that were never read", () => {
    expect(fleetOf(young, false)).toMatchObject({ bands: [], dots: [] });
    expect(fleetOf(young, false).paths).toHaveLength(6);
  });
});
