import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet, PackRow } from "../fleet/rows.ts";
import { thresholdInForce } from "../fleet/threshold-in-force.ts";
import { type PackReadings, readingsByPack } from "./capacity-readings.ts";
import { type PackEvidence, packEvidence } from "./evidence.ts";
import type { StatedLife } from "./item-prior.ts";
import { knownBy } from "./known-fleet.ts";
import { type PackClock, packClocks } from "./pack-clock.ts";
import { statedLives } from "./stated-life.ts";
import { agedClock } from "./unknown-age.ts";

/** One pack with its clocks, its readings and the evidence made from them. */
export interface FadingPack {
  pack: PackRow;
  clock: PackClock;
  readings: PackReadings;
  evidence: PackEvidence;
}

/** An item with all that a fit of it can hear. */
export interface ItemEvidence {
  key: string;
  /** As its first pack writes it. */
  name: string;
  /** By serial. */
  packs: FadingPack[];
  /** What the catalogue states of its life. */
  stated: StatedLife;
}

/** What of a planner's choices fade hangs on. */
export type FadePolicy = Pick<Policy, "asOf" | "activationEnergyEv">;

/**
 * What was known by as-of of every item that fades by use: later tests and retirements are left out.
 *
 * @returns items by key, and the threshold by which packs were retired, fraction of rated
 */
export function itemsWithEvidence(
  fleet: Fleet,
  { asOf, activationEnergyEv }: FadePolicy,
  isRechargeable: (item: string) => boolean,
): { items: ItemEvidence[]; inForce: number } {
  const known = knownBy(fleet, asOf);
  const inForce = thresholdInForce(known);
  const readings = readingsByPack(known, inForce);
  const clocks = packClocks(known, asOf, activationEnergyEv);
  const fading = known.packs
    .filter(({ item }) => item !== null && isRechargeable(item))
    .map((pack): FadingPack => {
      const read = readings.get(nameKey(pack.serial))!;
      const clock = agedClock(pack, clocks.get(nameKey(pack.serial))!, read.readings[0]);
      return { pack, clock, readings: read, evidence: evidenceOf(pack, read, clock, inForce) };
    });
  const byItem = groupBy(fading, ({ pack }) => nameKey(pack.item!));
  const stated = statedLives(known, clocks);
  const items = [...byItem.keys()].sort().map((key): ItemEvidence => {
    const packs = byItem.get(key)!.sort((a, b) => (nameKey(a.pack.serial) < nameKey(b.pack.serial) ? -1 : 1));
    return { key, name: packs[0]!.pack.item!.trim(), packs, stated: stated(key) };
  });
  return { items, inForce };
}

function evidenceOf(pack: PackRow, readings: PackReadings, clock: PackClock, inForce: number): PackEvidence {
  if (clock.start === null) return packEvidence([], []);
  const bounds = readings.bounds.map(({ day, ...bound }) => ({ ...clock.momentAt(day), ...bound }));
  if (pack.retiredBecause === "faded" && pack.retired !== null) {
    bounds.push({ ...clock.momentAt(pack.retired), threshold: inForce, below: true });
  }
  return packEvidence(
    readings.readings.map(({ day, capacity }) => ({ ...clock.momentAt(day), capacity })),
    bounds,
  );
}
