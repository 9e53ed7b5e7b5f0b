import { beforeAll, describe, expect, it } from "vitest";
import { addMonths } from "../../src/calendar/day.ts";
import { defaultPolicy, type Policy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet, type RuntimeTestRow } from "../../src/fleet/rows.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { DISCHARGE_ERROR } from "../../src/life/primary-priors.ts";
import type { LifeForecast } from "../../src/life/types.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { catalogued, day, pack } from "../fleet/make-rows.ts";

const source = { file: "made-up.csv", sheet: null, line: 2 };
const asOf = day("2026-11-01");
const days = (years: number) => Math.round(365.25 * years);

function left(serial: string, date: number, percent: number | null, facts: Partial<RuntimeTestRow> = {}) {
  const blank = { minutes: null, wh: null, ah: null, result: null, loadW: null, temperatureC: null, cycles: null };
  return { serial, date, percent, ...blank, fullCharge: null, atLeast: null, source, ...facts };
}

/** Ten batteries that lose 20 % of their charge a year from install, read four times a year to two percent. */
function standbyFleet(): Fleet {
  const random = seededRandom(987_654_321);
  const fleet = emptyFleet();
  fleet.catalogue = [catalogued("b", "primary")];
  for (let i = 0; i < 10; i++) {
    const inService = asOf - days(0.6 + 0.35 * i);
    fleet.packs.push(pack(`B${i}`, { item: "b", device: `D${i}`, inService }));
    for (let date = inService + 91; date <= asOf; date += 91) {
      const years = (date - inService) / 365.25;
      fleet.runtimeTests.push(left(`B${i}`, date, 100 - 20 * years + 2 * random.normal(), { fullCharge: false }));
    }
  }
  return fleet;
}

const forecast = (fleet: Fleet, changes: Partial<Policy> = {}) =>
  forecastPacks(fleet, { ...defaultPolicy(asOf), horizonMonths: 60, ...changes });
const bySerial = (life: LifeForecast, serial: string) => life.packs.find((one) => one.pack.serial === serial)!;

describe("forecastPacks with batteries that do not recharge", () => {
  let fleet: Fleet;
  let life: LifeForecast;
  beforeAll(() => {
    fleet = standbyFleet();
    life = forecast(fleet);
  });

  // By hand: from full at 20 % a year, 10 % are left after 90 / 20 = 4.5 years
  it("finds the day on which a tenth is left", () => {
    let inside = 0;
    for (const { pack, belowBy } of life.packs) {
      const truth = pack.inService! + days(4.5);
      // within a fifth of the time that is left, and a month
      expect(Math.abs(belowBy.p50! - truth), pack.serial).toBeLessThan(0.2 * (truth - asOf) + 31);
      if (belowBy.p10! <= truth && truth <= belowBy.p90!) inside++;
    }
    // eight of ten are promised; six is as low as chance goes once in ten times
    expect(inside).toBeGreaterThanOrEqual(6);
  });

  it("shows the charge left, falling, in ordered bands", () => {
    for (const { pack, capacityNow, path } of life.packs) {
      const truth = 1 - (0.2 * (asOf - pack.inService!)) / 365.25;
      expect(Math.abs(capacityNow!.p50 - truth)).toBeLessThan(0.04);
      expect(path.p50).toHaveLength(60);
      for (let m = 0; m < 60; m++) {
        expect(path.p10[m]!).toBeLessThanOrEqual(path.p50[m]!);
        expect(path.p50[m]!).toBeLessThanOrEqual(path.p90[m]!);
        if (m > 0) expect(path.p50[m]!).toBeLessThanOrEqual(path.p50[m - 1]! + 1e-9);
        expect(path.p10[m]!).toBeGreaterThanOrEqual(0);
      }
    }
    const { says, basis, readings } = bySerial(life, "B5");
    expect(says).toMatch(/^\d+ % left at the last of \d+ readings in \w+ 2026; likely below 10 % of its charge by/);
    expect(basis).toBe("measured");
    expect(readings).toBe(fleet.runtimeTests.filter((test) => test.serial === "B5").length);
  });

  it("tells the item's loss for the record", () => {
    const group = life.fadeGroups.find((one) => one.item === "b")!;
    expect(group.parameters.lossPerYear).toBeCloseTo(0.2, 1.5);
    expect(group).toMatchObject({ packs: 10, completedLives: 0, basis: "pooled" });
  });

  it("never gives a later date for a higher end of charge", () => {
    const stricter = forecast(fleet, { primaryEndPercent: 25 });
    for (const one of life.packs) {
      const other = bySerial(stricter, one.pack.serial);
      for (const level of ["p10", "p50", "p90"] as const) {
        expect(other.belowBy[level] ?? Infinity).toBeLessThan(one.belowBy[level] ?? Infinity);
      }
      // what was read is what was read, whatever the question
      expect(other.path).toEqual(one.path);
    }
  });

  it("does not hang on the order of rows, nor on what came after as-of", () => {
    const turned = forecast({
      ...fleet,
      packs: [...fleet.packs].reverse(),
      runtimeTests: [...fleet.runtimeTests].reverse().concat(left("B3", asOf + 5, 12)),
    });
    for (const one of life.packs) expect(bySerial(turned, one.pack.serial).belowBy).toEqual(one.belowBy);
  });

  it("lets a battery that was never read go by its siblings, with a wider band", () => {
    const inService = asOf - days(2.35);
    const unread = pack("UNREAD", { item: "b", device: "D", inService });
    const other = bySerial(forecast({ ...fleet, packs: [...fleet.packs, unread] }), "UNREAD");
    expect(other.basis).toBe("typical");
    expect(Math.abs(other.belowBy.p50! - (inService + days(4.5)))).toBeLessThan(200);
    const read = bySerial(life, "B5").belowBy;
    expect(other.belowBy.p90! - other.belowBy.p10!).toBeGreaterThan(read.p90! - read.p10!);
    expect(other.says).toContain("Never measured, so going by its kind; likely below 10 % of its charge by");
  });

  it("gives an outlying reading little weight", () => {
    const odd = forecast({ ...fleet, runtimeTests: [...fleet.runtimeTests, left("B9", asOf - 40, 95)] });
    const moved = bySerial(odd, "B9").belowBy.p50! - bySerial(life, "B9").belowBy.p50!;
    expect(Math.abs(moved)).toBeLessThan(60);
  });

  it("ends a battery at the earliest of charge, limits and failed tests", () => {
    const catalogue = [catalogued("b", "primary", { serviceMonths: 36, shelfMonths: 70 })];
    const limited = forecast({
      ...fleet,
      catalogue,
      runtimeTests: [...fleet.runtimeTests, left("B2", asOf - 2, null, { result: "fail" })],
    });
    const one = bySerial(limited, "B1");
    expect(one.replaceBy).toMatchObject({ because: "service-life", p50: addMonths(one.pack.inService!, 36) });
    expect(one.belowBy.p50!).toBeGreaterThan(one.replaceBy.p50!);
    expect(bySerial(limited, "B2").replaceBy).toMatchObject({ kind: "already-due", because: "failed-test" });
  });

  it("gives a new battery the item's standby life", () => {
    const runs = life.months + 1;
    const into = new Float64Array(life.draws * runs);
    life.newPackDueByDraw("b", into);
    const mean = (m: number) => {
      let sum = 0;
      for (let draw = 0; draw < life.draws; draw++) sum += into[draw * runs + m]! / life.draws;
      return sum;
    };
    // by hand: 54 months to a tenth; the packs' own spread and the model's error leave years before and after
    expect(mean(0)).toBe(0);
    expect(mean(30)).toBeLessThan(0.15);
    expect(mean(54)).toBeGreaterThan(0.3);
    expect(mean(54)).toBeLessThan(0.75);
  });

  it("goes by the dates alone where nothing was ever read", () => {
    const dated = forecast({
      ...emptyFleet(),
      catalogue: [catalogued("b", "primary", { shelfMonths: 60 })],
      packs: [
        pack("MADE", { item: "b", device: "D", made: addMonths(asOf, -50) }),
        pack("BARE", { item: "c", device: "D", inService: asOf - 100 }),
      ],
    });
    const one = bySerial(dated, "MADE");
    expect(one.belowBy.kind).toBe("no-forecast");
    expect(one.capacityNow).toBeNull();
    expect(one.replaceBy).toMatchObject({ because: "use-by", p50: addMonths(asOf, 10) });
    const none = forecast({
      ...emptyFleet(),
      catalogue: [catalogued("b", "primary")],
      packs: [pack("BARE", { item: "b", device: "D", inService: asOf - 100 })],
    });
    expect(bySerial(none, "BARE").replaceBy).toMatchObject({ kind: "no-forecast", p10: null, p50: null, p90: null });
    expect(bySerial(none, "BARE").says).toContain("the sheets give none");
  });

  // By hand: three batteries that ran down in exactly three years tell of 90 / 3 = 30 % a year
  it("learns from batteries that were replaced as run down", () => {
    const packs = [1, 2, 3].map((i) => {
      const inService = asOf - days(3 + i);
      return pack(`R${i}`, { item: "b", inService, retired: inService + days(3), retiredBecause: "faded" });
    });
    const serving = pack("B", { item: "b", device: "D", inService: asOf - days(1) });
    const one = forecast({ ...emptyFleet(), catalogue: [catalogued("b", "primary")], packs: [...packs, serving] });
    const truth = asOf + days(2);
    expect(Math.abs(bySerial(one, "B").belowBy.p50! - truth)).toBeLessThan(150);
    expect(one.fadeGroups[0]!.completedLives).toBe(3);
    // a retirement that is planned for later has completed no life, and the pack still serves
    const ahead = { ...one.packs[0]!.pack, retired: asOf + 200, retiredBecause: "faded" as const };
    const planned = forecast({
      ...emptyFleet(),
      catalogue: [catalogued("b", "primary")],
      packs: [ahead],
      runtimeTests: [left(ahead.serial, asOf - 30, 70)],
    });
    expect(planned.fadeGroups[0]).toMatchObject({ packs: 1, completedLives: 0 });
  });
});

describe("forecastPacks over simulated items of batteries that do not recharge", () => {
  // 60 items drawn from the stated priors with their model error: eight in ten true days must lie inside the band
  it("keeps what its bands promise", () => {
    const random = seededRandom(1_592_594_996);
    let inside = 0;
    let asked = 0;
    for (let item = 0; item < 60; item++) {
      const fleet = emptyFleet();
      fleet.catalogue = [catalogued("b", "primary")];
      const loss = (0.9 / 4) * Math.exp(0.6 * random.normal());
      const share = Math.min(0.4, 0.12 * Math.exp(0.5 * random.normal()));
      const noise = 0.03 * Math.exp(0.6 * random.normal());
      const common = DISCHARGE_ERROR.common * random.normal();
      const truths = new Map<string, number>();
      for (let i = 0; i < 8; i++) {
        const age = random.uniform() * Math.min(4, 0.8 / loss);
        const inService = asOf - days(age);
        const start = 1 + 0.02 * random.normal();
        const own = Math.max(0.1, 1 + share * random.normal()) * loss;
        const serial = `B${i}`;
        fleet.packs.push(pack(serial, { item: "b", device: serial, inService }));
        for (let date = inService + 120; date <= asOf; date += 180) {
          const charge = start - (own * (date - inService)) / 365.25 + noise * random.normal();
          fleet.runtimeTests.push(left(serial, date, 100 * charge));
        }
        const remaining = (start - 0.1) / own - age;
        const error = common + DISCHARGE_ERROR.own * random.normal();
        if (remaining > 0) truths.set(serial, asOf + 365.25 * remaining * Math.exp(-error));
      }
      const life = forecast(fleet, { horizonMonths: 1 });
      for (const [serial, truth] of truths) {
        const { belowBy } = bySerial(life, serial);
        if (belowBy.kind === "no-forecast") continue;
        asked++;
        if (belowBy.p10! <= truth && truth <= (belowBy.p90 ?? Infinity)) inside++;
      }
    }
    expect(asked).toBeGreaterThan(300);
    // packs of an item share its draw: the share scatters by some 3 % about 80 %
    expect(inside / asked).toBeGreaterThan(0.74);
    expect(inside / asked).toBeLessThan(0.88);
  });
});
