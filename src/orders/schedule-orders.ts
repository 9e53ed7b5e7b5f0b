import type { ItemDemand } from "../demand/types.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { itemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import type { PackLife } from "../life/types.ts";
import type { UsableLot } from "../supplies/types.ts";
import { budgetYears, type ScheduledItem } from "./budget.ts";
import { itemCase } from "./collect-case.ts";
import { cautionsTold, type ItemCaution } from "./item-cautions.ts";
import { linesOfItem, shareFees } from "./order-lines.ts";
import { orderTogether } from "./order-together.ts";
import { orderedInVain } from "./ordered-in-vain.ts";
import { standInGround } from "./stand-ins.ts";
import type { OrderSchedule } from "./types.ts";

/**
 * The procurement schedule: for every item the cheapest orders such that stock, what is on order and what is bought
 * cover every span of months at the service level, and each order leaves early enough to arrive before its need.
 *
 * Items of one supplier share its fee where that saves money.
 *
 * @param packs  packs in service with their lives: some may stand in until a late order arrives
 */
export function scheduleOrders(
  fleet: Fleet,
  policy: Policy,
  demand: ItemDemand[],
  lots: UsableLot[],
  packs: readonly PackLife[] = [],
): OrderSchedule {
  const cautions: string[] = [];
  const assumed: ItemCaution[] = [];
  const book = itemBook(
    fleet,
    demand.map((one) => one.item),
  );
  const ground = standInGround(fleet, policy, book, packs);
  const byName = [...demand].sort((a, b) => (nameKey(a.item) < nameKey(b.item) ? -1 : 1));
  const found = byName.map((one) => itemCase(one, lots, ground));
  const planned = orderTogether(found.map((one) => one.itemCase));
  const items: ScheduledItem[] = found.map((one, index) => {
    const of = one.itemCase;
    const lotsOfItem = planned[index] ?? null;
    const lines = lotsOfItem === null ? null : linesOfItem(of, lotsOfItem, policy);
    if (lines?.length) assumed.push(...one.cautions);
    const inVain = orderedInVain(of, lines, policy);
    if (inVain) assumed.push(inVain);
    return { of, lines: lines ?? [] };
  });
  cautions.push(...cautionsTold(assumed));
  const all = items.flatMap((item) => item.lines);
  shareFees(all);
  const orders = all.map(({ line }) => line).sort((a, b) => a.orderBy - b.orderBy || (a.id < b.id ? -1 : 1));
  if (orders.some((line) => line.currency === NO_CURRENCY && line.lineCost > 0)) {
    cautions.push(
      `No currency is named for some items: their amounts stand without one (under ${NO_CURRENCY} in plan.json). Name it in the price list or the policy.`,
    );
  }
  return { orders, budget: budgetYears(items, policy), cautions };
}
