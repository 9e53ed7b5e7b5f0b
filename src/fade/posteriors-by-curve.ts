import type { PackEvidence } from "./evidence.ts";
import type { StartSpread } from "./level-form.ts";
import type { NodeTables } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";

/** A pack's posterior under each curve of its item, as far as a forecast heeds it. No threshold enters. */
export interface PosteriorsByCurve {
  /** HEAD_PLACES a curve. */
  heads: Float64Array;
  /** The nodes, curve after curve. */
  nodes: Uint16Array;
  /** NODE_PLACES a node: its chance, and the mean start capacity and early rise given the node. */
  numbers: Float64Array;
}

/** What is told of a curve: where its nodes begin and end, and the spread. */
const HEAD_PLACES = 5;
export const NODE_PLACES = 3;

/** Chance below which a node is left out of a pack's forecast: together those of the far tails come to a thousandth. */
const NODE_WORTH_COUNTING = 1e-4;

const posterior = emptyPosterior();
const room: PosteriorsByCurve & { evidence: PackEvidence | null; tables: readonly NodeTables[] } = {
  heads: new Float64Array(0),
  nodes: new Uint16Array(0),
  numbers: new Float64Array(0),
  evidence: null,
  tables: [],
};

/** A pack's posteriors, to be read before those of another are asked for: they share their room. */
export function posteriorsByCurve(evidence: PackEvidence, tables: readonly NodeTables[]): PosteriorsByCurve {
  if (room.evidence === evidence && room.tables === tables) return room;
  room.evidence = null;
  const most = tables.length * posterior.nodes.length;
  if (room.nodes.length < most) {
    room.heads = new Float64Array(tables.length * HEAD_PLACES);
    room.nodes = new Uint16Array(most);
    room.numbers = new Float64Array(most * NODE_PLACES);
  }
  const { heads, nodes, numbers } = room;
  let at = 0;
  for (let c = 0; c < tables.length; c++) {
    packPosterior(evidence, tables[c]!, posterior);
    const { count, chance, startMean, riseMean, spread } = posterior;
    const head = c * HEAD_PLACES;
    heads[head] = at;
    for (let i = 0; i < count; i++) {
      if (chance[i]! < NODE_WORTH_COUNTING) continue;
      nodes[at] = posterior.nodes[i]!;
      numbers[at * NODE_PLACES] = chance[i]!;
      numbers[at * NODE_PLACES + 1] = startMean[i]!;
      numbers[at * NODE_PLACES + 2] = riseMean[i]!;
      at++;
    }
    heads[head + 1] = at;
    heads[head + 2] = spread.startVariance;
    heads[head + 3] = spread.covariance;
    heads[head + 4] = spread.riseVariance;
  }
  room.evidence = evidence;
  room.tables = tables;
  return room;
}

/** What is told of one curve, in a room of the caller's. */
export interface CurveHead extends Omit<StartSpread, "base"> {
  from: number;
  end: number;
}

export function emptyHead(): CurveHead {
  return { from: 0, end: 0, startVariance: 0, covariance: 0, riseVariance: 0 };
}

export function headOf({ heads }: PosteriorsByCurve, curve: number, into: CurveHead): void {
  const at = curve * HEAD_PLACES;
  into.from = heads[at]!;
  into.end = heads[at + 1]!;
  into.startVariance = heads[at + 2]!;
  into.covariance = heads[at + 3]!;
  into.riseVariance = heads[at + 4]!;
}

/** Bytes kept at the most: some 5,000 packs of items that have many. */
const BYTES_AT_MOST = 100e6;

/** Posteriors of a fleet's packs, kept for whoever forecasts them again at another threshold. */
export class KeptPosteriors {
  private readonly kept = new Map<PackEvidence, PosteriorsByCurve>();
  private bytes = 0;

  /** A pack's posteriors under its item's curves; where the room is full they are worked out each time. */
  of(evidence: PackEvidence, tables: readonly NodeTables[]): PosteriorsByCurve {
    const found = this.kept.get(evidence);
    if (found) return found;
    const laid = posteriorsByCurve(evidence, tables);
    if (this.bytes >= BYTES_AT_MOST) return laid;
    const used = laid.heads[tables.length * HEAD_PLACES - HEAD_PLACES + 1]!;
    const made = {
      heads: laid.heads.slice(0, tables.length * HEAD_PLACES),
      nodes: laid.nodes.slice(0, used),
      numbers: laid.numbers.slice(0, used * NODE_PLACES),
    };
    this.bytes += made.heads.byteLength + made.nodes.byteLength + made.numbers.byteLength;
    this.kept.set(evidence, made);
    return made;
  }
}
