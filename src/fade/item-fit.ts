import { posteriorDraws } from "../maths/posterior-draws.ts";
import { curveFromCoordinates } from "./curve.ts";
import type { PackEvidence } from "./evidence.ts";
import type { ItemPrior } from "./item-prior.ts";
import { emptyTables, type NodeTables, nodeTables } from "./node-tables.ts";
import { packLogLikelihood } from "./pack-posterior.ts";
import { PRIORS } from "./priors.ts";
import { updateTrust } from "./reading-trust.ts";
import type { TimeStretch } from "./time-stretch.ts";

/** Equally likely curves that stand behind every forecast of an item. */
export const DRAWS = 200;

/** Packs of an item that speak in the fit of the shared curve; every pack speaks in its own forecast. */
const PACKS_AT_MOST = 120;

const SEED = 20_260_704;

/** An item's posterior: equally likely curves, and the model error around them. Draw d stands on curve d % curves. */
export interface ItemFit {
  tables: NodeTables[];
  stretch: TimeStretch;
}

/**
 * Equally likely shared curves of an item, given its packs' evidence, as coordinates.
 *
 * @param packs  in an order that does not hang on the order of rows; the trust of their readings is set
 * @param looks  times that one pack's likelihood may be worked out, about
 */
export function fitCurves(packs: readonly PackEvidence[], prior: ItemPrior, looks = EFFORT): Float64Array[] {
  const speaking = packs.filter((pack) => pack.years.length + pack.bounds.length > 0);
  const heard = spreadOut(speaking, PACKS_AT_MOST);
  if (heard.length > 0) {
    const rough = drawCoordinates(heard, prior, {
      points: 40,
      draws: 12,
      stepsPerTempering: 2,
      lastSteps: 4,
      seed: SEED,
    });
    const tables = rough.map((x) => nodeTables(curveFromCoordinates(x)));
    for (const pack of speaking) updateTrust(pack, tables);
  }
  return drawCoordinates(heard, prior, { ...search(heard.length, looks), draws: DRAWS, seed: SEED + 1 });
}

/** Times that one pack's likelihood is worked out for a fit, if it has the fleet for itself: some seconds of one processor. */
const EFFORT = 2_000_000;
/** What an item of many is given at the least. */
const EFFORT_AT_LEAST = 400_000;
/** Items that are given as much each as one alone. */
const FEW_ITEMS = 3;
const USUAL_TEMPERINGS = 14;

/** How often each item's fit may look at a pack in a fleet of so many items. */
export function looksForItems(items: number): number {
  return Math.max(EFFORT_AT_LEAST, Math.min(EFFORT, (FEW_ITEMS * EFFORT) / items));
}

/** How to search: the fewer packs, the wider the posterior, and the more points and steps a look allows for. */
function search(packs: number, effort: number) {
  const looks = effort / 2 / Math.max(1, packs);
  const within = (low: number, high: number, value: number) => Math.max(low, Math.min(high, Math.round(value)));
  const points = within(100, 400, looks / USUAL_TEMPERINGS / 4);
  return {
    points,
    stepsPerTempering: within(2, 8, looks / points / USUAL_TEMPERINGS),
    lastSteps: within(8, 40, looks / DRAWS),
  };
}

function drawCoordinates(
  packs: readonly PackEvidence[],
  prior: ItemPrior,
  settings: Parameters<typeof posteriorDraws>[2],
): Float64Array[] {
  const coordinates = (z: Float64Array) => z.map((value, d) => prior.mean[d]! + prior.deviation[d]! * value);
  const room = emptyTables();
  const logLikelihood = (z: Float64Array) => {
    const tables = nodeTables(curveFromCoordinates(coordinates(z)), room);
    let sum = 0;
    for (const pack of packs) sum += packLogLikelihood(pack, tables);
    return Number.isFinite(sum) ? sum : -1e300;
  };
  return posteriorDraws(PRIORS.length, logLikelihood, settings).map(coordinates);
}

/** At most `count` of the list, evenly spread over it. */
function spreadOut<T>(list: readonly T[], count: number): T[] {
  if (list.length <= count) return [...list];
  return Array.from({ length: count }, (_, i) => list[Math.floor(((i + 0.5) * list.length) / count)]!);
}
