import type { PackEvidence } from "./evidence.ts";
import { meanCapacity } from "./expected-capacity.ts";
import type { NodeTables } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";
import { GIVEN } from "./priors.ts";

const { spoiltShare: SHARE, spoiltScatter: SCATTER } = GIVEN;

const posterior = emptyPosterior();

/**
 * Trust in each reading of a pack, from how far it lies from the pack's fitted curve: the chance that it is a
 * good reading, plus what a spoilt one is still worth. A two-part normal mixture's weight at the deviation averaged over
 * curves, in units of a reading's noise; the curves' own doubt, and that the reading pulls them, are left out.
 *
 * @param evidence  with trust as used for the fit; replaced by the new trust
 */
export function updateTrust(evidence: PackEvidence, tables: readonly NodeTables[]): void {
  const n = evidence.years.length;
  const deviation = new Float64Array(n);
  for (const table of tables) {
    packPosterior(evidence, table, posterior);
    for (let j = 0; j < n; j++) {
      const residual = evidence.capacity[j]! - meanCapacity(posterior, table, evidence, j);
      deviation[j] = deviation[j]! + residual / table.curve.noise / tables.length;
    }
  }
  for (let j = 0; j < n; j++) evidence.trust[j] = trustAt(deviation[j]!);
}

/** Trust in a reading that lies z standard deviations off: 0.96 at 2, 0.7 at 3, 0.11 at 4, about 1/25 from 5 on. */
function trustAt(z: number): number {
  const good = (1 - SHARE) * Math.exp(-0.5 * z * z);
  const spoilt = (SHARE / SCATTER) * Math.exp((-0.5 * z * z) / SCATTER ** 2);
  const chanceGood = good / (good + spoilt);
  return chanceGood + (1 - chanceGood) / SCATTER ** 2;
}
