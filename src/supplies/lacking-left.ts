import { counted } from "../fleet/count-text.ts";
import { firstTold } from "../fleet/first-told.ts";
import type { Needing } from "./item-places.ts";

/** Items told before the rest is counted. */
const TOLD = 5;

/** A caution where devices in service lack units that the planner has not bought: nobody else asks for them. */
export function lackingLeft({ items }: Pick<Needing, "items">): string[] {
  const lacking = items.flatMap(({ item, held: { left } }) => {
    const units = left.reduce((sum, one) => sum + one.units, 0);
    return units > 0 ? `${counted(units, "unit")} of ${item.name}` : [];
  });
  if (lacking.length === 0) return [];
  return [
    `By the sheets, devices in service lack ${firstTold(lacking, TOLD)}: neither bought nor counted as short. ` +
      "Add what they hold to the sheets, or set buy_lacking to yes.",
  ];
}
