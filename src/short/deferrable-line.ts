import type { Day } from "../calendar/day.ts";
import type { Policy } from "../fleet/policy.ts";
import type { Fleet } from "../fleet/rows.ts";
import { lotsOfSchedule, offerOfLine } from "../orders/lots-of-schedule.ts";
import type { Offer } from "../orders/offers.ts";
import { lineCostOf } from "../orders/prices.ts";
import type { OrderLine } from "../orders/types.ts";
import type { KeptOrder } from "./kept-order.ts";
import type { ShortModel } from "./short-model.ts";
import type { SupplyMonths } from "./unmet-needs.ts";

/** A line is deferred in steps of this part of its boxes. */
const STEPS = 8;

/** An order line of which some boxes can be put off to the next fiscal year. */
export class DeferrableLine {
  /** Minor units that the year is spared, and device-months short that this brings. */
  saved = 0;
  harm = 0;
  readonly offer: Offer;
  /** The order that it belongs to in the year begun last. */
  order!: KeptOrder;
  private units = 0;
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

  get deferredUnits(): number {
    return this.units;
  }

  /** What is put off counts at once in what the line's order costs. */
  set deferredUnits(units: number) {
    this.order.add(...this.changeTo(this.line.quantity - units));
    this.units = units;
  }

  get keptUnits(): number {
    return this.line.quantity - this.units;
  }

  /** Begins a year from whose budget boxes of an order can go to a day. */
  startYear(to: Day, order: KeptOrder): void {
    this.to = to;
    this.order = order;
    order.add(this.costKeeping(this.keptUnits), 1);
  }

  /** Units to defer next: a step of boxes, fewer where that spares enough; all where less than a minimum order would be left. */
  nextUnits(toSpare: number): number {
    const box = this.offer.unitsPerBox;
    const step = Math.ceil(this.line.boxes / STEPS);
    const most = this.keptUnits / box;
    // what goes must be an order that can be had, too
    let boxes = Math.max(1, Math.ceil((this.offer.minimumUnits - this.units) / box));
    while (boxes < step && this.savesBy(boxes * box) < toSpare) boxes++;
    // a few boxes less can miss a price break and cost more
    while (boxes < most && this.savesBy(boxes * box) <= 0) boxes++;
    const units = Math.min(boxes * box, this.keptUnits);
    return this.keptUnits - units < this.offer.minimumUnits ? this.keptUnits : units;
  }

  /** Minor units that the year is spared by deferring so many more, as the other lines of the order stand. */
  savesBy(units: number): number {
    return this.order.cost - this.order.costWith(...this.changeTo(this.keptUnits - units));
  }

  /** Names what deferring so many more units does to the item's supply: the same for lines that serve the same months. */
  changeBy(units: number): string {
    const [kept, later] = [this.spanFrom(this.line.orderBy, 1), this.spanFrom(this.to!, 1)];
    return [units, kept[0]?.from, kept[0]?.to, later[0]?.from, later[0]?.to].join();
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
    const part = (quantity: number, orderBy: Day): OrderLine => ({
      ...line,
      quantity,
      boxes: quantity / offer.unitsPerBox,
      orderBy,
      arriveBy: orderBy + (line.arriveBy - line.orderBy),
      lineCost: lineCostOf(offer, this.policy, orderBy, quantity),
    });
    const later = part(this.deferredUnits, this.to);
    const parts = this.keptUnits === 0 ? [later] : [part(this.keptUnits, line.orderBy), later];
    return parts.map((one) => this.partOf(one));
  }

  private partOf(line: OrderLine): DeferrableLine {
    return new DeferrableLine(line, this.key, this.fleet, this.policy, this.model);
  }

  /** What the order costs more before its fee, and how many lines more it has, if so many units of this one stay. */
  private changeTo(units: number): [total: number, lines: number] {
    const { keptUnits } = this;
    return [this.costKeeping(units) - this.costKeeping(keptUnits), Number(units > 0) - Number(keptUnits > 0)];
  }

  private costKeeping(units: number): number {
    if (units === this.line.quantity) return this.line.lineCost;
    return units <= 0 ? 0 : lineCostOf(this.offer, this.policy, this.line.orderBy, units);
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
