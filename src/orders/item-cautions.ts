import { groupBy } from "../fleet/group-by.ts";

/** What had to be assumed of an item, as the rest of a sentence that begins with its name, or with those of several. */
export interface ItemCaution {
  item: string;
  one: string;
  many: string;
}

/** Names told before the rest is counted. */
const TOLD = 8;

/** One sentence for each thing assumed, with all the items of which it was. */
export function cautionsTold(cautions: readonly ItemCaution[]): string[] {
  return [...groupBy(cautions, ({ one }) => one).values()].map((alike) => {
    const [{ item, one, many }] = alike as [ItemCaution, ...ItemCaution[]];
    if (alike.length === 1) return `${item} ${one}`;
    const names = alike.slice(0, TOLD).map((caution) => caution.item);
    const more = alike.length - names.length;
    const last = more > 0 ? `${more} more` : names.pop()!;
    return `${names.join(", ")} and ${last} ${many}`;
  });
}
