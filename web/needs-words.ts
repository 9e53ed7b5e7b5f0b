import { type Plan, packNeeds } from "../src/index.ts";
import { numberWords } from "./format.ts";
import { say } from "./strings.ts";

const SHOWN = 4;

/**
 * What the fleet is likely to need within the first `months` months, in words: all packs together, then the items
 * with the largest needs, named, and how many there are besides. Each item at its own P50.
 */
export function needsInWords(plan: Plan, months: number): string[] {
  const isOfPacks = packNeeds(plan);
  let packs = 0;
  const others: { item: string; units: number }[] = [];
  for (const demand of plan.demand) {
    const units = demand.cumulative.p50[Math.min(months, demand.cumulative.p50.length) - 1] ?? 0;
    if (isOfPacks(demand)) packs += units;
    else if (units >= 0.5) others.push({ item: demand.item, units });
  }
  others.sort((a, b) => b.units - a.units || a.item.localeCompare(b.item));
  const packCount = Math.round(packs);
  // A single one besides is named as soon as counted.
  const shown = others.length === SHOWN + 1 ? SHOWN + 1 : SHOWN;
  return [
    ...(packCount > 0 ? [say.ahead.packs(numberWords(packCount), packCount === 1)] : []),
    ...others.slice(0, shown).map(({ item, units }, at) => say.ahead.units(Math.round(units), item, at === 0)),
    ...(others.length > shown ? [say.ahead.fewer(others.length - shown)] : []),
  ];
}
