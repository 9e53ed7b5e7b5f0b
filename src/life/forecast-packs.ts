import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { DRAWS } from "../fade/item-fit.ts";
import { type PackClock, packClocks } from "../fade/pack-clock.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Fleet, nameKey, type PackRow } from "../fleet/rows.ts";
import { thresholdInForce } from "../fleet/threshold-in-force.ts";
import { averageChances, monthEndsAhead, monthlyChances } from "./chance-dates.ts";
import { fadeCautions } from "./fade-cautions.ts";
import { failureCautions } from "./failure-cautions.ts";
import { addFailures, averageLasting, type Exposure } from "./failure-chances.ts";
import { declineOf, type ItemLife, type ItemLives, itemLives, newPackOf } from "./item-life.ts";
import { earliestLimit } from "./life-limits.ts";
import { unnamedCautions, withNamedItems } from "./named-items.ts";
import { newPackChances } from "./new-pack.ts";
import { overlayCertainDay } from "./pack-end.ts";
import { type PackCase, packLife } from "./pack-life.ts";
import { readingFindings, swapFindings } from "./reading-findings.ts";
import { earlySigns } from "./signs/early-signs.ts";
import { failureRecord } from "./survival-by-year.ts";
import { withoutOldPacks } from "./swapped-packs.ts";
import type { LifeForecast } from "./types.ts";
import { firstDayOfService, firstTests } from "./watched-lives.ts";

/** Forecasts the life of every pack: the earliest of fade, sudden failure and whatever limits policy and catalogue set. */
export function forecastPacks(sheets: Fleet, policy: Policy): LifeForecast {
  const { asOf, horizonMonths: months } = policy;
  const { fleet, swaps } = withoutOldPacks(withNamedItems(sheets), asOf);
  const tested = new Set(fleet.runtimeTests.map((test) => nameKey(test.serial)));
  const isStock = (pack: PackRow) => isShelfStock(pack, tested);
  const items = itemLives(fleet, policy, isStock);
  const context: Context = {
    policy,
    items,
    clocks: packClocks(fleet, asOf, policy.activationEnergyEv),
    failedOn: standingFailures(fleet, asOf),
    firstTest: firstTests(fleet, asOf),
  };
  const serving = fleet.packs.filter((pack) => pack.retired === null || pack.retired > asOf);
  const cases = serving.filter((pack) => !isStock(pack)).map((pack) => packCase(pack, context));
  const sites = new Map(fleet.devices.map((device) => [nameKey(device.device), device.site]));
  // one room for all packs: thousands of their own would only be cleared away again
  const room = new Float64Array(DRAWS * months);
  const lives = cases.map((one) => {
    const due = dueOf(one, room, policy);
    const site = one.pack.site ?? sites.get(nameKey(one.pack.device ?? "")) ?? null;
    return { ...packLife(one, averageOfDraws(due, months), policy), site };
  });
  return {
    months,
    draws: DRAWS,
    packs: lives,
    stock: serving.filter(isStock),
    dueByDraw: (index, into) => void dueOf(cases[index]!, into, policy),
    newPackDueByDraw: (item, into) => newPackChances(newPackOf(items.of(item), policy), policy, months, into),
    fadeGroups: [...items.fadingItems, ...items.primaryItems].map((item) => item.group),
    suddenFailures: risksOf(cases, items).map(({ item, risk, watched }) => failureRecord(item, risk, watched)),
    earlySigns: earlySigns(items.fadingItems, fleet, lives),
    findings: [...swapFindings(swaps), ...readingFindings(items.fadingItems)],
    cautions: [
      ...unnamedCautions(sheets),
      ...fadeCautions(items.fadingItems, thresholdInForce(fleet)),
      ...failureCautions(risksOf(cases, items)),
    ],
  };
}

interface Context {
  policy: Policy;
  items: ItemLives;
  clocks: Map<string, PackClock>;
  failedOn: Map<string, Day>;
  firstTest: Map<string, Day>;
}

function packCase(pack: PackRow, { policy, items, clocks, failedOn, firstTest }: Context): PackCase {
  const key = nameKey(pack.serial);
  const item = pack.item!.trim();
  const life = items.of(item);
  const clock = clocks.get(key)!;
  const fading = items.fadingPack(pack);
  const decline = declineOf(pack, life, items, policy);
  const exposure = exposureOf(pack, life, firstTest.get(key) ?? null, policy.asOf);
  const last = fading?.readings.readings.at(-1) ?? null;
  return {
    pack,
    item,
    primary: life.limits.kind === "primary",
    dated: clock.start !== null,
    readings: fading?.readings.readings ?? items.primaryPack(pack)?.readings ?? [],
    ratedByEarlyTests: fading?.readings.ratedByEarlyTests ?? false,
    siblings: last === null ? null : life.siblings(last.capacity),
    decline,
    exposure,
    end: {
      fade: decline === null ? null : averageChances(decline),
      lasting: exposure === null ? null : averageLasting(exposure),
      failedOn: fading?.readings.failedOn ?? failedOn.get(key) ?? null,
      limit: earliestLimit(pack, clock, life.limits, policy),
    },
  };
}

/** A pack's exposure to sudden failure; null where its first day in service is unknown. */
function exposureOf(pack: PackRow, life: ItemLife, firstTest: Day | null, asOf: Day): Exposure | null {
  const from = firstDayOfService(pack, firstTest);
  if (from === null) return null;
  return { risk: life.risk, ageYears: (asOf - from) / DAYS_PER_YEAR };
}

/** Chances that a pack is due from any cause by month's end, by draw. */
function dueOf(one: PackCase, into: Float64Array, { asOf, horizonMonths: months }: Policy): Float64Array {
  const { decline, exposure, end } = one;
  if (decline === null) into.fill(0);
  else monthlyChances(decline, asOf, months, into);
  if (exposure !== null) addFailures(into, exposure, monthEndsAhead(asOf, months));
  overlayCertainDay(into, end, asOf, months);
  return into;
}

function averageOfDraws(byDraw: Float64Array, months: number): Float64Array {
  const mean = new Float64Array(months);
  for (let from = 0; from < byDraw.length; from += months) {
    for (let m = 0; m < months; m++) mean[m] = mean[m]! + byDraw[from + m]!;
  }
  // divided once, so that certainty in every draw is exactly 1
  return mean.map((sum) => Math.min(1, sum / DRAWS));
}

/** The risks of the items of packs in service, by name. */
function risksOf(cases: readonly PackCase[], items: ItemLives) {
  const names = new Map(cases.filter(({ pack }) => pack.item !== null).map(({ item }) => [nameKey(item), item]));
  return [...names.keys()].sort().map((key) => {
    const { risk, watched } = items.of(key);
    return { item: names.get(key)!, risk, watched };
  });
}

/** The day of the last failed test that no later pass has cleared, by pack key. */
function standingFailures(fleet: Fleet, asOf: Day): Map<string, Day> {
  const judged = fleet.runtimeTests.filter(({ date, result, fullCharge }) => {
    return date <= asOf && result !== null && fullCharge !== false;
  });
  const failed = new Map<string, Day>();
  for (const { serial, date, result } of judged.sort((a, b) => a.date - b.date)) {
    if (result === "fail") failed.set(nameKey(serial), date);
    else failed.delete(nameKey(serial));
  }
  return failed;
}

/** Shelf stock has no device, no first day in service, no cycles and no tests. */
function isShelfStock(pack: PackRow, tested: ReadonlySet<string>): boolean {
  return pack.device === null && pack.inService === null && pack.cycles === null && !tested.has(nameKey(pack.serial));
}
