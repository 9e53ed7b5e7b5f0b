import { isoFromDay } from "../src/calendar/day.ts";
import { seededRandom } from "../src/maths/random.ts";
import { day } from "./orders/made-up.ts";

export type SheetRow = Record<string, string>;
/** Rows in canonical columns by kind of sheet, policy among them. */
export type MadeUpSheets = Record<string, SheetRow[]>;

const SITES = ["North", "South", "Depot"];
const DAYS = ["2026-11-01", "2026-01-31", "2028-02-29", "2027-06-15", "2026-12-31"];
const RATED_MINUTES = 200;

/** A small fleet in which anything may be missing, of any age, on order, held, retired or yet to come. */
export function madeUpFleet(seed: number): MadeUpSheets {
  const random = seededRandom(seed);
  const whole = (least: number, most: number) => least + Math.floor(random.uniform() * (most - least + 1));
  const pick = <T>(of: readonly T[]) => of[whole(0, of.length - 1)] as T;
  /** The text with a chance, else nothing. */
  const maybe = (chance: number, text: () => string | number) => (random.uniform() < chance ? String(text()) : "");
  const some = <T>(most: number, make: (index: number) => T) =>
    Array.from({ length: whole(0, most) }, (_, i) => make(i));
  const asOf = day(pick(DAYS));
  const onDay = (from: number, to: number) => isoFromDay(asOf + whole(from, to));
  const devices = Array.from({ length: whole(1, 7) }, (_, i) => ({
    device: `D-${i + 1}`,
    type: pick(["alpha", "beta"]),
    site: pick(SITES),
    duty: pick(["ambulance", "car", ""]),
    in_service: maybe(0.9, () => onDay(-3000, 400)),
    temperature_c: maybe(0.3, () => whole(5, 35)),
    retired: maybe(0.15, () => onDay(-300, 700)),
  }));
  const aDevice = () => pick(devices).device;
  const kinds: [string, string][] = [
    ["pack-a", "pack"],
    ["pack-b", "pack"],
    ["cell", "primary"],
    ["gel", "gel"],
    ["pads", "pads"],
    ["paper", "paper"],
  ];
  const items = kinds.filter(() => random.uniform() < 0.6);
  const packItems = items.filter(([, kind]) => kind === "pack" || kind === "primary");
  const dated = items.filter((item) => !packItems.includes(item)).map(([item]) => item);
  const packs = packItems.flatMap(([item, kind]) =>
    some(8, (i) => {
      const since = whole(-2500, 200);
      const cycles = maybe(0.5, () => whole(0, 600));
      const retired = since < -30 ? maybe(0.12, () => onDay(since + 10, 0)) : "";
      const row = {
        serial: `${item}-${i + 1}`,
        item,
        device: maybe(0.8, aDevice),
        site: maybe(0.2, () => pick(SITES)),
        made: maybe(0.3, () => isoFromDay(asOf + since - whole(0, 300))),
        in_service: maybe(0.85, () => isoFromDay(asOf + since)),
        cycles,
        cycles_on: cycles && maybe(0.5, () => onDay(-200, 0)),
        retired,
        retired_because: retired && maybe(0.7, () => pick(["faded", "failed", "damaged", "lost", "other"])),
        held: maybe(0.05, () => "recall"),
      };
      const tests = some(since < -30 ? 4 : 0, () => {
        const on = whole(since, 0);
        const capacity = 1.02 - (0.05 * (on - since)) / 365 + (random.uniform() - 0.5) * 0.04;
        return {
          serial: row.serial,
          date: isoFromDay(asOf + on),
          minutes: kind === "pack" ? (RATED_MINUTES * capacity).toFixed(0) : "",
          percent: kind === "pack" ? "" : (100 * capacity).toFixed(0),
          result: maybe(0.3, () => pick(["pass", "fail"])),
        };
      });
      return { row, tests };
    }),
  );
  return {
    devices,
    catalogue: items.map(([item, kind]) => {
      const price = whole(10, 5000) / 10;
      return {
        item,
        kind,
        supplier: pick(["Aster", "Birch"]),
        price: maybe(0.9, () => price.toFixed(2)),
        currency: "EUR",
        units_per_box: maybe(0.4, () => whole(1, 20)),
        minimum_order: maybe(0.3, () => whole(1, 30)),
        price_breaks: maybe(
          0.25,
          () => `${whole(5, 10)}:${(price * 0.93).toFixed(2)}; 30:${(price * 0.85).toFixed(2)}`,
        ),
        lead_days: maybe(0.8, () => whole(0, 120)),
        lead_sd_days: maybe(0.3, () => whole(0, 20)),
        shelf_months: maybe(0.4, () => whole(6, 60)),
        service_months: maybe(0.2, () => whole(12, 72)),
        rated_minutes: kind === "pack" ? String(RATED_MINUTES) : "",
        per_device: maybe(0.8, () => whole(1, 3)),
        fits: pick(["alpha", "beta", "alpha; beta", ""]),
      };
    }),
    suppliers: ["Aster", "Birch"].map((supplier) => ({
      supplier,
      order_fee: maybe(0.7, () => (whole(0, 6000) / 100).toFixed(2)),
      free_over: maybe(0.4, () => whole(50, 2000)),
      order_every_months: maybe(0.3, () => pick([1, 2, 3, 6, 12])),
      currency: "EUR",
    })),
    packs: packs.map(({ row }) => row),
    runtime_tests: packs.flatMap(({ tests }) => tests),
    dated_stock: dated.flatMap((item) =>
      some(10, () => ({
        item,
        expiry: onDay(-100, 1300),
        lot: maybe(0.7, () => `L${whole(1, 6)}`),
        quantity: String(whole(1, 6)),
        place: random.uniform() < 0.7 ? aDevice() : pick(SITES),
        held: maybe(0.05, () => "quarantine"),
      })),
    ),
    use_log: dated.flatMap((item) =>
      some(25, () => ({
        date: onDay(-500, -1),
        item,
        quantity: String(whole(1, 3)),
        place: maybe(0.7, aDevice),
        reason: maybe(0.2, () => pick(["used", "expired", "training"])),
      })),
    ),
    on_order: items.flatMap(([item]) =>
      some(1, (i) => ({
        order: `O${i}`,
        item,
        quantity: String(whole(1, 20)),
        supplier: "Aster",
        arrives: onDay(-20, 200),
        expiry: maybe(0.5, () => onDay(100, 1200)),
      })),
    ),
    routine: dated.flatMap((item) =>
      some(1, () => ({
        task: `check of ${item}`,
        per_year: String(whole(1, 365)),
        duty: maybe(0.5, () => "ambulance"),
        item,
        quantity: String(pick([0.01, 0.5, 1, 2])),
      })),
    ),
    policy: [
      { key: "as_of", value: isoFromDay(asOf) },
      { key: "horizon_months", value: String(pick([6, 12, 24, 36])) },
      { key: "fiscal_year_starts", value: String(whole(1, 12)) },
      { key: "service_level", value: String(pick([0.8, 0.95, 0.99])) },
      { key: "spares_percent", value: String(pick([0, 0, 10, 50])) },
      { key: "price_rise_per_year", value: String(pick([0, 0.03, -0.05])) },
      { key: "budget_per_fiscal_year", value: String(whole(0, 8000)) },
      { key: "swap_before_expiry_days", value: String(whole(0, 60)) },
      { key: "order_before_need_days", value: String(whole(0, 60)) },
      { key: "buy_lacking", value: pick(["no", "yes"]) },
    ],
  };
}
