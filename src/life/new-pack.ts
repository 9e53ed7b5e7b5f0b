import { DAYS_PER_MONTH } from "../calendar/mean-year.ts";
import type { FadingItem } from "../fade/fade-items.ts";
import type { GridChances } from "../fade/grid-chances.ts";
import { NEW_PACK_AHEAD, UNTESTED } from "../fade/new-pack-ahead.ts";
import { chancesBelow } from "../fade/pack-outlook.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Decline } from "./decline.ts";
import { addAlike } from "./due-by-draw.ts";
import type { ItemLimits } from "./item-limits.ts";
import type { FailureRisk } from "./sudden-failures.ts";

/** What is known of an item's new packs. */
export interface NewPack {
  /** Chances of having run down by draw on the grid, with model error as `Decline` has it; null where unknown. */
  decline: Pick<Decline, "chances" | "common"> | null;
  risk: FailureRisk;
  limits: ItemLimits;
  /** Cycles a year in typical use; null where unknown. */
  cyclesPerYear: number | null;
}

/** Chances by draw on the grid that a new pack in typical use has faded below the threshold. */
export function newFadeChances(item: FadingItem, { endOfLifePercent }: Policy): GridChances {
  return chancesBelow(UNTESTED, NEW_PACK_AHEAD, item.fit, endOfLifePercent / 100, item.fit.stretch.own);
}

/** Cycles a year of an item's middling pack; null where nothing tells. */
export function usualCycles(item: FadingItem): number | null {
  const rates = item.packs.map((pack) => pack.clock.cyclesPerYear ?? 0).sort((a, b) => a - b);
  return rates[Math.floor(rates.length / 2)] ?? null;
}

/**
 * Chance that a new pack in typical use is due within m months of entering service, by draw.
 *
 * @param months  m runs from 0 to months
 * @param into    draws * (months + 1), draw-major
 */
export function newPackChances(pack: NewPack, policy: Policy, months: number, into: Float64Array): void {
  into.fill(0);
  const runs = months + 1;
  const days = Array.from({ length: runs }, (_, m) => m * DAYS_PER_MONTH);
  const { decline, risk } = pack;
  const declines = decline === null ? [] : [decline];
  addAlike({ count: 1, declines, exposure: { risk, ageYears: 0 }, certain: certainMonths(pack, policy) }, days, into);
  for (let at = 0; at < into.length; at += runs) into[at] = 0;
}

/** Months after which a limit ends a new pack, Infinity where none does. */
function certainMonths({ limits, cyclesPerYear }: NewPack, policy: Policy): number {
  const cycles = Math.min(policy.packMaxCycles ?? Infinity, limits.maxCycles ?? Infinity);
  const rate = cyclesPerYear ?? 0;
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
