import type { Day } from "../calendar/day.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { lotsOfSchedule, offerOfLine } from "../orders/lots-of-schedule.ts";
import type { Offer } from "../orders/offers.ts";
import { lineCostOf } from "../orders/prices.ts";
import type { OrderLine } from "../orders/types.ts";
import type { ShortModel } from "./short-model.ts";
import type { SupplyMonths } from "./unmet-needs.ts";

/** A line is deferred in steps of this part of its boxes. */
const STEPS = 8;

/** A line with its share of the fee, in minor units. */
export function costOf(line: OrderLine): number {
  return line.lineCost + line.feeShare;
}

/** An order line of which some boxes can be put off to the next fiscal year. */
export class DeferrableLine {
  deferredUnits = 0;
  /** Minor units that the year is spared, and device-months short that this brings, so far. */
  saved = 0;
  harm = 0;
  private readonly offer: Offer;
  private to: Day | null = null;
  private readonly spanOn = new Map<Day, SupplyMonths | null>();

  constructor(
    readonly line: OrderLine,
    /** Key of the item that it serves. */
    readonly key: string,
    private readonly fleet: Fleet,
    private readonly policy: Policy,
    private readonly model: ShortModel,
  ) {
    this.offer = offerOfLine(line, fleet, policy);
  }

  get keptUnits(): number {
    return this.line.quantity - this.deferredUnits;
  }

  /** Begins a year from whose budget boxes can go to a day. */
  startYear(to: Day): void {
    this.to = to;
  }

  /** Units to defer next: a step of boxes, fewer where that spares enough, all where less than a minimum order is left. */
  nextUnits(toSpare: number): number {
    const box = this.offer.unitsPerBox;
    const step = Math.ceil(this.line.boxes / STEPS);
    const most = this.keptUnits / box;
    let boxes = 1;
    while (boxes < step && this.savesBy(boxes * box) < toSpare) boxes++;
    // a few boxes less can miss a price break and cost more
    while (boxes < most && this.savesBy(boxes * box) <= 0) boxes++;
    const units = Math.min(boxes * box, this.keptUnits);
    return this.keptUnits - units < this.offer.minimumUnits ? this.keptUnits : units;
  }

  /** Minor units that the year is spared by deferring so many more. */
  savesBy(units: number): number {
    return this.costKeeping(this.keptUnits) - this.costKeeping(this.keptUnits - units);
  }

  /** Names what deferring so many more units does to the item's supply: the same for lines that serve the same months. */
  changeBy(units: number): string {
    const [kept, later] = [this.spanFrom(this.line.orderBy, 1), this.spanFrom(this.to!, 1)];
    return [units, kept[0]?.from, kept[0]?.to, later[0]?.from, later[0]?.to].join();
  }

  defer(units: number, harm: number, saved: number): void {
    this.deferredUnits += units;
    this.harm += harm;
    this.saved += saved;
  }

  /** The months that what is kept and what is deferred can serve. */
  spans(): SupplyMonths[] {
    const kept = this.spanFrom(this.line.orderBy, this.keptUnits);
    return this.to === null ? kept : [...kept, ...this.spanFrom(this.to, this.deferredUnits)];
  }

  /** What is kept and what is deferred, as lines of their own. */
  split(): DeferrableLine[] {
    if (this.to === null || this.deferredUnits === 0) return [this.partOf(this.line)];
    const { line, offer } = this;
    const part = (quantity: number, orderBy: Day, feeShare: number): OrderLine => ({
      ...line,
      quantity,
      boxes: quantity / offer.unitsPerBox,
      orderBy,
      arriveBy: orderBy + (line.arriveBy - line.orderBy),
      lineCost: lineCostOf(offer, this.policy, orderBy, quantity),
      feeShare,
    });
    const later = part(this.deferredUnits, this.to, this.keptUnits === 0 ? line.feeShare : 0);
    const parts = this.keptUnits === 0 ? [later] : [part(this.keptUnits, line.orderBy, line.feeShare), later];
    return parts.map((one) => this.partOf(one));
  }

  private partOf(line: OrderLine): DeferrableLine {
    return new DeferrableLine(line, this.key, this.fleet, this.policy, this.model);
  }

  private costKeeping(units: number): number {
    if (units === this.line.quantity) return costOf(this.line);
    return units <= 0 ? 0 : lineCostOf(this.offer, this.policy, this.line.orderBy, units) + this.line.feeShare;
  }

  private spanFrom(orderBy: Day, units: number): SupplyMonths[] {
    if (units <= 0) return [];
    let span = this.spanOn.get(orderBy);
    if (span === undefined) {
      const arriveBy = orderBy + (this.line.arriveBy - this.line.orderBy);
      const lots = lotsOfSchedule([{ ...this.line, orderBy, arriveBy }], this.fleet, this.policy);
      span = this.model.spans(lots)[0] ?? null;
      this.spanOn.set(orderBy, span);
    }
    return span === null ? [] : [{ ...span, units }];
  }
}
