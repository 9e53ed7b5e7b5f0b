import { isPriced, type Plan } from "../src/index.ts";
import { listWords, moneyWords } from "./format.ts";
import { say } from "./strings.ts";

/** What order lines cost together, with their fees, in each currency; "" where none has a price. */
export function orderCosts(lines: Plan["orders"]): string {
  const currencies = [...new Set(lines.filter(isPriced).map(({ currency }) => currency))].sort();
  const sums = currencies.map((currency) => {
    const own = lines.filter((line) => line.currency === currency);
    const sum = own.reduce((all, { lineCost, feeShare }) => all + lineCost + feeShare, 0);
    return moneyWords(sum, currency, 0);
  });
  return listWords(sums, say.and);
}
