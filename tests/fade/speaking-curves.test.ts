import { describe, expect, it } from "vitest";
import { curveFromCoordinates, type FleetCurve } from "../../src/fade/curve.ts";
import { chanceAt } from "../../src/fade/grid-chances.ts";
import { fitCurves } from "../../src/fade/item-fit.ts";
import { usualPrior } from "../../src/fade/item-prior.ts";
import { type FadingPack, itemsWithEvidence } from "../../src/fade/items-with-evidence.ts";
import { nodeTables } from "../../src/fade/node-tables.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { speakingCurves } from "../../src/fade/speaking-curves.ts";
import { GRID_SIZE } from "../../src/fade/time-grid.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { evenlySpread } from "../../src/maths/evenly-spread.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { fadingFleet } from "../bench/fading-fleet.ts";

const AS_OF = 20_758;
const THRESHOLD = 0.8;
const OWN = 0.08;

/** An item of an invented fleet with equally likely curves for it, fitted once. */
const items = new Map<number, { packs: FadingPack[]; curves: FleetCurve[] }>();
function itemOf(packs: number) {
  const known = items.get(packs);
  if (known) return known;
  const files = fadingFleet(5 * packs, AS_OF, 3).map(({ name, text }) => ({
    name,
    bytes: new TextEncoder().encode(text),
  }));
  const { fleet } = readSheets(files, { asOf: AS_OF, dateOrder: null });
  const [item] = itemsWithEvidence(fleet, defaultPolicy(AS_OF), () => true).items;
  const heard = item!.packs.map(({ evidence }) => evidence);
  const made = { packs: item!.packs, curves: fitCurves(heard, usualPrior()).map(curveFromCoordinates) };
  items.set(packs, made);
  return made;
}

/** Mean and largest error of a pack's average chance under some curves, over packs and times, against all curves. */
function errorsOf({ packs, curves }: ReturnType<typeof itemOf>, chosen: readonly number[]) {
  const tables = curves.map((curve) => nodeTables(curve));
  const errors = evenlySpread(packs, 37).map(({ evidence, clock }) => {
    const chances = chancesBelow(evidence, wearAhead(clock, AS_OF), { tables }, THRESHOLD, OWN);
    const mean = (of: readonly number[], k: number) =>
      of.reduce((sum, c) => sum + chanceAt(chances, c, k), 0) / of.length;
    const all = curves.map((_, c) => c);
    let worst = 0;
    for (let k = 0; k < GRID_SIZE; k++) worst = Math.max(worst, Math.abs(mean(chosen, k) - mean(all, k)));
    return worst;
  });
  return { mean: errors.reduce((a, b) => a + b, 0) / errors.length, worst: Math.max(...errors) };
}

describe("speakingCurves", () => {
  it.each([
    [30, 100],
    [150, 20],
    [400, 8],
  ])("of %i packs speak for all: %i of them, whose chances are within 0.01 on average", (count, curves) => {
    const item = itemOf(count);
    const chosen = speakingCurves(item.curves, item.packs, AS_OF, THRESHOLD);
    const { mean, worst } = errorsOf(item, chosen);

    expect(chosen).toHaveLength(curves);
    expect(mean).toBeLessThan(0.01);
    expect(worst).toBeLessThan(0.05);
  });

  it("are all of them where packs are few", () => {
    const { packs, curves } = itemOf(30);

    expect(speakingCurves(curves, packs.slice(0, 20), AS_OF, THRESHOLD)).toEqual(curves.map((_, c) => c));
  });

  it("err less than half as much as as many curves evenly spread over the median life", () => {
    const item = itemOf(400);
    const chosen = speakingCurves(item.curves, item.packs, AS_OF, THRESHOLD);
    const byLife = evenlySpread(
      item.curves.map((_, c) => c),
      chosen.length,
    );

    expect(errorsOf(item, chosen).mean).toBeLessThan(0.5 * errorsOf(item, byLife).mean);
  });

  it("are chosen where no pack serves any more, or none has a start", () => {
    const { packs, curves } = itemOf(30);
    const retired = packs.map((one) => ({ ...one, pack: { ...one.pack, retired: AS_OF - 10 } }));
    const unstarted = packs.map((one) => ({ ...one, clock: { ...one.clock, start: null } }));

    expect(speakingCurves(curves, retired, AS_OF, THRESHOLD)).toHaveLength(100);
    expect(speakingCurves(curves, unstarted, AS_OF, THRESHOLD)).toHaveLength(100);
  });
});
