import type { Day } from "../calendar/day.ts";
import type { Month } from "../calendar/month.ts";

/** One line of the procurement schedule. Money is whole minor units of `currency`. */
export interface OrderLine {
  /** Stable across re-plans: supplier, item and the first month covered. */
  id: string;
  /** Groups the lines of one supplier and order date. */
  order: string;
  orderBy: Day;
  /** Expected arrival. */
  arriveBy: Day;
  /** True where the order-by date had already passed at as-of. */
  late: boolean;
  /** Where late: the last day before the order can arrive on which something may be uncovered. */
  uncoveredUntil: Day | null;
  supplier: string;
  item: string;
  /** Trade item number by which the supplier knows the item, null where the catalogue has none. */
  gtin: string | null;
  /** Units. */
  quantity: number;
  boxes: number;
  /** Decimal text, major units. */
  unitPrice: string;
  lineCost: number;
  feeShare: number;
  currency: string;
  covers: { from: Month; to: Month };
  /** Plain sentence. */
  reason: string;
  /** Units that cannot be needed before they lapse (forced by a minimum order or a box). */
  expectedWaste: number;
}

/** Spend of one fiscal year, by order date; integer minor units. */
export interface BudgetYear {
  fiscalYear: string;
  currency: string;
  planned: number;
  p50: number;
  p80: number;
  p95: number;
  byItem: { item: string; planned: number; p50: number; p80: number; p95: number }[];
}

/** The procurement schedule. */
export interface OrderSchedule {
  orders: OrderLine[];
  budget: BudgetYear[];
  cautions: string[];
}
