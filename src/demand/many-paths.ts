import { drawnCount } from "./drawn-count.ts";

/** Slots that need nothing from one month on, summed. Index of `due` = draw * months + month. */
export interface SlotGroup {
  end: number;
  /** Slots whose first need has come by the month's end, expected. */
  due: Float64Array;
}

/**
 * How first needs of slots hang together, by month, in proportion to their mean: slots have chances of their own, which
 * makes their sum spread less than a Poisson count, and a slot that came early does not come again.
 */
export class FirstNeeds {
  private readonly due: Float64Array;
  private readonly dueSquares: Float64Array;
  private readonly steps: Float64Array;
  private readonly stepSquares: Float64Array;
  private readonly dueTimesStep: Float64Array;

  constructor(months: number) {
    this.due = new Float64Array(months);
    this.dueSquares = new Float64Array(months);
    this.steps = new Float64Array(months);
    this.stepSquares = new Float64Array(months);
    this.dueTimesStep = new Float64Array(months);
  }

  /** Takes a slot's chances in one draw. */
  add(chances: Float64Array): void {
    let before = 0;
    for (let month = 0; month < chances.length; month++) {
      const step = chances[month]! - before;
      this.due[month]! += before;
      this.dueSquares[month]! += before * before;
      this.steps[month]! += step;
      this.stepSquares[month]! += step * step;
      this.dueTimesStep[month]! += before * step;
      before = chances[month]!;
    }
  }

  /**
   * Mean and variance of a month's first needs where `excess` more than expected came before it.
   *
   * @param due   expected before the month
   * @param step  expected in it
   */
  given(excess: number, due: number, step: number, month: number): { mean: number; variance: number } {
    const share = (squares: Float64Array, sums: Float64Array) =>
      sums[month]! > 0 ? squares[month]! / sums[month]! : 0;
    const dueVariance = due * (1 - share(this.dueSquares, this.due));
    const covariance = -step * share(this.dueTimesStep, this.steps);
    const slope = dueVariance > 1e-9 ? covariance / dueVariance : 0;
    const variance = step * (1 - share(this.stepSquares, this.steps)) - slope * covariance;
    return { mean: step + slope * excess, variance };
  }
}

/** A new pack by months in service: its chance of being due, the steps of that, and the first month with any. */
export interface NewPackLife {
  due: Float64Array;
  steps: Float64Array;
  shortest: number;
}

/** Slots that need nothing from one month on, in one draw. */
interface GroupInDraw {
  group: SlotGroup;
  /** Offset of the draw's first month in the group's `due`. */
  at: number;
  first: FirstNeeds;
  life: NewPackLife;
}

/**
 * Adds one future of many slots to `into`: month by month a count of first needs and one of renewals, each drawn with the
 * mean and variance that it has given the months before.
 */
export function addManyPath(
  { group: { end, due }, at, first, life }: GroupInDraw,
  random: () => number,
  into: Int32Array,
): void {
  const needs = new Int32Array(end);
  let came = 0;
  let renewed = 0;
  for (let month = 0; month < end; month++) {
    const before = month === 0 ? 0 : due[at + month - 1]!;
    const firsts = first.given(came - before, before, due[at + month]! - before, month);
    const count = drawnCount(firsts.mean, firsts.variance, random());
    came += count;
    const renewals = renewalsGiven(renewed, needs, month, life);
    const again = renewals.mean > 0 ? drawnCount(renewals.mean, renewals.variance, random()) : 0;
    renewed += again;
    needs[month] = count + again;
    into[month] = into[month]! + count + again;
  }
}

/** Mean and variance of a month's renewals, given the packs that entered before it and the renewals that have come. */
function renewalsGiven(
  renewed: number,
  entered: Int32Array,
  month: number,
  { due, steps, shortest }: NewPackLife,
): { mean: number; variance: number } {
  let mean = 0;
  let variance = 0;
  let dueBefore = 0;
  let dueVariance = 0;
  let covariance = 0;
  for (let age = shortest; age <= month; age++) {
    const packs = entered[month - age]!;
    if (packs === 0) continue;
    const step = steps[age]!;
    const before = due[age - 1]!;
    mean += packs * step;
    variance += packs * step * (1 - step);
    dueBefore += packs * before;
    dueVariance += packs * before * (1 - before);
    covariance -= packs * before * step;
  }
  if (dueVariance < 1e-9) return { mean, variance };
  const slope = covariance / dueVariance;
  return { mean: mean + slope * (renewed - dueBefore), variance: variance - slope * covariance };
}
