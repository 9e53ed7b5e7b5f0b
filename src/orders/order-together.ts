import { buyingOptions, type Market } from "./buying-options.ts";
import type { ItemCase } from "./item-case.ts";
import { type AccountDay, Ledger } from "./ledger.ts";
import { type ItemLots, lotsForNeeds, planItemLots } from "./plan-item.ts";

// States of lot sizings gone through while looking for orders to share: bounds the time of big fleets.
const MOST_EFFORT = 8_000_000;
// Items of a supplier that are tried as the one that fills an order up to free_over.
const MOST_FILLERS = 4;
// A saving below a hundredth of a minor unit is rounding.
const LEAST_SAVING = 0.01;

/**
 * Plans all items with the fees they can share: the orders of a supplier on one day pay one fee, or none from
 * `free_over` on.
 *
 * Each item's lots are exact for given orders of the others. Starting from items on their own, the items are sized again
 * in turn, each beside the others' orders, until nothing changes; then whole order days are tried: one is closed, or
 * one opened for every item of the supplier, the items are sized again, and what saves money is kept. A heuristic: its
 * gap to the optimum is measured in the tests.
 *
 * @returns lots by case, null where no order can meet an item's needs
 */
export function orderTogether(cases: readonly ItemCase[]): (ItemLots | null)[] {
  const search = new Search(cases);
  search.start();
  search.settle(cases.map((_, index) => index));
  search.tryDays();
  search.coverSpans();
  return search.plans;
}

/** Something to try: a day on which an order is taken to leave, and one on which none may. */
interface Move {
  opened: (AccountDay & { total: number }) | null;
  closed: AccountDay | null;
}

class Search {
  plans: (ItemLots | null)[] = [];
  private readonly ledger = new Ledger();
  private effort = 0;
  /** Effort at which to stop: every account has an equal share, and of what others leave over. */
  private allowed = MOST_EFFORT;
  private readonly byAccount = new Map<string, number[]>();
  private readonly freeOver = new Map<string, number>();

  constructor(private readonly cases: readonly ItemCase[]) {
    cases.forEach((one, index) => {
      for (const { offer } of one.offers) {
        if (offer.fee === 0) continue;
        if (offer.freeOver !== null) this.freeOver.set(offer.account, offer.freeOver);
        this.byAccount.set(offer.account, [...(this.byAccount.get(offer.account) ?? []), index]);
      }
    });
  }

  /** Every item on its own, for every span of its needs. */
  start(): void {
    const alone = this.ledger.market();
    this.plans = this.cases.map((one) => planItemLots(one.net, buyingOptions(one, alone)));
    this.cases.forEach((one, index) => {
      this.ledger.book(one, this.plans[index]!, 1);
    });
  }

  /** Sizes the items again in turn, each beside the others' orders, until nothing changes. */
  settle(items: readonly number[]): void {
    let unchanged = 0;
    for (let turn = 0; unchanged < items.length && this.effort < this.allowed; turn++) {
      const index = items[turn % items.length]!;
      unchanged = this.resize(index, () => this.ledger.market(), false) ? 0 : unchanged + 1;
    }
  }

  /** Closes, opens and shifts order days of accounts that several items can be had of, while that saves money. */
  tryDays(): void {
    const bought = (index: number) => (this.plans[index]?.lots.length ?? 0) > 0;
    const accounts = [...this.byAccount]
      .map(([account, items]) => [account, items.filter(bought)] as const)
      .filter(([, items]) => items.length > 1)
      .sort(([a], [b]) => (a < b ? -1 : 1));
    let left = accounts.length;
    for (const [account, items] of accounts) {
      this.allowed = this.effort + (MOST_EFFORT - this.effort) / left--;
      let saved = true;
      while (saved && this.effort < this.allowed) {
        saved = false;
        const days = this.daysOf(account, items);
        days.forEach((day, at) => {
          for (const move of this.movesOn({ account, day }, [days[at - 1], days[at + 1]])) {
            saved = this.tryMove(items, move) || saved;
          }
        });
      }
    }
  }

  /** Sizes each item once more for every span, since sharing orders changes what lapses when. */
  coverSpans(): void {
    this.cases.forEach((one, index) => {
      const before = this.plans[index];
      if (!before) return;
      this.ledger.book(one, before, -1);
      const options = buyingOptions(one, this.ledger.market());
      this.plans[index] = planItemLots(one.net, options, before.cumulativeNeed) ?? before;
      this.ledger.book(one, this.plans[index]!, 1);
    });
  }

  /** A day in use is closed, shifted to a day beside it or filled up to `free_over`; any other is opened. */
  private movesOn(here: AccountDay, beside: readonly (number | undefined)[]): Move[] {
    const used = this.ledger.daysOf(here.account);
    const free = this.freeOver.get(here.account) ?? null;
    const fill = free === null ? [] : [{ opened: { ...here, total: free }, closed: null }];
    if (!used.has(here.day)) return [{ opened: { ...here, total: 0 }, closed: null }, ...fill];
    const shifts = beside.flatMap((day) =>
      day === undefined ? [] : [{ opened: { ...here, day, total: 0 }, closed: here }],
    );
    return [{ opened: null, closed: here }, ...shifts, ...fill];
  }

  private daysOf(account: string, items: readonly number[]): number[] {
    const days = new Set<number>();
    for (const index of items) {
      for (const { offer, slots } of this.cases[index]!.offers) {
        if (offer.account === account) for (const slot of slots) if (slot.opens) days.add(slot.orderBy);
      }
    }
    return [...days].sort((a, b) => a - b);
  }

  private tryMove(items: readonly number[], { opened, closed }: Move): boolean {
    if (this.effort > this.allowed) return false;
    const plans = [...this.plans];
    const cost = this.cost();
    const market = () => this.ledger.market(opened, closed);
    let possible = true;
    for (const index of items) possible = possible && this.resize(index, market, true) !== null;
    // what is dearer by a fee and more is past help
    if (possible && this.cost() < cost + this.feeOf(items)) {
      const moved = [...this.plans];
      for (const turns of this.turnsOf(items, opened)) {
        this.restore(moved);
        this.settle(turns);
        if (this.cost() < cost - LEAST_SAVING) return true;
      }
    }
    this.restore(plans);
    return false;
  }

  /** Orders of turns to try: where an order is filled up to `free_over`, whoever goes first does the filling. */
  private turnsOf(items: readonly number[], opened: Move["opened"]): (readonly number[])[] {
    if (opened === null || opened.total === 0) return [items];
    return items.slice(0, MOST_FILLERS).map((first) => [first, ...items.filter((index) => index !== first)]);
  }

  private restore(plans: readonly (ItemLots | null)[]): void {
    plans.forEach((planned, index) => {
      if (planned !== this.plans[index]) this.replace(index, planned);
    });
  }

  /**
   * Sizes one item again in a market of the others' orders.
   *
   * @param always  keep the new lots even where they save nothing by themselves
   * @returns true where its lots changed, null where it cannot be ordered
   */
  private resize(index: number, market: () => Market, always: boolean): boolean | null {
    const one = this.cases[index]!;
    const before = this.plans[index];
    if (!before || before.lots.length === 0) return false;
    const cost = this.cost();
    this.ledger.book(one, before, -1);
    this.effort += before.cumulativeNeed.length * (before.cumulativeNeed.at(-1)! * one.offers.length + 50);
    const after = lotsForNeeds(before.cumulativeNeed, buyingOptions(one, market()));
    this.plans[index] = after ?? before;
    this.ledger.book(one, this.plans[index]!, 1);
    if (after === null) return null;
    if (always || this.cost() < cost - LEAST_SAVING) return true;
    // lots that cost the same would go back and forth
    this.replace(index, before);
    return false;
  }

  private replace(index: number, planned: ItemLots | null): void {
    const one = this.cases[index]!;
    this.ledger.book(one, this.plans[index] ?? null, -1);
    this.plans[index] = planned;
    this.ledger.book(one, planned, 1);
  }

  private feeOf(items: readonly number[]): number {
    return Math.max(...items.flatMap((index) => this.cases[index]!.offers.map(({ offer }) => offer.fee)));
  }

  private cost(): number {
    return this.plans.reduce((sum, planned) => sum + (planned?.ownCost ?? 0), this.ledger.fees());
  }
}
