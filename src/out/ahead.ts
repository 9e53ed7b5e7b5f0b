import { counted } from "../fleet/count-text.ts";
import { firstYearEnd, planMonth } from "./horizon-text.ts";
import { knowsNothing } from "./knows-nothing.ts";
import { packNeeds } from "./pack-needs.ts";
import type { Plan } from "./plan-schema.ts";

const NOTHING_KNOWN =
  "Nothing can be forecast: no battery pack with a date, no device with dated units and no use of supplies could be read from the sheets. That is no all-clear.";

/**
 * What lies ahead in a sentence or two that can be read out: what the first year will need at P50 (the sum
 * of the items' own), what is late and which order leaves next.
 */
export function aheadText(plan: Plan): string {
  if (knowsNothing(plan)) return NOTHING_KNOWN;
  const last = firstYearEnd(plan);
  const isOfPacks = packNeeds(plan);
  let packs = 0;
  let units = 0;
  for (const row of plan.demand) {
    const likely = row.cumulative.p50[last] ?? 0;
    if (isOfPacks(row)) packs += likely;
    else units += likely;
  }
  const needs = [
    ...(packs > 0 ? [counted(packs, "pack")] : []),
    ...(units > 0 ? [`${counted(units, "unit")} of supplies`] : []),
  ].join(" and ");
  const nothing = plan.orders.length > 0 ? "nothing; the orders are to be safe" : "nothing";
  return `By the end of ${planMonth(plan, last)} you will likely need ${needs || nothing}. ${ordersAhead(plan)}`;
}

function ordersAhead(plan: Plan): string {
  if (plan.orders.length === 0) return "Nothing has to be ordered.";
  const late = plan.orders.filter((line) => line.late);
  const next = plan.orders.find((line) => !line.late);
  const sentences: string[] = [];
  if (late.length > 0) {
    sentences.push(`${counted(late.length, "order line is", "order lines are")} late and should leave now.`);
  }
  if (next !== undefined) {
    const which = late.length > 0 ? "The next order" : "The first order";
    sentences.push(`${which} must leave by ${next.orderBy}.`);
  }
  return sentences.join(" ");
}
