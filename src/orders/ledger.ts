import type { Day } from "../calendar/day.ts";
import type { Market } from "./buying-options.ts";
import type { ItemCase } from "./item-case.ts";
import type { Offer } from "./offers.ts";
import type { ItemLots } from "./plan-item.ts";
import { orderFeeOf } from "./prices.ts";

/** What is ordered of one account on one day. */
export interface LedgerDay {
  lines: number;
  total: number;
  /** An offer of the account, for its fee. */
  offer: Offer;
}

/** All items' orders by account and day: what a market shows, and what the fees add up to. */
export class Ledger {
  private readonly byAccount = new Map<string, Map<Day, LedgerDay>>();

  /** Enters an item's lots, or takes them out again. */
  book(of: ItemCase, planned: ItemLots | null, sign: 1 | -1): void {
    for (const lot of planned?.lots ?? []) {
      const { offer } = of.offers[lot.source]!;
      const days = this.daysOf(offer.account);
      const day = days.get(lot.slot.orderBy) ?? { lines: 0, total: 0, offer };
      day.lines += sign;
      day.total += sign * lot.lineCost;
      if (day.lines > 0) days.set(lot.slot.orderBy, day);
      else days.delete(lot.slot.orderBy);
    }
  }

  daysOf(account: string): Map<Day, LedgerDay> {
    let days = this.byAccount.get(account);
    if (!days) {
      days = new Map();
      this.byAccount.set(account, days);
    }
    return days;
  }

  /** All fees, in minor units. */
  fees(): number {
    let sum = 0;
    for (const days of this.byAccount.values()) {
      for (const day of days.values()) sum += orderFeeOf(day.offer, day.total);
    }
    return sum;
  }

  /**
   * The market that the entered orders make.
   *
   * @param opened  an account's day on which an order of at least some total is taken to leave in any case
   * @param closed  an account's day on which none may
   */
  market(opened: (AccountDay & { total: number }) | null = null, closed: AccountDay | null = null): Market {
    return {
      openDays: (account) => {
        const days = [...this.daysOf(account).keys()];
        if (opened?.account === account && !days.includes(opened.day)) days.push(opened.day);
        return days.sort((a, b) => a - b);
      },
      beside: (account, day) => {
        const entered = this.daysOf(account).get(day) ?? { lines: 0, total: 0 };
        if (opened?.account !== account || opened.day !== day) return entered;
        return { lines: entered.lines + 1, total: Math.max(entered.total, opened.total) };
      },
      allows: (account, day) => closed?.account !== account || closed.day !== day,
    };
  }
}

export interface AccountDay {
  account: string;
  day: Day;
}
