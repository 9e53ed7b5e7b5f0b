import type { Day } from "../calendar/day.ts";
import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { firstTests } from "../fade/first-tests.ts";
import { heededReadings } from "../fade/heeded-readings.ts";
import { knownBy } from "../fade/known-fleet.ts";
import { packClocks } from "../fade/pack-clock.ts";
import { nameKey } from "../fleet/name-key.ts";
import { useByDates } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DeviceRow, Fleet, PackRow } from "../fleet/rows.ts";
import { shelfPacks } from "../fleet/shelf-packs.ts";
import { averageLasting, type Exposure } from "./failure-chances.ts";
import { type ItemLife, type ItemLives, itemLives } from "./item-life.ts";
import type { ItemLimits } from "./item-limits.ts";
import { earliestLimit, type LifeLimit } from "./life-limits.ts";
import type { Told } from "./pack-sentence.ts";
import type { StockPack } from "./types.ts";
import { firstDayOfService } from "./watched-lives.ts";

/** A pack in service with what ends it besides fade. */
export interface ServingPack {
  pack: PackRow;
  item: string;
  life: ItemLife;
  /** The site of the pack, else of its device. */
  site: string | null;
  /** The day, after as-of, on which its device leaves service; null where none is set. */
  leaves: Day | null;
  /** Whether its age can be told. */
  dated: boolean;
  readings: Told["readings"];
  lastDoubted: boolean;
  lastBound: Told["lastBound"];
  /** Whether early tests stand in for a missing rating. */
  ratedByEarlyTests: boolean;
  /** Its exposure to sudden failure; null where unknown. */
  exposure: Exposure | null;
  /** Chance to last without one, on the time grid; null where unknown. */
  lasting: Float64Array | null;
  /** The day of a failed test that nothing has cleared, or null. */
  failedOn: Day | null;
  limit: LifeLimit | null;
}

/** What is known of a fleet's packs whatever the capacity at which they are due. */
export interface ServingPacks {
  items: ItemLives;
  packs: ServingPack[];
  stock: StockPack[];
}

/** The packs in service, and those on the shelf. What is in a device that has left service serves nothing. */
export function servingPacks(fleet: Fleet, policy: Policy): ServingPacks {
  const { asOf } = policy;
  const isStock = shelfPacks(fleet);
  const items = itemLives(fleet, policy, isStock);
  const clocks = packClocks(knownBy(fleet, asOf), asOf, policy.activationEnergyEv);
  const failedOn = standingFailures(fleet, asOf);
  const firstTest = firstTests(fleet, asOf);
  const useBy = useByDates(fleet);
  const devices = new Map(fleet.devices.map((device) => [nameKey(device.device), device]));
  const deviceOf = (pack: PackRow) => devices.get(nameKey(pack.device ?? ""));
  const serves = (row: PackRow | DeviceRow | undefined) => (row?.retired ?? Infinity) > asOf;
  const serving = fleet.packs.filter((pack) => serves(pack) && serves(deviceOf(pack)));
  const limitOf = (pack: PackRow, limits: ItemLimits) => {
    const key = nameKey(pack.serial);
    return earliestLimit(pack, clocks.get(key)!, limits, useBy.get(key) ?? null, policy);
  };
  const packs = serving
    .filter((pack) => !isStock(pack))
    .map((pack): ServingPack => {
      const key = nameKey(pack.serial);
      const device = deviceOf(pack);
      const item = pack.item!.trim();
      const life = items.of(item);
      const clock = clocks.get(key)!;
      const fading = items.fadingPack(pack);
      const exposure = exposureOf(pack, life, firstTest.get(key) ?? null, asOf);
      return {
        pack,
        item,
        life,
        site: pack.site ?? device?.site ?? null,
        leaves: device?.retired ?? null,
        dated: clock.start !== null,
        readings: fading?.readings.readings ?? items.primaryPack(pack)?.readings ?? [],
        lastDoubted: fading !== null && heededReadings(fading).at(-1) !== fading.readings.readings.at(-1),
        lastBound: fading?.readings.bounds.at(-1) ?? null,
        ratedByEarlyTests: fading?.readings.ratedByEarlyTests ?? false,
        exposure,
        lasting: exposure === null ? null : averageLasting(exposure),
        failedOn: fading?.readings.failedOn ?? failedOn.get(key) ?? null,
        limit: limitOf(pack, life.limits),
      };
    });
  const stock = serving.filter(isStock).map((pack) => {
    // its service has yet to begin
    return { pack, due: limitOf(pack, { ...items.of(pack.item ?? "").limits, serviceMonths: null })?.day ?? null };
  });
  return { items, packs, stock };
}

/** A pack's exposure to sudden failure; null where its first day in service is unknown. */
function exposureOf(pack: PackRow, life: ItemLife, firstTest: Day | null, asOf: Day): Exposure | null {
  const from = firstDayOfService(pack, firstTest);
  if (from === null) return null;
  return { risk: life.risk, ageYears: (asOf - from) / DAYS_PER_YEAR };
}

/** The day of the last failed test that no pass of a later day has cleared, by pack key. */
function standingFailures(fleet: Fleet, asOf: Day): Map<string, Day> {
  const judged = fleet.runtimeTests.filter(({ date, result, fullCharge }) => {
    return date <= asOf && result !== null && fullCharge !== false;
  });
  const failed = new Map<string, Day>();
  for (const { serial, date, result } of judged.sort((a, b) => a.date - b.date)) {
    const key = nameKey(serial);
    if (result === "fail") failed.set(key, date);
    else if (failed.get(key) !== date) failed.delete(key);
  }
  return failed;
}
