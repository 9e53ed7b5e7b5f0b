import { evenlySpread } from "../maths/evenly-spread.ts";
import { posteriorDraws, type SearchSettings } from "../maths/posterior-draws.ts";
import { seededRandom } from "../maths/random.ts";
import { shuffled } from "../maths/shuffled.ts";
import { curveFromCoordinates } from "./curve.ts";
import { type PackEvidence, speaks } from "./evidence.ts";
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
 * @returns from the shortest median life to the longest
 */
export function fitCurves(packs: readonly PackEvidence[], prior: ItemPrior): Float64Array[] {
  const speaking = packs.filter(speaks);
  const heard = evenlySpread(speaking, PACKS_AT_MOST);
  if (heard.length > 0) {
    const curves = speaking.length > PACKS_AT_MOST ? ROUGH_CURVES_OF_MANY : ROUGH_CURVES;
    const rough = evenlySpread(drawCoordinates(heard, prior, ROUGHLY), curves);
    const tables = rough.map((x) => nodeTables(curveFromCoordinates(x)));
    for (const pack of speaking) updateTrust(pack, tables);
  }
  const drawn = drawCoordinates(heard, prior, { ...search(heard.length), seed: SEED + 1 });
  // many are drawn, and those kept lie evenly over what matters most: fewer stand for the whole
  return evenlySpread(
    drawn.sort((a, b) => a[LIFE]! - b[LIFE]!),
    DRAWS,
  );
}

const LIFE = PRIORS.findIndex(({ name }) => name === "medianLifeYears");

/** A first search, enough to see which readings lie far off. */
const ROUGHLY = { points: 40, stepsPerHearing: 2, lastSteps: 4, keptSteps: 1, seed: SEED };
const ROUGH_CURVES = 12;
/** The curves of many packs lie close together, beside the noise of a reading. */
const ROUGH_CURVES_OF_MANY = 4;

/**
 * Times that one pack's likelihood is worked out for a fit, about, half a second of one processor: where that allows for
 * no fewer points than the least and no more than the most. The most packs take up to 700,000.
 */
const LOOKS = 250_000;
/** Times that a search hears more, about. */
const USUAL_HEARINGS = 12;

const STEPS = { stepsPerHearing: 2, lastSteps: 14, keptSteps: 6 } as const;
/** Points of a search: so many that the cloud shows its shape, and no more than its spread is worth. */
const POINTS_AT_LEAST = 150;
const POINTS_AT_MOST = 400;

/** How to search: the fewer packs, the wider the posterior, and the more points a look allows for. */
function search(packs: number) {
  const perPoint = USUAL_HEARINGS * STEPS.stepsPerHearing + STEPS.lastSteps;
  const points = Math.round(LOOKS / Math.max(1, packs) / perPoint);
  return { ...STEPS, points: Math.max(POINTS_AT_LEAST, Math.min(POINTS_AT_MOST, points)) };
}

function drawCoordinates(packs: readonly PackEvidence[], prior: ItemPrior, settings: SearchSettings): Float64Array[] {
  const coordinates = (z: Float64Array) => z.map((value, d) => prior.mean[d]! + prior.deviation[d]! * value);
  const order = shuffled(packs.length, seededRandom(SEED));
  const room = emptyTables();
  const logs = new Float64Array(packs.length);
  const logsOf = (z: Float64Array, from: number, to: number) => {
    const tables = nodeTables(curveFromCoordinates(coordinates(z)), room);
    for (let i = from; i < to; i++) {
      const log = packLogLikelihood(packs[order[i]!]!, tables);
      logs[i] = Number.isFinite(log) ? log : IMPOSSIBLE;
    }
    return logs.slice(from, to);
  };
  return posteriorDraws(PRIORS.length, { parts: packs.length, logsOf }, settings).map(coordinates);
}

/** Log likelihood of what can't be. */
const IMPOSSIBLE = -1e100;
