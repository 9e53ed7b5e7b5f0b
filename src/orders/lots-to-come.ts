import { monthOfDay } from "../calendar/month.ts";
import type { ComingLot } from "../demand/fitted-lives.ts";
import type { ItemDemand } from "../demand/types.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { offerOfLine } from "./lots-of-schedule.ts";
import { needDay } from "./order-slots.ts";
import type { OrderLine, OrderSchedule } from "./types.ts";

/**
 * What is bought of items of which units lie on a shelf before they are fitted, and lapse within the horizon after it: an
 * order for many months, safety stock, or a supplier that takes orders seldom has them lose life. What is there when it is
 * needed is as new as needs take it for.
 *
 * @returns by item key
 */
export function lotsToCome(
  { orders }: OrderSchedule,
  demand: readonly ItemDemand[],
  fleet: Fleet,
  policy: Policy,
): Map<string, ComingLot[]> {
  const first = monthOfDay(policy.asOf);
  const means = new Map(demand.map((one) => [one.item, one.mean]));
  // safety days are no waiting: new units count from the month of the need
  const arrives = ({ late, arriveBy }: OrderLine) => (late ? arriveBy : arriveBy + policy.orderBeforeNeedDays);
  const waits = (line: OrderLine) => {
    const { lifeMonths, leavesByExpiry } = offerOfLine(line, fleet, policy);
    if (lifeMonths === null || !leavesByExpiry) return false;
    const arrival = monthOfDay(arrives(line));
    const needed = means.get(line.item)![line.covers.from - first]!;
    const isEarly = arrival < line.covers.from || line.quantity > needed + 1 / 2;
    return isEarly && arrival + lifeMonths < first + policy.horizonMonths;
  };
  const waiting = [...groupBy(orders, ({ item }) => item)].filter(([, lines]) => lines.some(waits));
  return new Map(
    waiting.map(([item, lines]) => [
      nameKey(item),
      lines.map((line) => ({
        quantity: line.quantity,
        from: needDay(policy, first, line.covers.from - first),
        arrives: arrives(line),
      })),
    ]),
  );
}
