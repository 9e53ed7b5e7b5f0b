import { DRAWS } from "../fade/item-fit.ts";
import { KeptPosteriors } from "../fade/posteriors-by-curve.ts";
import { nameKey } from "../fleet/name-key.ts";
import { unnamedCautions, withNamedItems } from "../fleet/named-items.ts";
import type { Policy } from "../fleet/policy.ts";
import { type Remembered, rememberStages } from "../fleet/policy-reads.ts";
import type { Fleet } from "../fleet/rows.ts";
import { thresholdInForce } from "../fleet/threshold-in-force.ts";
import { averageChances } from "./chance-dates.ts";
import { addDueByDraw } from "./due-by-draw.ts";
import { fadeCautions } from "./fade-cautions.ts";
import { failureCautions } from "./failure-cautions.ts";
import { declineOf, type ItemLife, type ItemLives, newPackOf } from "./item-life.ts";
import { leftOutFindings } from "./left-out-findings.ts";
import { newPackChances } from "./new-pack.ts";
import { noForecastCautions } from "./no-forecast-cautions.ts";
import { type PackCase, packLife } from "./pack-life.ts";
import { readingFindings, swapFindings } from "./reading-findings.ts";
import { type ServingPack, servingPacks } from "./serving-packs.ts";
import { type SiblingFacts, siblingFacts } from "./sibling-facts.ts";
import { earlySigns } from "./signs/early-signs.ts";
import { failureRecord } from "./survival-by-year.ts";
import { withoutOldPacks } from "./swapped-packs.ts";
import type { LifeForecast, PackLife } from "./types.ts";

/**
 * Forecasts the life of every pack: the earliest of fade, sudden failure and whatever limits policy and catalogue set.
 *
 * @param again  of whoever forecasts again and again: what earlier forecasts found that hangs on no end of life
 */
export function forecastPacks(sheets: Fleet, policy: Policy, again?: Remembered): LifeForecast {
  const remember = again ?? rememberStages();
  const { asOf, horizonMonths: months } = policy;
  const { fleet, swaps } = withoutOldPacks(withNamedItems(sheets), asOf);
  const { items, packs, stock } = remember("serving packs", [fleet], policy, (choices) => servingPacks(fleet, choices));
  const siblings = siblingsOf(fleet, policy);
  const kept = again?.("posteriors", [items], policy, () => new KeptPosteriors()) ?? null;
  const cases: PackCase[] = [];
  const lives: PackLife[] = [];
  for (const serving of packs) {
    const one = packCase(serving, items, siblings(serving.life), policy, kept);
    cases.push(one);
    // at once, as both rest on the pack's posterior
    lives.push(packLife(one, policy));
  }
  return {
    months,
    draws: DRAWS,
    packs: lives,
    stock,
    addDueByDraw(indices, into, everyDraw) {
      const some = indices.map((index) => cases[index]!);
      addDueByDraw(some, policy, into, everyDraw);
    },
    newPackDueByDraw: (item, into) => newPackChances(newPackOf(items.of(item), policy), policy, months, into),
    fadeGroups: [...items.fadingItems, ...items.primaryItems].map((item) => item.group),
    suddenFailures: risksOf(cases, items).map(({ item, risk, watched }) => failureRecord(item, risk, watched)),
    earlySigns: earlySigns(items.fadingItems, fleet, lives),
    findings: [...swapFindings(swaps), ...readingFindings(items.fadingItems), ...leftOutFindings(items.testsNotUsed)],
    cautions: [
      ...unnamedCautions(sheets),
      ...noForecastCautions(lives),
      ...fadeCautions(items.fadingItems, thresholdInForce(fleet)),
      ...failureCautions(risksOf(cases, items)),
    ],
  };
}

/** What became of a pack's siblings from a capacity on. */
type SiblingsFrom = (capacity: number) => SiblingFacts | null;

/** What became of an item's packs, by item. */
function siblingsOf(fleet: Fleet, { endOfLifePercent }: Policy): (life: ItemLife) => SiblingsFrom {
  const known = new Map<ItemLife, SiblingsFrom>();
  return (life) => {
    const found =
      known.get(life) ?? siblingFacts(life.fade?.packs ?? [], endOfLifePercent / 100, thresholdInForce(fleet));
    known.set(life, found);
    return found;
  };
}

function packCase(
  serving: ServingPack,
  items: ItemLives,
  siblings: SiblingsFrom,
  policy: Policy,
  kept: KeptPosteriors | null,
): PackCase {
  const { pack, life, readings, lastDoubted, lasting, failedOn, limit } = serving;
  const decline = declineOf(pack, life, items, policy, kept);
  const last = life.fade === null || lastDoubted ? null : (readings.at(-1) ?? null);
  return {
    ...serving,
    primary: life.limits.kind === "primary",
    siblings: last === null ? null : siblings(last.capacity),
    decline,
    end: { fade: decline === null ? null : averageChances(decline), lasting, failedOn, limit },
  };
}

/** The risks of the items of packs in service, by name. */
function risksOf(cases: readonly PackCase[], items: ItemLives) {
  const names = new Map(cases.filter(({ pack }) => pack.item !== null).map(({ item }) => [nameKey(item), item]));
  return [...names.keys()].sort().map((key) => {
    const { risk, watched } = items.of(key);
    return { item: names.get(key)!, risk, watched };
  });
}
