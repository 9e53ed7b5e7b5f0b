import { type PackEvidence, wearAt } from "./evidence.ts";
import { type NodeTables, powersRoom } from "./node-tables.ts";
import { emptyPosterior, levelOf, type PackPosterior, packPosterior } from "./pack-posterior.ts";
import { KNEE, powersOf, RISE, SLOW } from "./wear-powers.ts";

const room = emptyPosterior();
const powersHere = powersRoom();

/**
 * The capacity that a pack's curve gives at its own readings, averaged over what is unsure of it.
 *
 * @param evidence  the pack's readings, each heard as far as it is trusted
 * @param tables    equally likely curves of its item
 * @returns one capacity a reading, fraction of rated, averaged over curves
 */
export function expectedCapacities(evidence: PackEvidence, tables: readonly NodeTables[]): Float64Array {
  const expected = new Float64Array(evidence.years.length);
  for (const table of tables) {
    packPosterior(evidence, table, room);
    for (let j = 0; j < expected.length; j++) {
      expected[j] = expected[j]! + meanCapacity(room, table, evidence, j) / tables.length;
    }
  }
  return expected;
}

/** Mean capacity at one of a pack's readings, given a curve and the pack's posterior under it. */
export function meanCapacity(
  posterior: PackPosterior,
  { curve, powers, slow, knee }: NodeTables,
  { years, useYears }: PackEvidence,
  reading: number,
): number {
  const s = wearAt({ years: years[reading]!, useYears: useYears[reading]! }, curve.useShare);
  powersOf(powers, s, powersHere);
  const r = powersHere[RISE]!;
  const k = powersHere[KNEE]!;
  let mean = 0;
  for (let i = 0; i < posterior.count; i++) {
    const node = posterior.nodes[i]!;
    const start = posterior.startMean[i]! + r * posterior.riseMean[i]!;
    const loss = slow[node]! * powersHere[SLOW + levelOf(node)]! + knee[node]! * k;
    mean += posterior.chance[i]! * (start - loss);
  }
  return mean;
}
