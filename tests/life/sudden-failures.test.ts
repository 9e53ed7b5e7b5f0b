import { beforeAll, describe, expect, it } from "vitest";
import { addMonths } from "../../src/calendar/day.ts";
import { GRID_DAYS } from "../../src/fade/time-grid.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet, type PackRow } from "../../src/fleet/rows.ts";
import { openChance, splitUpTo } from "../../src/life/cause-split.ts";
import { failureCautions } from "../../src/life/failure-cautions.ts";
import { averageLasting, lastingByPace } from "../../src/life/failure-chances.ts";
import { FAILURE_PRIOR } from "../../src/life/failure-prior.ts";
import { forecastPacks } from "../../src/life/forecast-packs.ts";
import { cumulativeHazard, type FailureRisk, failureRisk } from "../../src/life/sudden-failures.ts";
import type { LifeForecast } from "../../src/life/types.ts";
import { watchedLives } from "../../src/life/watched-lives.ts";
import type { WatchedLife } from "../../src/maths/kaplan-meier.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { catalogued, day, pack } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const never = () => false;
const years = (value: number) => Math.round(365.25 * value);
const hazardRisk = (shape: number, scaleYears: number): FailureRisk => ({
  ...failureRisk("p", [], 8),
  shape,
  scaleYears,
});

/** The chance to last some years more from an age, at one pace. */
function chanceToLast(risk: Pick<FailureRisk, "shape" | "scaleYears">, ageYears: number, ahead: number, pace: number) {
  const one = { ...hazardRisk(risk.shape, risk.scaleYears), paces: Float64Array.of(pace), paceOf: Uint8Array.of(0) };
  return lastingByPace({ risk: one, ageYears }, [365.25 * ahead])[0]!;
}

function fleetOf(packs: PackRow[]): Fleet {
  return { ...emptyFleet(), packs, catalogue: [catalogued("p", "pack")] };
}

describe("watchedLives", () => {
  const lived = (serial: string, facts: Partial<PackRow>) => pack(serial, { item: "p", ...facts });
  const watch = (packs: PackRow[], facts: Partial<Fleet> = {}) =>
    watchedLives({ ...fleetOf(packs), ...facts }, asOf, never).get("p");

  it("takes failed and damaged packs for failures, all others for lives that ended otherwise", () => {
    const inService = asOf - years(2);
    const retired = asOf - years(1);
    const reasons = ["failed", "damaged", "lost", "policy", "recalled", "faded", null] as const;
    const lives = watch([
      lived("FIRST", { inService: asOf - years(9), retired: asOf - years(8), retiredBecause: "policy" }),
      ...reasons.map((retiredBecause, i) => lived(`R${i}`, { inService, retired, retiredBecause })),
      lived("SERVING", { inService }),
      lived("LATER", { inService, retired: asOf + 30, retiredBecause: "failed" }),
      lived("UNDATED", {}),
    ])!;
    expect(lives.map((life) => life.failed).slice(1)).toEqual([true, true, ...Array(7).fill(false)]);
    for (const life of lives.slice(1, 8)) expect(life.exit).toBeCloseTo(1, 2);
    for (const life of lives.slice(8)) expect(life.exit).toBeCloseTo(2, 2);
    for (const life of lives.slice(1)) expect(life.entry).toBe(0);
  });

  it("counts a failure on the first day, and no life that ended before it began", () => {
    const from = asOf - years(1);
    const lives = watch([
      lived("FIRST-DAY", { inService: from, retired: from, retiredBecause: "failed" }),
      lived("PUT-AWAY", { inService: from, retired: from, retiredBecause: "policy" }),
      lived("MISDATED", { inService: from, retired: from - 1, retiredBecause: "failed" }),
    ]);
    expect(lives).toEqual([{ entry: 0, exit: 1 / 365.25, failed: true }]);
  });

  // By hand: records start with the retirement four years ago; a pack seven years old was three then
  it("lets packs older than the records enter at the age they had then", () => {
    const packs = [
      lived("GONE", { inService: asOf - years(6), retired: asOf - years(4), retiredBecause: "failed" }),
      lived("OLD", { inService: asOf - years(7) }),
      lived("YOUNG", { inService: asOf - years(3) }),
    ];
    const lives = watch(packs)!;
    expect(lives[1]!.entry).toBeCloseTo(3, 2);
    expect(lives[1]!.exit).toBeCloseTo(7, 2);
    expect(lives[2]!.entry).toBe(0);
    // the failure that opens the records was watched for its last day
    expect(lives[0]).toMatchObject({ failed: true });
    expect(lives[0]!.exit - lives[0]!.entry).toBeCloseTo(1 / 365.25, 9);
    // an older cycle count shows that records go back further
    const counted = watch([
      ...packs,
      lived("COUNTED", { inService: asOf - 99, cyclesOn: asOf - years(5), cycles: 3 }),
    ])!;
    expect(counted[1]!.entry).toBeCloseTo(2, 2);
  });

  it("learns nothing from a sheet that keeps no retired pack", () => {
    expect(watch([lived("A", { inService: asOf - years(5) }), lived("B", { inService: asOf - years(2) })])).toBe(
      undefined,
    );
  });
});

describe("failureRisk", () => {
  // By the stated prior: on average 0.5 % a year over five years, with the shape left at 1.2
  it("counts on half a percent a year where nothing is known", () => {
    const risk = failureRisk("p", [], 200);
    expect(cumulativeHazard(risk, 5)).toBeCloseTo(5 * 0.005, 6);
    expect(risk.shape).toBeCloseTo(1.2, 9);
    expect(failureRisk("p", [], 200)).toEqual(risk);
  });

  // By derivation: the chance to last is the mean of exp(-h) over the posterior of the hazard h by five years, whose
  // log x has density d x - e^x E - (x - m)^2 / (2 s^2) up to a constant; summed here in small equal steps
  it("spreads the hazard as its posterior does", () => {
    const failed: WatchedLife[] = [2, 3, 4].map((exit) => ({ entry: 0, exit, failed: true }));
    const lasted: WatchedLife[] = Array.from({ length: 40 }, () => ({ entry: 0, exit: 4, failed: false }));
    for (const lives of [[], lasted, [...failed, ...lasted]]) {
      const risk = failureRisk("p", lives, 200);
      const { mean: m, spread: s } = FAILURE_PRIOR.logHazard;
      const d = lives.filter((life) => life.failed).length;
      const exposure = lives.reduce((sum, { exit }) => sum + (exit / 5) ** risk.shape, 0);
      let [whole, lasting] = [0, 0];
      for (let x = m - 12; x < m + 12; x += 0.002) {
        const density = Math.exp(d * x - Math.exp(x) * exposure - 0.5 * ((x - m) / s) ** 2);
        whole += density;
        lasting += density * Math.exp(-Math.exp(x));
      }
      let found = 0;
      for (const level of risk.paceOf) found += chanceToLast(risk, 0, 5, risk.paces[level]!) / 200;
      // eight equally likely paces stand for the whole posterior
      expect(Math.abs(found - lasting / whole)).toBeLessThan(0.001);
      expect(risk.paces.reduce((x, y) => x + y, 0) / risk.paces.length).toBeCloseTo(1, 9);
    }
  });

  // By hand: 20 of 40 failed evenly over a year, so half outlive it: a hazard of ln 2 gone through. The weak prior, a
  // hundred times lower, must not talk it down by more than a fifth.
  it("leaves the prior where failures are many, and heeds lives without failure", () => {
    const lives: WatchedLife[] = Array.from({ length: 40 }, (_, i) => ({
      entry: 0,
      exit: i < 20 ? (i + 0.5) / 20 : 1,
      failed: i < 20,
    }));
    const hazard = cumulativeHazard(failureRisk("p", lives, 200), 1);
    expect(hazard).toBeGreaterThan(0.8 * Math.LN2);
    expect(hazard).toBeLessThan(Math.LN2);
    const sound: WatchedLife[] = Array.from({ length: 200 }, () => ({ entry: 0, exit: 5, failed: false }));
    expect(cumulativeHazard(failureRisk("p", sound, 200), 5)).toBeLessThan(0.6 * 0.025);
  });

  // A simulated register: Weibull lives of shape 2 and scale 8 years, packs in service for up to 12 years, failures
  // of the first 6 not kept. Counting old packs from their start would hide the failures that nobody wrote down.
  it("finds the truth behind late entry and censoring", () => {
    const random = seededRandom(1_592_594_996);
    const lives: WatchedLife[] = [];
    for (let i = 0; i < 4000; i++) {
      const started = 12 * random.uniform();
      const life = 8 * (-Math.log(random.uniform())) ** (1 / 2);
      const entry = Math.max(0, 6 - started);
      if (life < entry) continue;
      lives.push({ entry, exit: Math.min(life, 12 - started), failed: life < 12 - started });
    }
    const risk = failureRisk("p", lives, 200);
    expect(Math.abs(risk.shape / 2 - 1)).toBeLessThan(0.05);
    expect(Math.abs(risk.scaleYears / 8 - 1)).toBeLessThan(0.03);
    const careless = failureRisk(
      "p",
      lives.map((life) => ({ ...life, entry: 0 })),
      200,
    );
    expect(careless.scaleYears).toBeGreaterThan(1.05 * risk.scaleYears);
  });
});

describe("lastingByPace", () => {
  // Source: NIST/SEMATECH e-Handbook 8.4.1.3, scale and shape by R 4 survreg; conditional chances computed outside
  it("is conditioned on the age reached", () => {
    const risk = { shape: 1.7207972608014, scaleYears: 606.52755800357 };
    const failing = { 0: 0.0439688934197, 250: 0.156882581082, 500: 0.232273792986 };
    for (const [age, chance] of Object.entries(failing)) {
      expect(1 - chanceToLast(risk, Number(age), 100, 1)).toBeCloseTo(chance, 11);
    }
  });

  // By definition: no failure before service, and nothing changes with a step of no length
  it("starts with service", () => {
    const risk = hazardRisk(1.5, 10);
    expect(chanceToLast(risk, -1, 0.5, 1)).toBe(1);
    expect(chanceToLast(risk, -1, 3, 1)).toBeCloseTo(chanceToLast(risk, 0, 2, 1), 12);
    expect(chanceToLast(risk, 4, 0, 3)).toBe(1);
  });

  // By hand: a hazard of a tenth a year
  it("tells every pace, and its average on the grid", () => {
    const risk = hazardRisk(1, 10);
    const lasting = lastingByPace({ risk, ageYears: 3 }, [0, 365.25]);
    risk.paces.forEach((pace, at) => {
      expect(lasting[2 * at]).toBeCloseTo(1, 12);
      expect(lasting[2 * at + 1]).toBeCloseTo(Math.exp(-pace / 10), 12);
    });
    expect(averageLasting({ risk, ageYears: 3 })[0]).toBeCloseTo(1, 12);
  });
});

describe("splitUpTo", () => {
  // By derivation: two constant hazards a and b share the chance 1 - e^-(a+b)t as a to b
  it("divides what falls due between causes as their hazards", () => {
    const [a, b] = [0.12, 0.05];
    const at = (rate: number) => Float64Array.from(GRID_DAYS, (days) => Math.exp((-rate * days) / 365.25));
    const ends = { fade: at(a).map((lasting) => 1 - lasting), lasting: at(b) };
    for (const time of [0.5, 3, 9]) {
      const { fade, failure } = splitUpTo(ends, 365.25 * time);
      const whole = 1 - Math.exp(-(a + b) * time);
      expect(fade).toBeCloseTo((whole * a) / (a + b), 2);
      expect(failure).toBeCloseTo((whole * b) / (a + b), 2);
      expect(fade + failure).toBeCloseTo(openChance(ends, 365.25 * time), 9);
    }
  });
});

describe("failureCautions", () => {
  it("tells what was seen, what is counted on, and which items were silent", () => {
    const lives: WatchedLife[] = [
      { entry: 0, exit: 2, failed: true },
      ...Array.from({ length: 9 }, () => ({ entry: 0, exit: 4, failed: false })),
    ];
    const said = failureCautions([
      { item: "pack a", risk: failureRisk("pack a", lives, 200) },
      { item: "pack b", risk: failureRisk("pack b", [], 200) },
    ]);
    // by hand: one in ten failed at two years, in 2 + 9 * 4 years watched
    expect(said[0]).toContain("1 of 10 pack a failed suddenly in 38 pack-years on record");
    expect(said[0]).toContain("90 % were seen to outlive 2.0 years");
    expect(said[1]).toContain("No sudden failure is on record for pack b");
  });

  it("tells a share only while five are watched, and of silent items only where there are some", () => {
    // by hand: of five the one failed at two years, so that four fifths outlived it; of four nothing is told
    const of = (watched: number): WatchedLife[] => [
      { entry: 0, exit: 2, failed: true },
      ...Array.from({ length: watched - 1 }, () => ({ entry: 0, exit: 4, failed: false })),
    ];
    const said = (watched: number) => failureCautions([{ item: "a", risk: failureRisk("a", of(watched), 200) }]);
    expect(said(5)).toHaveLength(1);
    expect(said(5)[0]).toContain("80 % were seen to outlive 2.0 years");
    expect(said(4)[0]).not.toContain("outlive");
  });

  // By hand: of ten that were watched from six years on, one failed at seven; what failed before six years nobody saw
  it("tells of which packs a share is, where none was watched from its first day on", () => {
    const lives = Array.from({ length: 10 }, (_, i) => ({ entry: 6, exit: i === 0 ? 7 : 8, failed: i === 0 }));
    const [said] = failureCautions([{ item: "a", risk: failureRisk("a", lives, 200) }]);
    expect(said).toContain("and 90 % of those that reached 6.0 years were seen to outlive 7.0 years without one");
  });

  it("never tells that all outlived an age where one did not", () => {
    // by hand: one in three hundred failed, which leaves 99.67 %
    const lives: WatchedLife[] = [
      { entry: 0, exit: 0.5, failed: true },
      ...Array.from({ length: 299 }, () => ({ entry: 0, exit: 1, failed: false })),
    ];
    const [said] = failureCautions([{ item: "pack a", risk: failureRisk("pack a", lives, 200) }]);
    expect(said).toContain("in 300 pack-years on record, and > 99 % were seen to outlive 0.5 years without one");
    const more = [lives[0]!, ...Array.from({ length: 1999 }, () => lives[1]!)];
    expect(failureCautions([{ item: "pack a", risk: failureRisk("pack a", more, 200) }])[0]).toMatch(
      /^1 of 2,000 pack a /,
    );
    const few = [lives[0]!, { entry: 0, exit: 0.5, failed: false }];
    const [one] = failureCautions([{ item: "pack a", risk: failureRisk("pack a", few, 200) }]);
    expect(one).toContain("1 of 2 pack a failed suddenly in 1 pack-year on record:");
  });
});

describe("forecastPacks with sudden failures", () => {
  /** Thirty untested packs; twenty of them retired within their first year, for one reason. */
  const fleet = (retiredBecause: "failed" | "lost"): Fleet =>
    fleetOf(
      Array.from({ length: 30 }, (_, i) => {
        const inService = asOf - years(1.5) + 7 * i;
        const retired = i < 20 ? inService + 30 + 15 * i : null;
        return pack(`S${i}`, { item: "p", inService, ...(retired === null ? {} : { retired, retiredBecause }) });
      }),
    );
  const policy = { ...defaultPolicy(asOf), horizonMonths: 60 };
  let failing: LifeForecast;
  let losing: LifeForecast;
  beforeAll(() => {
    failing = forecastPacks(fleet("failed"), policy);
    losing = forecastPacks(fleet("lost"), policy);
  });

  it("brings packs due sooner, and leaves fade as it is", () => {
    failing.packs.forEach((one, i) => {
      const other = losing.packs[i]!;
      expect(one.belowBy).toEqual(other.belowBy);
      for (const m of [0, 11, 59]) expect(one.dueChance[m]!).toBeGreaterThan(other.dueChance[m]!);
      expect(one.replaceBy.p50!).toBeLessThan(other.replaceBy.p50!);
    });
    expect(failing.packs[0]!.replaceBy.because).toBe("failure");
    expect(failing.packs[0]!.says).toContain("sudden failure");
    expect(losing.packs[0]!.replaceBy.because).toBe("fade");
  });

  it("splits every step into causes that add up, and draws that average to it", () => {
    const byDraw = new Float64Array(failing.draws * 60);
    failing.packs.slice(0, 3).forEach((one, index) => {
      failing.addDueByDraw([index], byDraw.fill(0));
      for (let m = 0; m < 60; m++) {
        const { fade, limit, failure } = one.causes;
        const step = one.dueChance[m]! - (m > 0 ? one.dueChance[m - 1]! : 0);
        expect(fade[m]! + limit[m]! + failure[m]!).toBeCloseTo(step, 12);
        for (const part of [fade, limit, failure]) expect(part[m]!).toBeGreaterThanOrEqual(0);
        let mean = 0;
        for (let draw = 0; draw < failing.draws; draw++) mean += byDraw[draw * 60 + m]! / failing.draws;
        expect(mean).toBeCloseTo(one.dueChance[m]!, 9);
      }
      const total = (part: Float64Array) => part.reduce((a, b) => a + b, 0);
      expect(total(one.causes.failure)).toBeGreaterThan(total(losing.packs[index]!.causes.failure));
    });
  });

  it("lets new packs fail too, from nothing at the start", () => {
    const [one, other] = [failing, losing].map((life) => {
      const into = new Float64Array(life.draws * 61);
      life.newPackDueByDraw("p", into);
      return Array.from({ length: 61 }, (_, m) => {
        let mean = 0;
        for (let draw = 0; draw < life.draws; draw++) mean += into[draw * 61 + m]! / life.draws;
        return mean;
      });
    });
    expect(one![0]).toBe(0);
    for (let m = 1; m <= 60; m++) {
      expect(one![m]!).toBeGreaterThan(other![m]!);
      expect(one![m]!).toBeGreaterThanOrEqual(one![m - 1]!);
    }
  });

  it("gives the limit what neither fade nor failure has taken by its day", () => {
    const limited = forecastPacks(fleet("failed"), { ...policy, packMaxAgeMonths: 48 });
    const one = limited.packs.at(-1)!;
    const due = addMonths(one.pack.inService!, 48);
    const total = (part: Float64Array) => part.reduce((a, b) => a + b, 0);
    expect(one.dueChance.at(-1)).toBe(1);
    expect(total(one.causes.fade) + total(one.causes.failure) + total(one.causes.limit)).toBeCloseTo(1, 12);
    expect(total(one.causes.failure)).toBeGreaterThan(0.5);
    if (one.replaceBy.because === "age") expect(one.replaceBy.p50).toBe(due);
    expect(one.replaceBy.p90!).toBeLessThanOrEqual(due);
  });
});
