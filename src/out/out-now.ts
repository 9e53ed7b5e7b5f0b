import { counted } from "./count-text.ts";
import type { Plan } from "./plan-schema.ts";

/** Names told before the rest is counted. */
const TOLD = 8;

/** What should not be in service today: units past expiry and packs whose failed test stands, as sentences. */
export function outNow(plan: Plan): string[] {
  return [...pastExpiry(plan), ...failedPacks(plan)];
}

/** Units past expiry, as one sentence or none; a unit is good to the end of its expiry day. */
export function pastExpiry(plan: Pick<Plan, "asOf" | "datedStock">): string[] {
  const rows = plan.datedStock.filter((row) => row.expiry < plan.asOf && row.quantity > 0);
  const units = rows.reduce((sum, row) => sum + row.quantity, 0);
  const told = rows.map(({ item, place, expiry }) => `${item} at ${place ?? "no named place"} (${expiry})`);
  return rows.length === 0
    ? []
    : [`${counted(units, "dated unit is", "dated units are")} past expiry: ${listTold(told)}.`];
}

function failedPacks(plan: Plan): string[] {
  const failed = plan.packs.filter((pack) => pack.replaceBy.because === "failed-test");
  const told = failed.map(({ serial, device, site }) => `${serial} in ${device ?? site ?? "no named place"}`);
  if (failed.length === 0) return [];
  return [`${counted(failed.length, "pack has", "packs have")} failed the last test: ${listTold(told)}.`];
}

/** The first few names, and how many more there are. */
export function listTold(told: readonly string[]): string {
  const more = told.length - TOLD;
  return more > 0 ? `${told.slice(0, TOLD).join(", ")} and ${more} more` : told.join(", ");
}
