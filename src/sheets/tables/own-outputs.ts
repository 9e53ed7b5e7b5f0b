import type { Cell } from "../grid.ts";

/** Lists that this program writes for people, each by columns that no sheet of a fleet has together. */
const OWN_OUTPUTS: readonly { columns: readonly string[]; says: string }[] = [
  {
    columns: ["order_by", "line_cost", "covers_from"],
    says: "the schedule of orders: what to order, not what was ordered",
  },
  { columns: ["orders", "lines", "line_cost", "fee_share"], says: "the totals of the schedule of orders" },
  { columns: ["serial", "replace_by_early", "fades_by_early"], says: "the forecast of the packs" },
  { columns: ["swap_by", "chance_used"], says: "the list of dated stock with its swap dates" },
  { columns: ["what", "swap_by", "file", "line"], says: "a list of what a lot or serial touches" },
];

/** What a table is that this program wrote itself and that says nothing new of the fleet; null for any other table. */
export function ownOutput(header: readonly Cell[]): string | null {
  return OWN_OUTPUTS.find(({ columns }) => columns.every((name) => header.includes(name)))?.says ?? null;
}
