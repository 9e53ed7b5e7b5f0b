import type { Policy } from "../fleet/policy.ts";
import type { ItemCase } from "./item-case.ts";
import type { ItemCaution } from "./item-cautions.ts";
import type { PlannedLine } from "./order-lines.ts";
import { needDay } from "./order-slots.ts";

const LAPSES =
  "what arrives lapses before it can be fitted. Check min_life_days, order_before_need_days and the months of life it has.";

/**
 * A caution where the policy's margins leave nothing of the life with which an item arrives.
 *
 * @param lines  the item's, null where no order can meet its needs: only so short a life stands in the way
 */
export function orderedInVain(of: ItemCase, lines: readonly PlannedLine[] | null, policy: Policy): ItemCaution | null {
  const told = (said: string) => ({ item: of.item, one: `${said}: ${LAPSES}`, many: `${said}: ${LAPSES}` });
  if (lines === null) return told("cannot be ordered at all");
  const inVain = ({ line, lot: { slot }, covers }: PlannedLine) =>
    slot.usableUntil !== null &&
    slot.usableUntil < Math.max(line.arriveBy, needDay(policy, of.demand.from, covers.from));
  return lines.some(inVain) ? told("can only be ordered in vain for some months") : null;
}
