import { chanceOfNone, renewalDensity, type SlotInDraw, stepsOf } from "./slot.ts";
import { addCumulants, shapeSlot } from "./slot-sum.ts";

/** Variance, third and fourth cumulant of a span's needs in proportion to their mean. */
export interface Spread {
  variance: number;
  third: number;
  fourth: number;
}

/** A slot in one draw: needs of its span are worked out when asked for. */
interface Row {
  slot: SlotInDraw;
  density: Float64Array;
  /** Needs expected before each month. */
  before: Float64Array;
}

/**
 * How widely the needs of many slots spread within a draw, in proportion to their mean: measured on some slots and draws,
 * since it varies little between them.
 */
export class SpanSpread {
  private readonly rows: Row[] = [];
  private readonly known = new Map<number, Spread>();

  constructor(private readonly months: number) {}

  /** Takes a slot's chances in one draw; both arrays are copied. */
  add(due: Float64Array, newDue: Float64Array, end: number): void {
    const density = new Float64Array(this.months);
    const slot = {
      due: due.slice(),
      at: 0,
      newDue: newDue.slice(),
      newSteps: stepsOf(newDue, newDue.length),
      newAt: 0,
      end,
    };
    renewalDensity(slot, this.months, density);
    const before = new Float64Array(this.months + 1);
    for (let month = 0; month < this.months; month++) before[month + 1] = before[month]! + density[month]!;
    this.rows.push({ slot, density, before });
  }

  /** For the months after+1 .. through. */
  perNeed(after: number, through: number): Spread {
    const key = (after + 1) * this.months + through;
    const known = this.known.get(key);
    if (known) return known;
    const sum = { mean: 0, variance: 0, third: 0, fourth: 0 };
    const shape = { low: 0, chanceLow: 1, chanceHigh: 0 };
    for (const { slot, density, before } of this.rows) {
      const last = Math.min(through, slot.end - 1);
      if (last <= after) continue;
      const mean = before[last + 1]! - before[after + 1]!;
      shapeSlot(chanceOfNone(slot, density, after, last), mean, shape);
      addCumulants(shape, sum);
    }
    const { mean, variance, third, fourth } = sum;
    const spread =
      mean > 0
        ? { variance: variance / mean, third: third / mean, fourth: fourth / mean }
        : { variance: 0, third: 0, fourth: 0 };
    this.known.set(key, spread);
    return spread;
  }
}
