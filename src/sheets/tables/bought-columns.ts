import { foldAccents } from "../words/fold.ts";
import type { ColumnView } from "./score-column.ts";

/** What tells of a price that it is a sum, has taxes in it, or is no more asked. */
const OTHER_PRICE = /\b(incl|inkl|ttc|brutto|gross|ext|total|line|old|alt)/i;
/** What is asked before a discount, where what is paid stands beside it. */
const LIST_PRICE = /^(list|listen|catalog(ue)?|rrp)/;
/** What one unit costs, beside the price of several. */
const EACH = /^(each|ea|per (unit|piece|each)|a piece|pro stuck)$/;
const OF_SEVERAL = /\bper \d/;
const NET = /^net(to)?$/;
/** What heads the units on their way to a stock; and an order's number or an article's, whichever the list is of. */
const ON_ORDER = /^(\w+ )?(on order|in bestell|en (commande|pedido))/;
const ORDER_NUMBER = /^(bestell (no|nr)|order code)$/;

/** What heads a count, by one of two counters or once more: "Count 1 (JH)", "Recount", "2. Zählung". */
const COUNT = /^([12]\. )?(re|final )?(count|zahlung|comptage|conteo)(ed)?( [12ab])?( \(|$)/i;

/**
 * The columns of a list of what is bought, with what only their neighbours or numbers tell: of several prices those that
 * are no unit's now are left out, of several counts of what is there each is a copy, numbers under "On order" are how many
 * are, and in a list of orders "Bestell-Nr." beside its article is the order's. "Order" over small numbers beside expiries is
 * how many are wanted.
 */
export function asBought(views: readonly ColumnView[]): ColumnView[] {
  const isPrice = ({ meaning }: ColumnView) => meaning.says.includes("price");
  const isListed = (view: ColumnView) => isPrice(view) && LIST_PRICE.test(view.meaning.words);
  const isNet = ({ meaning }: ColumnView) => NET.test(meaning.words);
  const discounted =
    views.some(isListed) &&
    views.some((view) => isNet(view) || (/\bprice\b/.test(view.meaning.says) && !isListed(view)));
  const isEach = ({ meaning, profile }: ColumnView) => EACH.test(meaning.words) && profile.numbers > 0.5;
  const pricedEach = views.some(isEach) && views.some(({ meaning }) => meaning.says === "price");
  const severalPrices = views.filter(isPrice).length > 1;
  const says = (what: string) => views.some(({ meaning }) => meaning.says === what);
  const numbersOrders =
    says("arrives") && views.some(({ things, meaning }) => things === "item" && !ORDER_NUMBER.test(meaning.words));
  const isCount = ({ name, profile }: ColumnView) => profile.dates === 0 && COUNT.test(foldAccents(name));
  const countedAgain = views.filter(isCount).length > 1;
  const isStock = says("expiry") && !says("arrives");
  const saysOf = (view: ColumnView) => {
    const { meaning, profile, name } = view;
    if (severalPrices && isPrice(view) && OTHER_PRICE.test(name)) return "aside";
    if (severalPrices && isPrice(view) && OF_SEVERAL.test(meaning.words)) return "aside";
    if (pricedEach && (isEach(view) || meaning.says === "price")) return isEach(view) ? "price" : "aside";
    if (discounted && (isListed(view) || isNet(view))) return isNet(view) ? "price" : "aside";
    if (countedAgain && isCount(view)) return "quantity";
    if (isStock && !says("quantity") && meaning.says === "install" && profile.severalEach) return "quantity";
    // how many to order of what is there, and no order's number
    if (isStock && meaning.words === "order" && profile.fewEach) return "aside";
    if (ON_ORDER.test(meaning.words) && (profile.fewEach || profile.filled === 0)) return "outstanding";
    return numbersOrders && ORDER_NUMBER.test(meaning.words) ? "order" : null;
  };
  return views.map((view) => {
    const says = saysOf(view);
    if (says === null) return view;
    const words = /aside|quantity/.test(says) ? "" : view.meaning.words;
    return { ...view, things: "", index: null, meaning: { ...view.meaning, words, things: "", says, coverage: 1 } };
  });
}
