import type { Day } from "../calendar/day.ts";
import type { Basis, CapacityBand, DateBand, FadeGroup, ForecastKind } from "../fade/types.ts";
import type { Finding } from "../fleet/finding.ts";
import type { PackRow } from "../fleet/rows.ts";
import type { FailureRecord } from "./survival-by-year.ts";

/** What ends a pack's life. `age`, `cycles`, `use-by` and `service-life` are limits set by policy or catalogue. */
export type EndCause = "fade" | "failed-test" | "held" | "failure" | "age" | "cycles" | "use-by" | "service-life";

/** Cause as demand counts it. */
export type PackCause = "fade" | "limit" | "failure";

/** The life of one pack in service (its end is a need). Month arrays start at as-of's month. */
export interface PackLife {
  pack: PackRow;
  item: string;
  /** The site of the pack, else of its device. */
  site: string | null;
  basis: Basis;
  /** Capacity readings used. */
  readings: number;
  capacityNow: CapacityBand | null;
  /** Capacity at each month's end, as a fraction of rated; empty where there is no fade forecast. */
  path: { p10: number[]; p50: number[]; p90: number[] };
  /** Fade alone. */
  belowBy: DateBand & { kind: ForecastKind };
  /** Any cause. */
  replaceBy: DateBand & { kind: ForecastKind; because: EndCause | null; note: string | null };
  /** Chance that the pack is due from any cause by each month's end, non-decreasing, averaged over draws. */
  dueChance: Float64Array;
  /** Expected first replacements falling in each month, split by cause; the three add up to dueChance's steps. */
  causes: Record<PackCause, Float64Array>;
  /** One plain sentence with the forecast's figures. */
  says: string;
}

/** What wears faster than its like, beyond what age, cycles and temperature explain. */
export interface EarlySign {
  /** `batch`: packs made (or, where that is unknown, put in service) in one month. */
  kind: "pack" | "site" | "duty" | "batch";
  item: string;
  /** Serial, site, duty, or month (`YYYY-MM`). */
  name: string;
  /** Packs whose readings speak, retired ones among them. */
  packs: number;
  /** How many times as fast it wears: a pack as the middling one of its item, a group as the item's other packs. */
  timesAsFast: { p10: number; p50: number; p90: number };
  /** The least that is worth a word, and the chance that it wears at least so many times as fast. */
  atLeast: number;
  chance: number;
  /**
   * Of its packs in service: how many there are, and how many are expected to fall due within twelve months, or within
   * the plan where it is shorter.
   */
  inService: number;
  dueWithinYear: number;
  /** One plain sentence. */
  says: string;
}

/** A pack on the shelf, and the day on which it is due, there or once it is fitted; null where none is known. */
export interface StockPack {
  pack: PackRow;
  due: Day | null;
}

/**
 * Forecast lives of all packs. Uncertainty that packs share (an item's curve, the model's error) is carried
 * by `draws` equally likely draws: given a draw, packs are independent.
 */
export interface LifeForecast {
  months: number;
  draws: number;
  packs: PackLife[];
  /** Shelf stock: no device, in_service, cycles or tests. Until it is fitted, its end is no need. */
  stock: StockPack[];
  /**
   * Adds to `into` (length draws * months, draw-major) the chances that packs of one item, by index into `packs`, are
   * due from any cause by each month's end, given the draw: summed over the packs. Of draws 0, `everyDraw` and so on
   * alone where that is said.
   */
  addDueByDraw(indices: readonly number[], into: Float64Array, everyDraw?: number): void;
  /**
   * Fills `into` (length draws * (months + 1), draw-major) with the chance that a new pack of the item is due
   * within m months of entering service, m = 0..months, given the draw. Entry m = 0 is 0.
   */
  newPackDueByDraw(item: string, into: Float64Array): void;
  fadeGroups: FadeGroup[];
  /** One record an item with packs in service, by name. */
  suddenFailures: FailureRecord[];
  earlySigns: EarlySign[];
  /** What in the sheets the forecast hardly heeds. */
  findings: Finding[];
  cautions: string[];
}
