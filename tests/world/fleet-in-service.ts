import { type Day, isoFromDay } from "../../src/calendar/day.ts";
import { lastDayOfMonth, type Month, monthOfDay } from "../../src/calendar/month.ts";
import type { CatalogueRow, Fleet, PackRow, RuntimeTestRow, SupplierRow } from "../../src/fleet/rows.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { seedFromText } from "../../src/maths/text-seed.ts";
import { catalogued, device, ordered, pack, runtimeTest, stock, use } from "../fleet/make-rows.ts";
import { fleetWith, supplierRow } from "../orders/made-up.ts";
import { DAYS_PER_YEAR, type TrueFleet, trueFleet } from "./true-fleet.ts";

export const PACK = "Pack";
export const PADS = "Pads";
export const ITEMS = [PACK, PADS] as const;
export type ItemName = (typeof ITEMS)[number];

export const DEVICES = 12;
const HISTORY_YEARS = 8;
const LOG_YEARS = 2;
const PADS_ARRIVE_WITH_MONTHS = 24;
export const SWAP_BEFORE_DAYS = 14;
const LEAST_LIFE_DAYS = 14;
/** Day of the year on which every pack is tested. */
const TEST_DAY = 258;
/** Age at which the calendar rule replaces a pack. */
const FOUR_YEARS = 4 * DAYS_PER_YEAR;

const FACTS: Record<ItemName, CatalogueRow> = {
  Pack: catalogued(PACK, "pack", {
    supplier: "North Supplies",
    price: "250.00",
    currency: "EUR",
    leadDays: 42,
    perDevice: 1,
  }),
  Pads: catalogued(PADS, "pads", {
    supplier: "North Supplies",
    price: "35.00",
    currency: "EUR",
    leadDays: 20,
    unitsPerBox: 2,
    arrivesWithMonths: PADS_ARRIVE_WITH_MONTHS,
    perDevice: 1,
  }),
};
const SUPPLIER: SupplierRow = supplierRow({ orderFee: "40.00", freeOver: "600.00" });
/** Cents. */
export const PRICE: Record<ItemName, number> = { Pack: 25_000, Pads: 3500 };

/** A unit on the shelf or on its way. */
interface Unit {
  item: ItemName;
  from: Day;
  expiry: Day | null;
}

/** What a device holds. `lacks`: its need waits, with the worn-out unit or none in it. */
interface Held {
  pack: { serial: string; n: number; from: Day; lacksSince: Day | null };
  pads: { expiry: Day; lacks: boolean };
}

/** What became of the needs of an item. */
export interface Served {
  needed: number;
  atOnce: number;
  /** Months in which a need waited. */
  monthsWaiting: number;
  lapsed: number;
}

/**
 * A fleet in service, played day by day: packs end, pads are used and expire, units come from the shelf, first expired
 * first out, or are waited for. What its sheets say on a day is what a planner would then know.
 */
export class FleetInService {
  private readonly truth: TrueFleet;
  private readonly devices: Held[];
  private readonly uses: Set<Day>[];
  private readonly log: { day: Day; device: string }[] = [];
  private readonly gone: PackRow[] = [];
  private readonly tests: RuntimeTestRow[] = [];
  private units: Unit[];
  /** The last month in which a need of an item waited. */
  private readonly waitedIn: Partial<Record<ItemName, Month>> = {};
  readonly served: Record<ItemName, Served>;
  /** Units needed by item and day. */
  readonly needs: { item: ItemName; day: Day }[] = [];

  /**
   * @param endless     where true a fresh unit is there whenever the shelf has none: needs as they are if all are served at once
   * @param fourYearly  where true packs of four years are replaced as long as the shelf has others
   */
  constructor(
    private readonly seed: number,
    private readonly start: Day,
    end: Day,
    private readonly rule: { endless: boolean; fourYearly: boolean },
  ) {
    this.truth = trueFleet(seed, DEVICES);
    const random = seededRandom(seedFromText(`start ${seed}`));
    const nobody = () => ({ needed: 0, atOnce: 0, monthsWaiting: 0, lapsed: 0 });
    this.served = { Pack: nobody(), Pads: nobody() };
    this.units = [
      ...Array.from({ length: 1 }, (): Unit => ({ item: PACK, from: start, expiry: null })),
      ...Array.from({ length: 3 }, (): Unit => ({ item: PADS, from: start, expiry: start + 500 })),
    ];
    this.uses = [];
    this.devices = this.truth.devices.map(({ name }, i) => {
      const days = this.truth.usesOf(i, start - Math.round(LOG_YEARS * DAYS_PER_YEAR), end);
      this.log.push(...days.filter((day) => day < start).map((day) => ({ day, device: name })));
      this.uses.push(new Set(days.filter((day) => day >= start)));
      const since = start - Math.round(DAYS_PER_YEAR * (0.2 + HISTORY_YEARS * random.uniform()));
      const pads = { expiry: start + SWAP_BEFORE_DAYS + Math.floor(700 * random.uniform()), lacks: false };
      return { pack: this.packsUntilNow(i, since), pads };
    });
  }

  /** Plays a device's packs from their first day to the start: each was replaced on the day on which it ended. */
  private packsUntilNow(device: number, since: Day): Held["pack"] {
    for (let n = 0, from = since; ; n++) {
      const { daysOfLife, because } = this.truth.packOf(device, n);
      const end = from + daysOfLife;
      for (let day = from; day < Math.min(end, this.start); day++) this.test(device, n, from, day);
      if (end >= this.start) return { serial: this.serialOf(device, n), n, from, lacksSince: null };
      this.retire(device, n, from, end, because);
      from = end;
    }
  }

  private serialOf(device: number, n: number): string {
    return `${this.truth.devices[device]!.name}-${n}`;
  }

  private retire(device: number, n: number, from: Day, retired: Day, retiredBecause: PackRow["retiredBecause"]): void {
    const facts = { item: PACK, device: this.truth.devices[device]!.name, inService: from, retired, retiredBecause };
    this.gone.push(pack(this.serialOf(device, n), facts));
  }

  /** Tests a pack, if it is the day. */
  private test(device: number, n: number, from: Day, day: Day): void {
    if (day % 365 !== TEST_DAY) return;
    const random = seededRandom(seedFromText(`test ${this.seed} ${device} ${n} ${day}`));
    const capacity =
      this.truth.packOf(device, n).path((day - from) / DAYS_PER_YEAR) + this.truth.noise * random.normal();
    this.tests.push(runtimeTest(this.serialOf(device, n), day, { percent: 100 * capacity }));
  }

  /** Puts on their way the units of an order. */
  arrive(item: ItemName, quantity: number, from: Day): void {
    for (let i = 0; i < quantity; i++) this.units.push({ item, from, expiry: expiryOf(item, from) });
  }

  /** Plays one day. */
  play(day: Day): void {
    this.units = this.units.filter((unit) => {
      const lapsed = unit.expiry !== null && unit.expiry - LEAST_LIFE_DAYS < day;
      if (lapsed) this.served[unit.item].lapsed++;
      return !lapsed;
    });
    this.devices.forEach((held, i) => {
      this.playPack(held, i, day);
      this.playPads(held, i, day);
    });
  }

  private playPack(held: Held, device: number, day: Day): void {
    const { pack: fitted } = held;
    const { daysOfLife, because } = this.truth.packOf(device, fitted.n);
    const ended = day >= fitted.from + daysOfLife;
    if (!ended) this.test(device, fitted.n, fitted.from, day);
    const old = this.rule.fourYearly && day >= fitted.from + FOUR_YEARS && this.onShelf(PACK, day) !== null;
    if (!ended && !old) return;
    const first = fitted.lacksSince === null;
    if (this.serve(PACK, day, first)) {
      const reason = !ended ? "policy" : because;
      this.retire(device, fitted.n, fitted.from, fitted.lacksSince ?? day, reason);
      held.pack = { serial: this.serialOf(device, fitted.n + 1), n: fitted.n + 1, from: day, lacksSince: null };
    } else fitted.lacksSince ??= day;
  }

  private playPads(held: Held, device: number, day: Day): void {
    const { pads } = held;
    if (this.uses[device]!.has(day)) this.log.push({ day, device: this.truth.devices[device]!.name });
    const due = pads.lacks || this.uses[device]!.has(day) || day >= pads.expiry - SWAP_BEFORE_DAYS;
    if (!due) return;
    const unit = this.serve(PADS, day, !pads.lacks);
    held.pads = unit ? { expiry: unit.expiry!, lacks: false } : { ...pads, lacks: true };
  }

  /** The unit on the shelf that expires first. */
  private onShelf(item: ItemName, day: Day): Unit | null {
    let best: Unit | null = null;
    for (const unit of this.units) {
      if (unit.item !== item || unit.from > day) continue;
      if (best === null || (unit.expiry ?? 0) < (best.expiry ?? 0)) best = unit;
    }
    return best;
  }

  /** Takes a unit for a need, which is counted when it first arises; null where there is none. */
  private serve(item: ItemName, day: Day, first: boolean): Unit | null {
    const served = this.served[item];
    if (first) {
      served.needed++;
      this.needs.push({ item, day });
    }
    const found = this.onShelf(item, day);
    const unit = found ?? (this.rule.endless ? { item, from: day, expiry: expiryOf(item, day) } : null);
    if (unit === null) {
      if (this.waitedIn[item] !== monthOfDay(day)) served.monthsWaiting++;
      this.waitedIn[item] = monthOfDay(day);
      return null;
    }
    if (first) served.atOnce++;
    if (found !== null) this.units.splice(this.units.indexOf(found), 1);
    return unit;
  }

  /** Units of an item on the shelf or on their way, less the needs that wait. */
  there(item: ItemName): number {
    const waiting = this.devices.filter(({ pack: fitted, pads }) =>
      item === PACK ? fitted.lacksSince !== null : pads.lacks,
    );
    return this.units.filter((unit) => unit.item === item).length - waiting.length;
  }

  /** Worth of the stock on the shelf at the list price, cents. */
  worthOnShelf(day: Day): number {
    return this.units.filter(({ from }) => from <= day).reduce((sum, { item }) => sum + PRICE[item], 0);
  }

  /** Worth of all units bought and not yet fitted, cents. */
  worthLeft(): number {
    return this.units.reduce((sum, { item }) => sum + PRICE[item], 0);
  }

  /** The sheets as they stand on the morning of a day. */
  sheets(asOf: Day): Fleet {
    const names = this.truth.devices.map(({ name }) => name);
    const shelf = this.units.filter(({ from }) => from <= asOf);
    return fleetWith({
      devices: this.truth.devices.map(({ name, duty }) => device(name, { duty })),
      packs: [
        ...this.gone,
        ...this.devices.map(({ pack: { serial, from } }, i) =>
          pack(serial, { item: PACK, device: names[i]!, inService: from }),
        ),
        ...shelf.filter(({ item }) => item === PACK).map((_, i) => pack(`spare-${i}`, { item: PACK })),
      ],
      runtimeTests: [...this.tests, ...this.failedTests()],
      datedStock: [
        // a used pad whose successor is waited for stands in the sheet as one that may not be used
        ...this.devices.map(({ pads }, i) =>
          stock(PADS, isoFromDay(pads.expiry), names[i]!, pads.lacks ? { held: "used or expired" } : {}),
        ),
        ...shelf.filter(({ item }) => item === PADS).map(({ expiry }) => stock(PADS, isoFromDay(expiry!), "Store")),
      ],
      useLog: this.log.map(({ day, device: place }) => use(isoFromDay(day), PADS, place)),
      onOrder: this.units
        .filter(({ from }) => from > asOf)
        .map(({ item, from, expiry }) => ordered(item, 1, { arrives: from, expiry })),
      catalogue: ITEMS.map((item) => FACTS[item]),
      suppliers: [SUPPLIER],
    });
  }

  /** Packs that have ended and wait for their successors have failed their last test. */
  private failedTests(): RuntimeTestRow[] {
    return this.devices.flatMap(({ pack: { serial, lacksSince } }) =>
      lacksSince === null ? [] : [runtimeTest(serial, lacksSince, { result: "fail" })],
    );
  }
}

function expiryOf(item: ItemName, arrives: Day): Day | null {
  return item === PACK ? null : lastDayOfMonth(monthOfDay(arrives) + PADS_ARRIVE_WITH_MONTHS);
}
