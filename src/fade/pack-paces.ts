import type { NormalPart } from "../maths/normal-mixture.ts";
import type { PackEvidence } from "./evidence.ts";
import { LOG_LIFE_STEP, LOG_LIVES } from "./life-grid.ts";
import { chanceLonger, type NodeTables } from "./node-tables.ts";
import { emptyPosterior, packPosterior } from "./pack-posterior.ts";

/*
 * A pack's pace is how fast it wears against the middling pack of its item, once age, temperature and cycles are
 * allowed for: the item's median life over the pack's own. Here always as a logarithm.
 */

/** The pace of one pack. */
export interface PackPace {
  /**
   * By curve, by shift: log likelihood of its readings if it is one of many packs that wear faster by that much than
   * the item's; 0 where they don't. Holds until the next pack is told.
   */
  ifFaster: Float64Array[];
  /** Its log pace, its siblings heeded too, averaged over curves. */
  chances: NormalPart[];
}

/** How much faster packs with something in common may wear, as a logarithm: half steps of the life grid, both ways. */
const SHIFT = LOG_LIFE_STEP / 2;
const FARTHEST = 50;
export const SHIFTS = Float64Array.from({ length: 2 * FARTHEST + 1 }, (_, k) => (k - FARTHEST) * SHIFT);

/** A life stands for those half a step of its grid to either side, evenly. */
const WITHIN_LIFE = LOG_LIFE_STEP / Math.sqrt(12);

const room = emptyPosterior();
const byLife = new Float64Array(LOG_LIVES.length);

/** Prepares to tell packs' paces under some curves of their item. */
export function paceTeller(curves: readonly NodeTables[]): (evidence: PackEvidence) => PackPace {
  const masses = curves.map(shiftedMasses);
  const ifFaster = curves.map(() => new Float64Array(SHIFTS.length));
  return (evidence) => {
    const chances: NormalPart[] = [];
    curves.forEach((tables, c) => {
      const said = ifFaster[c]!.fill(0);
      weighLives(evidence, tables).forEach((chance, life) => {
        if (chance === 0) return;
        const mean = tables.curve.logMedianLife - LOG_LIVES[life]!;
        chances.push({ chance: chance / curves.length, mean, deviation: WITHIN_LIFE });
        addLife(chance, masses[c]!.subarray(2 * life), said);
      });
      said.forEach((likelihood, k) => {
        said[k] = Math.log(likelihood);
      });
    });
    return { ifFaster, chances };
  };
}

/** The chance of each of a pack's lives under a curve; holds until it is asked again. */
function weighLives(evidence: PackEvidence, tables: NodeTables): Float64Array {
  packPosterior(evidence, tables, room);
  byLife.fill(0);
  for (let i = 0; i < room.count; i++) {
    const life = room.nodes[i]! % LOG_LIVES.length;
    byLife[life] = byLife[life]! + room.chance[i]!;
  }
  return byLife;
}

/**
 * Adds what one life says of every shift. A shift moves what is believed of a life beforehand, and leaves what readings
 * say of a given life: what they say of the shift is a sum over lives, whatever its form. A mean and a variance would not
 * do: a pack that has hardly worn may be slow or very slow, and one that wears fast may be in a harder use that no sheet
 * names.
 *
 * @param chance  of the life, given the readings, where nothing is shifted
 * @param masses  chance of the life beforehand, by shift
 */
function addLife(chance: number, masses: Float64Array, into: Float64Array): void {
  const likelihood = chance / masses[FARTHEST]!;
  for (let k = 0; k < into.length; k++) into[k] = into[k]! + likelihood * masses[k]!;
}

/** Chance beforehand of the stretch around a life, after a shift: at 2 life + shift, as two half steps make a step. */
function shiftedMasses({ curve }: NodeTables): Float64Array {
  return Float64Array.from({ length: 2 * LOG_LIVES.length + SHIFTS.length - 2 }, (_, at) => {
    const logLife = LOG_LIVES[0]! + (at - FARTHEST) * SHIFT;
    return chanceLonger(curve, logLife - SHIFT) - chanceLonger(curve, logLife + SHIFT);
  });
}
