import { packEvidence } from "../fade/evidence.ts";
import type { FadingItem } from "../fade/fade-items.ts";
import { chancesBelow } from "../fade/pack-outlook.ts";
import { GRID_DAYS, GRID_SIZE, gridIndex, gridValue } from "../fade/time-grid.ts";
import type { TimeStretch } from "../fade/time-stretch.ts";
import type { Policy } from "../fleet/policy.ts";
import type { ItemLimits } from "./item-limits.ts";

const DAYS_PER_YEAR = 365.25;
const DAYS_PER_MONTH = DAYS_PER_YEAR / 12;
const UNTESTED = packEvidence([], []);

/**
 * Chance that a new pack in typical use is due within m months of entering service, by draw.
 *
 * @param item    the item's fit, or null where none of its packs has one: then only limits end it
 * @param months  m runs from 0 to months
 * @param into    draws * (months + 1), draw-major
 */
export function newPackChances(
  item: FadingItem | null,
  stretch: TimeStretch,
  limits: ItemLimits,
  policy: Policy,
  months: number,
  into: Float64Array,
): void {
  into.fill(0);
  const runs = months + 1;
  if (item !== null) {
    const moments = Array.from(GRID_DAYS, (day) => ({ years: day / DAYS_PER_YEAR, useYears: day / DAYS_PER_YEAR }));
    const chances = chancesBelow(UNTESTED, moments, item.fit, policy.endOfLifePercent / 100);
    for (let draw = 0; draw < stretch.common.length; draw++) {
      for (let m = 1; m <= months; m++) {
        let sum = 0;
        for (const own of stretch.own) {
          const index = gridIndex(m * DAYS_PER_MONTH, stretch.common[draw]! + own);
          sum += gridValue(chances, draw * GRID_SIZE, index);
        }
        into[draw * runs + m] = sum / stretch.own.length;
      }
    }
  }
  const certain = certainMonths(item, limits, policy);
  for (let i = 0; i < into.length; i++) if (i % runs >= certain) into[i] = 1;
}

/** Months after which a limit ends a new pack, Infinity where none does. */
function certainMonths(item: FadingItem | null, limits: ItemLimits, policy: Policy): number {
  const cycles = Math.min(policy.packMaxCycles ?? Infinity, limits.maxCycles ?? Infinity);
  const rates = item?.packs.map((pack) => pack.clock.cyclesPerYear ?? 0).sort((a, b) => a - b) ?? [];
  const rate = rates[Math.floor(rates.length / 2)] ?? 0;
  const byCycles = rate > 0 ? Math.floor((12 * cycles) / rate) : Infinity;
  return Math.max(
    1,
    Math.min(
      policy.packMaxAgeMonths ?? Infinity,
      limits.serviceMonths ?? Infinity,
      limits.useByMonths ?? Infinity,
      byCycles,
    ),
  );
}
