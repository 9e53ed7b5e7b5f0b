import type { Plan } from "./plan-schema.ts";

/** The same figure in two plans; null where a plan does not hold it. */
export interface Beside<Value> {
  a: Value;
  b: Value;
}

/** Two plans side by side, format `wanecast.compare/1`. Money in whole minor units, months `YYYY-MM`, dates ISO. */
export interface Comparison {
  format: "wanecast.compare/1";
  engine: string;
  plans: Beside<{ label: string; asOf: string; horizon: Plan["horizon"] }>;
  /** Months that both plans hold; null where there are none. Counts below are over these. */
  months: { from: string; to: string } | null;
  /** What changed between them, in plain sentences. */
  says: string[];
  /** Choices that differ. */
  policy: ({ key: string } & Beside<string | number | null>)[];
  /** Sheets that differ, by file and tab, with the rows used. */
  inputs: ({ file: string; sheet: string | null } & Beside<number | null>)[];
  /** Spend by fiscal year of the order date, with the months of the year that each plan holds; null where a plan has no orders in it. */
  spend: ({ fiscalYear: string; currency: string; months: Beside<number> } & Beside<Spend | null>)[];
  items: ItemBeside[];
  /** Expected devices short with the schedule followed, and with it less what the budget defers; null without a budget. */
  short: Beside<ShortOver & { withinBudget: (ShortOver & { linesPutOff: number }) | null }>;
  /** Packs whose date of replacement moved, the largest moves first. */
  packs: PackMoved[];
  /** Order lines that are new, gone or changed. */
  orders: OrderChanged[];
}

/** Devices short at the months' ends, expected: their sum and the worst month. */
export interface ShortOver {
  deviceMonths: number;
  worst: number;
  worstMonth: string | null;
}

export type Spend = Pick<Plan["budget"][number], "planned" | "p50" | "p80" | "p95">;

export interface ItemBeside {
  item: string;
  /** Expected needs. */
  needed: Beside<number>;
  /** Units and order lines for needs of these months. */
  units: Beside<number>;
  orders: Beside<number>;
  /** Cost of those lines with their share of fees, in one currency; null where it differs. */
  cost: Beside<number> & { currency: string | null };
  /** Dated units listed. */
  stock: Beside<number>;
  /** Of the first line; decimal text; null where it has no known price. */
  unitPrice: Beside<string | null>;
  /** Units of that line, on which its price may hang; 0 where there is none. */
  firstUnits: Beside<number>;
  firstCurrency: Beside<string | null>;
  /** Runtime readings that were used of the item's packs, those that were replaced among them. */
  readings: Beside<number>;
}

export interface PackMoved {
  serial: string;
  item: string;
  replaceBy: Beside<string | null>;
  /** Later is positive; null where one of the dates is not known. */
  daysLater: number | null;
  /** Readings that are in plan b only. */
  newReadings: number;
}

export interface OrderChanged {
  id: string;
  item: string;
  supplier: string;
  change: "new" | "gone" | "changed";
  orderBy: Beside<string | null>;
  quantity: Beside<number | null>;
  /** With the share of the fee; null where no price is known, too. */
  cost: Beside<number | null>;
  currency: string;
}
