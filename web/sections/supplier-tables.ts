import { isPriced, type Plan } from "../../src/index.ts";
import { countColumn, dayColumn } from "../columns.ts";
import { compareNames, moneyWords } from "../format.ts";
import { opening } from "../opening.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { orderTable } from "./order-table.ts";
import { answer } from "./section.ts";

type Order = Plan["orders"][number];

interface Share {
  supplier: string;
  currency: string;
  lines: Order[];
}

/** What goes to each supplier: a line of totals each, and its own lines to open. Currencies are never added up. */
export function supplierTables(plan: Plan): HTMLElement | null {
  const words = say.orders.bySupplier;
  const shares = sharesOf(plan.orders);
  if (shares.length < 2) return null;
  const total = (share: Share) => share.lines.reduce((sum, line) => sum + line.lineCost + line.feeShare, 0);
  const first = (share: Share) => share.lines.map(({ orderBy }) => orderBy).sort()[0]!;
  return answer(
    words.heading,
    table<Share>({
      caption: words.heading,
      rows: shares,
      printed: 60,
      columns: [
        { title: words.heads[0]!, value: ({ supplier }) => supplier },
        dayColumn(words.heads[1]!, first),
        { title: words.heads[2]!, value: ({ lines }) => new Set(lines.map(({ order }) => order)).size, figures: true },
        countColumn(words.heads[3]!, ({ lines }) => lines.length),
        {
          title: words.heads[4]!,
          value: total,
          show: (share) => (share.lines.some(isPriced) ? moneyWords(total(share), share.currency) : null),
          figures: true,
        },
      ],
    }),
    ...shares.map((share) => linesOf(share, plan.asOf)),
  );
}

function linesOf({ supplier, lines }: Share, asOf: string): HTMLElement {
  const title = say.orders.bySupplier.linesOf(supplier, lines.length);
  return opening(title, () => orderTable({ caption: title, asOf, orders: lines }));
}

function sharesOf(orders: readonly Order[]): Share[] {
  const shares = new Map<string, Share>();
  for (const line of orders) {
    const { supplier, currency } = line;
    const key = JSON.stringify([supplier, currency]);
    const share = shares.get(key) ?? { supplier, currency, lines: [] };
    share.lines.push(line);
    shares.set(key, share);
  }
  return [...shares.values()].sort((a, b) => compareNames(a.supplier, b.supplier));
}
