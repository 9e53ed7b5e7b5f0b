import type { Day } from "../../calendar/day.ts";
import { DAYS_PER_YEAR } from "../../calendar/mean-year.ts";
import { capacityBands } from "../../fade/capacity-path.ts";
import { type FadingItem, fadeItems } from "../../fade/fade-items.ts";
import type { FadingPack } from "../../fade/items-with-evidence.ts";
import { chancesBelow } from "../../fade/pack-outlook.ts";
import { crossingOf, straightLine } from "../../fade/straight-line.ts";
import { gridIndex, gridValue } from "../../fade/time-grid.ts";
import { wearAhead } from "../../fade/wear-ahead.ts";
import { nameKey } from "../../fleet/name-key.ts";
import { withNamedItems } from "../../fleet/named-items.ts";
import type { Policy } from "../../fleet/policy.ts";
import type { Fleet } from "../../fleet/rows.ts";
import { thresholdInForce } from "../../fleet/threshold-in-force.ts";
import { normalQuantile } from "../../maths/normal.ts";
import { median } from "../../maths/quantiles.ts";
import { averageChances, datesOfChance } from "../chance-dates.ts";
import { rechargeable } from "../item-limits.ts";
import { outcomeAfter } from "./outcome.ts";
import { pastFleets } from "./past-fleets.ts";
import { type ProvedCount, type ProvedLife, type ProvedReading, type ProveScore, scoreItem } from "./score-item.ts";

/** How well forecasts would have done on this fleet's own past. */
export interface Proof {
  asOf: Day;
  /** Days at which history was cut off. */
  cuts: Day[];
  /** One row an item, then all of them together. */
  scores: ProveScore[];
  /** The pack's own model error that each item's completed lives have taught, as used in plans. */
  ownSpread: { item: string; spread: number; completedLives: number }[];
}

/** Years that the age rule takes for a life before any has been completed: common practice, no source. */
const USUAL_LIFE_YEARS = 5;
/** Standard deviations between the 10th and the 90th percentile of a normal. */
const TENTHS_APART = 2 * normalQuantile(0.9);

/**
 * Hides the fleet's recent history, forecasts it from what was known before, and scores the forecasts against what
 * came, beside a straight line through each pack's own tests and a rule that reads no test.
 *
 * @param monthsBack  how long before as-of history is cut off, one forecast each
 */
export function prove(sheets: Fleet, policy: Policy, monthsBack: readonly number[]): Proof {
  const fleet = withNamedItems(sheets);
  const isRechargeable = rechargeable(fleet);
  const threshold = thresholdInForce(fleet);
  const fleets = pastFleets(fleet, policy.asOf, monthsBack);
  const now = fadeItems(fleets.now.fleet, policy, isRechargeable);
  const lives: ProvedLife[] = [];
  const readings: ProvedReading[] = [];
  const counts: ProvedCount[] = [];
  for (const { asOf: cut, fleet: then } of fleets.past) {
    const known = fadeItems(then, { ...policy, asOf: cut }, isRechargeable);
    const knownBy = new Map(known.map((item) => [nameKey(item.item), item]));
    const since = fleets.now.swaps.filter(({ after }) => after.date > cut);
    const swapped = new Set(since.map(({ serial }) => nameKey(serial)));
    for (const item of now) {
      const itemThen = knownBy.get(nameKey(item.item));
      if (itemThen === undefined) continue;
      proveItem(itemThen, item, { cut, asOf: policy.asOf, threshold, swapped }, { lives, readings, counts });
    }
  }
  const of =
    (item: string) =>
    <T extends { item: string }>(list: readonly T[]) =>
      list.filter((one) => one.item === item);
  const scores = now.map(({ item }) => scoreItem(item, of(item)(lives), of(item)(readings), of(item)(counts)));
  return {
    asOf: policy.asOf,
    cuts: fleets.past.map((one) => one.asOf),
    scores: [...scores, scoreItem("all items", lives, readings, counts)],
    ownSpread: now.map(({ item, group, completedLives }) => ({
      item,
      spread: group.parameters.ownSpread!,
      completedLives,
    })),
  };
}

interface Window {
  cut: Day;
  asOf: Day;
  threshold: number;
  /** Serials, as keys, under which a newer pack was first tested after the cut-off. */
  swapped: ReadonlySet<string>;
}

/** Forecasts every pack that was in service at the cut-off, from what was known then. */
function proveItem(
  known: FadingItem,
  now: FadingItem,
  { cut, asOf, threshold, swapped }: Window,
  into: { lives: ProvedLife[]; readings: ProvedReading[]; counts: ProvedCount[] },
): void {
  const { item } = now;
  const later = new Map(now.packs.map((pack) => [nameKey(pack.pack.serial), pack]));
  const ageRule = usualLife(known);
  let expected = 0;
  let came = 0;
  for (const pack of known.packs) {
    const { start } = pack.clock;
    const key = nameKey(pack.pack.serial);
    // swapped since: what came later came of another pack
    if (pack.pack.retired !== null || start === null || start > cut || swapped.has(key)) continue;
    const after = later.get(key)!;
    const outcome = outcomeAfter(after, cut, threshold);
    proveReadings(pack, after, known, cut, into.readings);
    if (outcome.kind === "unknown") continue;
    const { common, own } = known.fit.stretch;
    const chances = chancesBelow(pack.evidence, wearAhead(pack.clock, cut), known.fit, threshold, own);
    const chance = averageChances({ chances, common });
    const seenUntil = outcome.kind === "ended" ? asOf : outcome.until;
    expected += gridValue(chance, 0, gridIndex(seenUntil - cut, 0));
    if (outcome.kind !== "ended") continue;
    came++;
    into.lives.push({
      item,
      serial: pack.pack.serial,
      cut,
      start,
      after: outcome.after,
      by: outcome.by,
      forecast: datesOfChance(chance, cut, asOf),
      line: lineForecast(pack, threshold),
      age: Math.max(start + ageRule, start + 1.2 * (cut - start)),
    });
  }
  into.counts.push({ item, expected, came });
}

/** Readings after the cut-off against the capacity forecast for their day. */
function proveReadings(pack: FadingPack, later: FadingPack, known: FadingItem, cut: Day, into: ProvedReading[]): void {
  const hidden = later.readings.readings.filter(({ day }) => day > cut);
  if (hidden.length === 0) return;
  const noise = known.group.parameters.noise!;
  const days = hidden.map(({ day }) => day - cut);
  const bands = capacityBands(pack.evidence, wearAhead(pack.clock, cut), known.fit, days);
  hidden.forEach(({ capacity }, i) => {
    const { p10, p50, p90 } = bands[i]!;
    const half = (TENTHS_APART / 2) * Math.hypot((p90 - p10) / TENTHS_APART, noise);
    const error = capacity - p50;
    into.push({ item: known.item, error, inside: Math.abs(error) <= half });
  });
}

function lineForecast(pack: FadingPack, threshold: number): Day | null {
  const line = straightLine(pack.readings.readings.map(({ day, capacity }) => [day, capacity] as const));
  return line === null ? null : crossingOf(line, threshold, "falling");
}

/** Median length of the lives completed by the cut-off, in days; the usual one where there is none. */
function usualLife(known: FadingItem): number {
  const lengths = known.packs.flatMap(({ pack, clock }) =>
    pack.retiredBecause === "faded" && pack.retired !== null && clock.start !== null
      ? [pack.retired - clock.start]
      : [],
  );
  return lengths.length > 0 ? median(lengths) : USUAL_LIFE_YEARS * DAYS_PER_YEAR;
}
