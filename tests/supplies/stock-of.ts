import { itemBook } from "../../src/fleet/item-book.ts";
import type { Policy } from "../../src/fleet/policy.ts";
import { type DatedStockRow, emptyFleet } from "../../src/fleet/rows.ts";
import { whoTakes } from "../../src/fleet/who-takes.ts";
import { StockUnits } from "../../src/supplies/stock-units.ts";

/** Rows of dated stock of a fleet without devices, each with the same chance that its units are used before. */
export function stockOf(datedStock: DatedStockRow[], policy: Policy, chanceUsed: number): StockUnits {
  const fleet = { ...emptyFleet(), datedStock };
  const book = itemBook(fleet);
  const units = new StockUnits(fleet, book, whoTakes(fleet, book, policy.asOf), policy);
  units.chanceUsed.fill(chanceUsed);
  return units;
}
