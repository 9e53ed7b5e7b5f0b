import { riseShare } from "./curve.ts";
import { type PackEvidence, wearAt } from "./evidence.ts";
import { LOG_LIVES } from "./life-grid.ts";
import type { NodeTables } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";

/** Share of readings that are spoilt (a wrong load, a test cut short), and how much wider they scatter. */
const SPOILT_SHARE = 0.03;
const SPOILT_SCATTER = 5;

/**
 * Trust in each reading of a pack, from how far it lies from the pack's fitted curve: the chance that it is a
 * good reading, plus what a spoilt one is still worth. A two-part normal mixture's weight, averaged over curves.
 *
 * @param evidence  with trust as used for the fit; replaced by the new trust
 */
export function updateTrust(evidence: PackEvidence, tables: readonly NodeTables[]): void {
  const n = evidence.years.length;
  const deviation = new Float64Array(n);
  const posterior = emptyPosterior();
  for (const table of tables) {
    const { curve, slowPowers, slow, knee } = table;
    packPosterior(evidence, table, posterior);
    for (let j = 0; j < n; j++) {
      const s = wearAt({ years: evidence.years[j]!, useYears: evidence.useYears[j]! }, curve.useShare);
      const logWear = Math.log(s);
      const powers = slowPowers.map((power) => Math.exp(power * logWear));
      const k = Math.exp(curve.kneePower * logWear);
      const r = riseShare(s, curve.earlyYears);
      let residual = evidence.capacity[j]!;
      for (let i = 0; i < posterior.count; i++) {
        const node = posterior.nodes[i]!;
        const expected =
          posterior.startMean[i]! +
          r * posterior.riseMean[i]! -
          slow[node]! * powers[Math.floor(node / LOG_LIVES.length)]! -
          knee[node]! * k;
        residual -= posterior.chance[i]! * expected;
      }
      deviation[j] = deviation[j]! + residual / curve.noise / tables.length;
    }
  }
  for (let j = 0; j < n; j++) evidence.trust[j] = trustAt(deviation[j]!);
}

/** Trust in a reading that lies z standard deviations off: near 1 up to 3, near 1/25 beyond 4. */
function trustAt(z: number): number {
  const good = (1 - SPOILT_SHARE) * Math.exp(-0.5 * z * z);
  const spoilt = (SPOILT_SHARE / SPOILT_SCATTER) * Math.exp((-0.5 * z * z) / SPOILT_SCATTER ** 2);
  const chanceGood = good / (good + spoilt);
  return chanceGood + (1 - chanceGood) / SPOILT_SCATTER ** 2;
}
