import type { Day } from "../calendar/day.ts";
import { lastDayOfMonth, monthOfDay } from "../calendar/month.ts";
import { capacityBands } from "../fade/capacity-path.ts";
import { type FadingItem, type FadingPack, fadeItems } from "../fade/fade-items.ts";
import { DRAWS } from "../fade/item-fit.ts";
import { type PackClock, packClocks } from "../fade/pack-clock.ts";
import { chancesBelow } from "../fade/pack-outlook.ts";
import { GRID_DAYS } from "../fade/time-grid.ts";
import { type TimeStretch, timeStretch } from "../fade/time-stretch.ts";
import type { Basis } from "../fade/types.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Fleet, nameKey, type PackRow } from "../fleet/rows.ts";
import { seedFromText } from "../maths/text-seed.ts";
import { averageChances, monthEndsAhead, monthlyChances } from "./chance-dates.ts";
import { fadeCautions } from "./fade-cautions.ts";
import { type ItemLimits, itemLimits } from "./item-limits.ts";
import { earliestLimit } from "./life-limits.ts";
import { newPackChances } from "./new-pack.ts";
import { belowDates, causesByMonth, dueDates, overlayCertainDay, type PackEnd } from "./pack-end.ts";
import { packSentence } from "./pack-sentence.ts";
import type { LifeForecast, PackLife } from "./types.ts";

/** Readings from which a pack's forecast rests on its own tests more than on its siblings'. */
const MEASURED_FROM = 3;
const UNNAMED_ITEM = "unnamed pack";

/** A pack with what its forecast is made of. */
interface PackCase {
  pack: PackRow;
  item: string;
  fading: FadingPack | null;
  /** Chances by draw on the time grid, before model error; null where fade cannot be forecast. */
  chances: Float32Array | null;
  end: PackEnd;
}

/** Forecasts the life of every pack: the earliest of fade and of whatever limits policy and catalogue set. */
export function forecastPacks(fleet: Fleet, policy: Policy): LifeForecast {
  const { asOf, horizonMonths: months } = policy;
  const limitsOf = itemLimits(fleet);
  const isRechargeable = (item: string) => limitsOf(item).kind !== "primary";
  const items = fadeItems(fleet, asOf, isRechargeable);
  const clocks = packClocks(fleet, asOf);
  const otherFailures = standingFailures(fleet, asOf);
  const itemByKey = new Map(items.map((item) => [nameKey(item.item), item]));
  const stretchOf = memo((item) => itemByKey.get(item)?.fit.stretch ?? timeStretch(DRAWS, seedFromText(item)));
  const fadingByKey = new Map(items.flatMap((item) => item.packs.map((p) => [nameKey(p.pack.serial), p] as const)));

  const tested = new Set(fleet.runtimeTests.map((test) => nameKey(test.serial)));
  const stock: PackRow[] = [];
  const cases: PackCase[] = [];
  const lives: PackLife[] = [];
  const sites = new Map(fleet.devices.map((device) => [nameKey(device.device), device.site]));
  for (const pack of fleet.packs) {
    if (pack.retired !== null && pack.retired <= asOf) continue;
    if (isShelfStock(pack, tested)) {
      stock.push(pack);
      continue;
    }
    const item = pack.item?.trim() ?? UNNAMED_ITEM;
    const fading = fadingByKey.get(nameKey(pack.serial)) ?? null;
    const fit = itemByKey.get(nameKey(item)) ?? null;
    const clock = clocks.get(nameKey(pack.serial))!;
    const failedOn = fading?.readings.failedOn ?? otherFailures.get(nameKey(pack.serial)) ?? null;
    const one = packCase(
      { pack, clock, failedOn },
      item,
      fading,
      fit,
      stretchOf(nameKey(item)),
      limitsOf(item),
      policy,
    );
    const life = packLife(one, fit, stretchOf(nameKey(item)), policy);
    life.site = pack.site ?? sites.get(nameKey(pack.device ?? "")) ?? null;
    cases.push(one);
    lives.push(life);
  }
  return {
    months,
    draws: DRAWS,
    packs: lives,
    stock,
    dueByDraw(index, into) {
      const { chances, end, item } = cases[index]!;
      if (chances === null) into.fill(0);
      else monthlyChances(chances, stretchOf(nameKey(item)), asOf, months, into);
      overlayCertainDay(into, end, asOf, months);
    },
    newPackDueByDraw(item, into) {
      const key = nameKey(item);
      newPackChances(itemByKey.get(key) ?? null, stretchOf(key), limitsOf(item), policy, months, into);
    },
    fadeGroups: items.map((item) => item.group),
    cautions: fadeCautions(items),
  };
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

function packCase(
  { pack, clock, failedOn }: { pack: PackRow; clock: PackClock; failedOn: Day | null },
  item: string,
  fading: FadingPack | null,
  fit: FadingItem | null,
  stretch: TimeStretch,
  limits: ItemLimits,
  policy: Policy,
): PackCase {
  const { asOf } = policy;
  const canFade = fading !== null && fit !== null && fading.clock.start !== null;
  const chances = canFade
    ? chancesBelow(
        fading.evidence,
        Array.from(GRID_DAYS, (days) => fading.clock.momentAt(asOf + days)),
        fit.fit,
        policy.endOfLifePercent / 100,
      )
    : null;
  const end: PackEnd = {
    fade: chances === null ? null : averageChances(chances, stretch),
    failedOn,
    limit: earliestLimit(pack, clock, limits, policy),
  };
  return { pack, item, fading, chances, end };
}

function packLife(one: PackCase, fit: FadingItem | null, stretch: TimeStretch, policy: Policy): PackLife {
  const { pack, item, fading, chances, end } = one;
  const { asOf, horizonMonths: months } = policy;
  const lastDay = lastDayOfMonth(monthOfDay(asOf) + months - 1);
  const belowBy = belowDates(end, asOf, lastDay);
  const replaceBy = { ...dueDates(end, asOf, lastDay), note: noteOf(one) };
  const bands =
    chances === null || fading === null || fit === null
      ? []
      : capacityBands(fading.evidence, fading.clock, fit.fit, stretch, asOf, [
          asOf,
          ...monthEndsAhead(asOf, months).map((ahead) => asOf + ahead),
        ]);
  const now = bands[0] ?? null;
  const ahead = bands.slice(1);
  const due = averageByMonth(one, stretch, asOf, months);
  return {
    pack,
    item,
    site: null,
    basis: basisOf(fading?.readings.readings.length ?? 0),
    readings: fading?.readings.readings.length ?? 0,
    capacityNow: now,
    path: { p10: ahead.map((b) => b.p10), p50: ahead.map((b) => b.p50), p90: ahead.map((b) => b.p90) },
    belowBy,
    replaceBy,
    dueChance: due,
    causes: causesByMonth(due, end, asOf),
    says: packSentence(
      pack,
      fading,
      now,
      { belowBy, replaceBy, failedOn: end.failedOn },
      policy.endOfLifePercent / 100,
    ),
  };
}

/** Chances by month's end, averaged over draws. */
function averageByMonth({ chances, end }: PackCase, stretch: TimeStretch, asOf: Day, months: number): Float64Array {
  const mean = new Float64Array(months);
  if (chances !== null) {
    const byDraw = new Float64Array(DRAWS * months);
    monthlyChances(chances, stretch, asOf, months, byDraw);
    for (let i = 0; i < byDraw.length; i++) mean[i % months] = mean[i % months]! + byDraw[i]! / DRAWS;
  }
  overlayCertainDay(mean, end, asOf, months);
  return mean;
}

function basisOf(readings: number): Basis {
  if (readings === 0) return "typical";
  return readings >= MEASURED_FROM ? "measured" : "pooled";
}

function noteOf({ pack, fading, end }: PackCase): string | null {
  if (pack.item === null) return "the sheet names no item for it";
  if (fading === null) {
    return end.limit === null
      ? "a battery that does not recharge lasts by its dates, and the sheets give none"
      : "a battery that does not recharge: it lasts by its dates";
  }
  if (fading.clock.start === null) return "no date made, in service or tested";
  if (fading.readings.ratedByEarlyTests) return "no rating: capacity is against the item's early tests";
  return null;
}

function memo<T>(make: (key: string) => T): (key: string) => T {
  const known = new Map<string, T>();
  return (key) => {
    const found = known.get(key) ?? make(key);
    known.set(key, found);
    return found;
  };
}
