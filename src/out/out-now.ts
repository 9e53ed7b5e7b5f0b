import { counted, countText } from "../fleet/count-text.ts";
import { firstTold } from "../fleet/first-told.ts";
import { placeText } from "../fleet/place-text.ts";
import type { Plan } from "./plan-schema.ts";

/** Names told before the rest is counted. */
const TOLD = 8;

/**
 * What should not be in service today, as sentences: units past expiry, packs whose failed test stands or that are held;
 * and what must be looked at, since a remark that nobody reads speaks of a fault.
 */
export function outNow(plan: Plan): string[] {
  return [...pastExpiry(plan), ...failedPacks(plan), ...heldPacks(plan), ...remarkedFaults(plan)];
}

/** Remarks that speak of a fault in columns that are not read, one sentence a column. */
export function remarkedFaults({ findings }: Pick<Plan, "findings">): string[] {
  return findings.filter(({ code }) => code === "fault-unread").map(findingInPlace);
}

/** What was found, with its place before it. */
export function findingInPlace({ file, sheet, line, message }: Plan["findings"][number]): string {
  return file === null ? message : `${placeText({ file, sheet, line })}: ${message}`;
}

/** Units past expiry, as one sentence or none; a unit is good to the end of its expiry day. */
export function pastExpiry(plan: Pick<Plan, "asOf" | "datedStock">): string[] {
  const rows = plan.datedStock.filter((row) => row.expiry < plan.asOf && row.quantity > 0);
  const units = rows.reduce((sum, row) => sum + row.quantity, 0);
  const told = rows.map(({ item, quantity, place, expiry }) => {
    const what = quantity > 1 ? `${countText(quantity)} of ${item}` : item;
    return `${what} at ${place ?? "no named place"} (${expiry})`;
  });
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

function heldPacks(plan: Plan): string[] {
  const held = plan.packs.filter((pack) => pack.replaceBy.because === "held");
  const told = held.map(({ serial, device, site }) => `${serial} in ${device ?? site ?? "no named place"}`);
  if (held.length === 0) return [];
  return [
    `${counted(held.length, "pack is", "packs are")} held and ${held.length === 1 ? "counts" : "count"} as due until released: ${listTold(told)}.`,
  ];
}

/** The first few names, and how many more there are. */
export function listTold(told: readonly string[]): string {
  return firstTold(told, TOLD);
}
