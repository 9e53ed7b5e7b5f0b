import type { Policy } from "../fleet/policy.ts";
import type { ItemCase } from "./item-case.ts";
import type { PlannedLine } from "./order-lines.ts";
import { addToStock, missingThrough, stockToUse, useFirstExpired } from "./supply-spans.ts";
import { unitsBought } from "./units-bought.ts";

/**
 * Units that each of an item's planned order points would buy on one possible future.
 *
 * The rule is the schedule's own: at each order day the needs so far are known, stock has been used first expired,
 * first out, and the order brings supply up to the service-level needs of every span up to the last month that the
 * planned order covers, in whole boxes and not under the minimum order; nothing is bought where that much is there. An
 * order that the plan makes larger or smaller for the sake of a price break or a fee is made no smaller or larger here.
 * An order that leaves at as-of knows nothing more than the plan, and buys what the plan buys.
 *
 * @param needs  units needed by month on this path
 * @returns units by planned line
 */
export function unitsOnPath(of: ItemCase, lines: readonly PlannedLine[], policy: Policy, needs: Int32Array): number[] {
  let stock = stockToUse(of.supply);
  let waiting = 0;
  let month = 0;
  return lines.map(({ line, lot, offer, covers, beyond, orderMonth }) => {
    for (; month <= orderMonth; month++) {
      waiting = useFirstExpired(stock, month, waiting + needs[month]!);
    }
    // an order for a later month can leave before one for an earlier month: needs are known up to the later of the two
    const seen = month - 1;
    // what is used up or lapsed serves no later span
    stock = stock.filter((span) => span.units > 0 && span.to > seen);
    let units = line.quantity;
    if (line.orderBy > policy.asOf) {
      const needsOf = (after: number, through: number) =>
        of.net.needsOf(after, through) + (after === seen ? waiting : 0);
      // an order of which the months covered have begun brings what waits
      const missing = covers.to > seen ? missingThrough(covers.to, seen, stock, needsOf) : waiting;
      const bought = unitsBought(offer, missing);
      if (missing <= 0) units = 0;
      else if (beyond === 0 || bought > units === beyond > 0) units = bought;
    }
    if (units > 0) addToStock(stock, { from: lot.period, to: lot.slot.lastServed, units });
    // what lasts no longer than the month of its order serves what waits in it
    waiting = useFirstExpired(stock, seen, waiting);
    return units;
  });
}
