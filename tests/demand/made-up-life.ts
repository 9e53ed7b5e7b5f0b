import type { PackRow } from "../../src/fleet/rows.ts";
import type { LifeForecast, PackLife } from "../../src/life/types.ts";
import { pack } from "../fleet/make-rows.ts";

/** A pack whose chance of being due by each month's end is given, for each draw. */
export interface MadeUpPack {
  row?: PackRow;
  item: string;
  /** By draw, then month: chance that the pack is due by the month's end. */
  due: number[][];
}

/** A life forecast with given chances: no fade model, all causes `fade`. */
export function madeUpLife(
  months: number,
  packs: readonly MadeUpPack[],
  /** By draw: chance that a new pack is due within m months, m = 0 .. months. */
  newDue: (draw: number, monthsInService: number) => number,
): LifeForecast {
  const draws = packs[0]?.due.length ?? 1;
  const lives = packs.map(({ row, item, due }, index): PackLife => {
    const dueChance = Float64Array.from({ length: months }, (_, m) => due.reduce((sum, d) => sum + d[m]!, 0) / draws);
    const fade = dueChance.map((chance, m) => chance - (m === 0 ? 0 : dueChance[m - 1]!));
    const dates = { p10: null, p50: null, p90: null, kind: "beyond-horizon" as const };
    return {
      pack: row ?? pack(`S${index}`, { item }),
      item,
      site: null,
      basis: "typical",
      readings: 0,
      capacityNow: null,
      path: { p10: [], p50: [], p90: [] },
      belowBy: dates,
      replaceBy: { ...dates, because: null, note: null },
      dueChance,
      causes: { fade, limit: new Float64Array(months), failure: new Float64Array(months) },
      says: "",
    };
  });
  return {
    months,
    draws,
    packs: lives,
    stock: [],
    addDueByDraw(indices, into, everyDraw = 1) {
      for (const index of indices) {
        const { due } = packs[index]!;
        due
          .filter((_, draw) => draw % everyDraw === 0)
          .flat()
          .forEach((chance, i) => {
            into[i] = into[i]! + chance;
          });
      }
    },
    newPackDueByDraw(_, into) {
      for (let i = 0; i < into.length; i++) into[i] = newDue(Math.floor(i / (months + 1)), i % (months + 1));
    },
    fadeGroups: [],
    findings: [],
    suddenFailures: [],
    earlySigns: [],
    cautions: [],
  };
}

/** Chances of a pack that is due for certain in one month. */
export function certainIn(month: number, months: number): number[] {
  return Array.from({ length: months }, (_, m) => (m >= month ? 1 : 0));
}
