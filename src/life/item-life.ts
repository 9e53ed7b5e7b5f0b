import { type FadingItem, fadeItems } from "../fade/fade-items.ts";
import { DRAWS } from "../fade/item-fit.ts";
import type { FadingPack } from "../fade/items-with-evidence.ts";
import { knownBy } from "../fade/known-fleet.ts";
import type { KeptPosteriors } from "../fade/posteriors-by-curve.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet, PackRow } from "../fleet/rows.ts";
import type { WatchedLife } from "../maths/kaplan-meier.ts";
import { type Decline, fadeDecline } from "./decline.ts";
import { type ItemLimits, itemLimits, rechargeable } from "./item-limits.ts";
import type { TestNotUsed } from "./left-out-findings.ts";
import { type NewPack, newFadeChances, usualCycles } from "./new-pack.ts";
import { newPrimaryChances, primaryDecline } from "./primary-decline.ts";
import { fitPrimaryItem, type PrimaryItem } from "./primary-item.ts";
import { type PrimaryPack, primaryPacks, primaryTestsNotUsed } from "./primary-readings.ts";
import { type FailureRisk, failureRisk } from "./sudden-failures.ts";
import { watchedLives } from "./watched-lives.ts";

/** What is known of an item's packs as a whole. */
export interface ItemLife {
  limits: ItemLimits;
  risk: FailureRisk;
  /** Its packs' lives as the sheets watched them. */
  watched: readonly WatchedLife[];
  fade: FadingItem | null;
  /** Batteries that do not recharge, where something was read of them. */
  primary: PrimaryItem | null;
}

/** What is known of all items, and of each pack within its item. */
export interface ItemLives {
  of(item: string): ItemLife;
  fadingPack(pack: PackRow): FadingPack | null;
  primaryPack(pack: PackRow): PrimaryPack | null;
  fadingItems: FadingItem[];
  primaryItems: PrimaryItem[];
  testsNotUsed: TestNotUsed[];
}

/** Fits everything that packs of one item share: fade or discharge, and sudden failure. */
export function itemLives(fleet: Fleet, policy: Policy, isStock: (pack: PackRow) => boolean): ItemLives {
  const limitsOf = itemLimits(fleet);
  const isRechargeable = rechargeable(fleet);
  const fadingItems = fadeItems(fleet, policy, isRechargeable);
  const isPrimary = (item: string) => !isRechargeable(item);
  const known = knownBy(fleet, policy.asOf);
  const primaries = primaryPacks(known, isPrimary);
  const primaryItems = [...primaries.keys()].sort().flatMap((key) => {
    return fitPrimaryItem(key, primaries.get(key)!, limitsOf(key).serviceMonths) ?? [];
  });
  const lives = watchedLives(fleet, policy.asOf, isStock);
  const fadeOf = new Map(fadingItems.map((item) => [nameKey(item.item), item]));
  const primaryOf = new Map(primaryItems.map((item) => [nameKey(item.group.item), item]));
  const fadingPacks = bySerial(fadingItems.flatMap((item) => item.packs));
  const primaryPackOf = bySerial([...primaries.values()].flat());
  const lifeOf = new Map<string, ItemLife>();
  return {
    fadingItems,
    primaryItems,
    testsNotUsed: [
      ...fadingItems.flatMap(({ packs }) => packs.flatMap(({ readings }) => readings.leftOut)),
      ...primaryTestsNotUsed(known, isPrimary).map((test) => ({
        test,
        because: "not in percent left" as const,
      })),
    ],
    fadingPack: (pack) => fadingPacks.get(nameKey(pack.serial)) ?? null,
    primaryPack: (pack) => primaryPackOf.get(nameKey(pack.serial)) ?? null,
    of(item) {
      const key = nameKey(item);
      const found = lifeOf.get(key) ?? {
        limits: limitsOf(item),
        risk: failureRisk(key, lives.get(key) ?? [], DRAWS),
        watched: lives.get(key) ?? [],
        fade: fadeOf.get(key) ?? null,
        primary: primaryOf.get(key) ?? null,
      };
      lifeOf.set(key, found);
      return found;
    },
  };
}

/** How one pack of an item runs down; null where nothing tells. */
export function declineOf(
  pack: PackRow,
  life: ItemLife,
  lives: ItemLives,
  policy: Policy,
  kept: KeptPosteriors | null,
): Decline | null {
  const fading = lives.fadingPack(pack);
  if (fading !== null && life.fade !== null) return fadeDecline(fading, life.fade, policy, kept);
  const primary = lives.primaryPack(pack);
  return primary !== null && life.primary !== null ? primaryDecline(life.primary, primary, policy) : null;
}

/** What is known of an item's new packs. */
export function newPackOf({ fade, primary, risk, limits }: ItemLife, policy: Policy): NewPack {
  const decline =
    fade !== null
      ? { chances: newFadeChances(fade, policy), common: fade.fit.stretch.common }
      : primary !== null
        ? { chances: newPrimaryChances(primary, policy), common: primary.stretch.common }
        : null;
  return { decline, risk, limits, cyclesPerYear: fade === null ? null : usualCycles(fade) };
}

function bySerial<T extends { pack: PackRow }>(packs: readonly T[]): Map<string, T> {
  return new Map(packs.map((one) => [nameKey(one.pack.serial), one]));
}
