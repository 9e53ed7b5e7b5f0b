import type { Offer } from "../orders/offers.ts";
import { orderFeeOf } from "../orders/prices.ts";

/** What a fiscal year pays for an order of which some is put off: its fee stays until its last line is gone. */
export class KeptOrder {
  /** Minor units, and lines of which something stays. */
  private total = 0;
  private lines = 0;

  constructor(private readonly offer: Offer) {}

  /** Lines and fee, in minor units. */
  get cost(): number {
    return this.costWith(0, 0);
  }

  /** The same with so much more, or less. */
  costWith(total: number, lines: number): number {
    const sum = this.total + total;
    return this.lines + lines > 0 ? sum + orderFeeOf(this.offer, sum) : 0;
  }

  add(total: number, lines: number): void {
    this.total += total;
    this.lines += lines;
  }
}
