import { isoFromDay } from "../../src/calendar/day.ts";
import { DAYS_PER_MONTH } from "../../src/calendar/mean-year.ts";
import { firstDayOfMonth, monthOfDay } from "../../src/calendar/month.ts";
import { forecastDemand } from "../../src/demand/forecast-demand.ts";
import type { ItemDemand } from "../../src/demand/types.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { normalCdf, normalQuantile } from "../../src/maths/normal.ts";
import type { Random } from "../../src/maths/random.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { madeUpLife } from "../demand/made-up-life.ts";
import { catalogued, day, device, stock, use } from "../fleet/make-rows.ts";

const AS_OF = day("2026-11-01");
const START = monthOfDay(AS_OF);
export const MONTHS = 36;
const END = firstDayOfMonth(START + MONTHS);
const policy = { ...defaultPolicy(AS_OF), horizonMonths: MONTHS, useLogFrom: day("2024-11-01") };

/** What is forecast of an item, and the units that it came to need, month by month. */
export interface DemandWorld {
  demand: ItemDemand;
  needed: number[];
}

/** Lives have a spread of their own about a median that all packs share, itself uncertain (standard deviations of ln). */
const SHARED_SPREAD = 0.25;
const OWN_SPREAD = 0.5;
const NEW_PACK_MEDIAN_MONTHS = 20;
const DRAWS = 100;
const SHARED = Array.from({ length: DRAWS }, (_, draw) => normalQuantile((draw + 0.5) / DRAWS));

/** The normal cdf from a table, to 1e-7: worlds ask for it a hundred million times. */
const STEPS = 1000;
const WIDEST = 8;
const CDF = Float64Array.from({ length: 2 * WIDEST * STEPS + 2 }, (_, i) => normalCdf(i / STEPS - WIDEST));
function cdf(z: number): number {
  const at = (Math.min(WIDEST, Math.max(-WIDEST, z)) + WIDEST) * STEPS;
  const low = Math.floor(at);
  return CDF[low]! + (at - low) * (CDF[low + 1]! - CDF[low]!);
}

/** Packs whose lives are drawn, replaced whenever they end, and the forecast of one who knows the spreads only. */
export function packWorld(packs: number, random: Random): DemandWorld {
  const medians = Array.from({ length: packs }, () => 4 + 60 * random.uniform());
  const logs = Array.from({ length: MONTHS + 1 }, (_, m) => Math.log(m));
  const chance = (month: number, logMedian: number, draw: number) =>
    cdf((logs[month]! - logMedian - SHARED_SPREAD * SHARED[draw]!) / OWN_SPREAD);
  const made = medians.map((median) => {
    const logMedian = Math.log(median);
    const due = SHARED.map((_, draw) => {
      // pushed one by one: far quicker than Array.from
      const ofDraw: number[] = [];
      for (let month = 1; month <= MONTHS; month++) ofDraw.push(chance(month, logMedian, draw));
      return ofDraw;
    });
    return { item: "Pack", due };
  });
  const logOfNew = Math.log(NEW_PACK_MEDIAN_MONTHS);
  const life = madeUpLife(MONTHS, made, (draw, m) => (m === 0 ? 0 : chance(m, logOfNew, draw)));
  const fleet = { ...emptyFleet(), catalogue: [catalogued("Pack", "pack")] };
  const [demand] = forecastDemand(policy, life, forecastDatedStock(fleet, policy));
  const needed = new Array<number>(MONTHS).fill(0);
  const shared = random.normal();
  const lived = (median: number) => median * Math.exp(SHARED_SPREAD * shared + OWN_SPREAD * random.normal());
  for (const median of medians) {
    let month = Math.ceil(lived(median)) - 1;
    while (month < MONTHS) {
      needed[month] = needed[month]! + 1;
      month += Math.ceil(lived(NEW_PACK_MEDIAN_MONTHS));
    }
  }
  return { demand: demand!, needed };
}

const ARRIVES_WITH_MONTHS = 24;
const USES_PER_MONTH = 0.08;
/** Of the gamma distribution from which each device's rate is drawn. */
const SHAPE = 2;

/** Dated pads on devices with rates of their own, of which the forecast has two years' log. */
export function padsWorld(devices: number, random: Random): DemandWorld {
  const names = Array.from({ length: devices }, (_, i) => `D${i}`);
  const exponential = () => -Math.log(random.uniform());
  const size = () => (random.uniform() < 0.2 ? 2 : 1);
  const uses = (from: number, to: number, rate: number) => {
    const found: { at: number; units: number }[] = [];
    for (let at = from; ; ) {
      at += (exponential() / rate) * DAYS_PER_MONTH;
      if (at >= to) return found;
      found.push({ at, units: size() });
    }
  };
  const worlds = names.map((name) => {
    const rate = (USES_PER_MONTH * (exponential() + exponential())) / SHAPE;
    const expiries = Array.from({ length: 1 + (random.uniform() < 0.5 ? 1 : 0) }, () =>
      Math.floor(AS_OF + 20 + 900 * random.uniform()),
    );
    return { name, expiries, logged: uses(policy.useLogFrom, AS_OF, rate), ahead: uses(AS_OF, END, rate) };
  });
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: names.map((name) => device(name, { duty: "ward" })),
    catalogue: [catalogued("Pads", "pads", { arrivesWithMonths: ARRIVES_WITH_MONTHS, carriedBy: ["ward"] })],
    datedStock: worlds.flatMap(({ name, expiries }) => expiries.map((at) => stock("Pads", isoFromDay(at), name))),
    useLog: worlds.flatMap(({ name, logged }) =>
      logged.map(({ at, units }) => use(isoFromDay(Math.floor(at)), "Pads", name, { quantity: units })),
    ),
  };
  const [demand] = forecastDemand(
    policy,
    madeUpLife(MONTHS, [], () => 0),
    forecastDatedStock(fleet, policy),
  );
  const needed = new Array<number>(MONTHS).fill(0);
  for (const { expiries, ahead } of worlds) playDevice(expiries, ahead, needed);
  return { demand: demand!, needed };
}

/** First expired, first out; whatever leaves is replaced the same month by a unit with the life that units arrive with. */
function playDevice(expiries: readonly number[], ahead: readonly { at: number; units: number }[], needed: number[]) {
  let swaps = expiries.map((expiry) => expiry - policy.swapBeforeExpiryDays);
  const leave = (at: number) => {
    const month = monthOfDay(Math.floor(at));
    needed[month - START] = needed[month - START]! + 1;
    const replacement = firstDayOfMonth(month + ARRIVES_WITH_MONTHS + 1) - 1 - policy.swapBeforeExpiryDays;
    swaps = [...swaps.sort((a, b) => a - b).slice(1), replacement];
  };
  const expire = (before: number) => {
    while (Math.min(...swaps) < before) leave(Math.max(AS_OF, Math.min(...swaps)));
  };
  for (const { at, units } of ahead) {
    expire(at);
    for (let unit = 0; unit < units; unit++) leave(at);
  }
  expire(END);
}

/**
 * Where the needs of the first months lie in their forecast: uniform between the chance of fewer and that of at most so
 * many, so that counts have a flat place where the forecast is right.
 *
 * @see Czado, Gneiting & Held (2009), Predictive model assessment for count data, Biometrics 65, 1254-1261
 */
export function placeOfTruth({ demand, needed }: DemandWorld, months: number, random: Random): number {
  const units = needed.slice(0, months).reduce((sum, count) => sum + count, 0);
  const below = chanceOfAtMost(demand, months, units - 1);
  return below + random.uniform() * (chanceOfAtMost(demand, months, units) - below);
}

/** The highest level at which the forecast needs no more than so many units. */
function chanceOfAtMost(demand: ItemDemand, months: number, units: number): number {
  if (units < 0) return 0;
  let [low, high] = [0, 1];
  while (high - low > 1e-5) {
    const level = (low + high) / 2;
    if (demand.needsQuantile(-1, months - 1, level) <= units) low = level;
    else high = level;
  }
  return low;
}
