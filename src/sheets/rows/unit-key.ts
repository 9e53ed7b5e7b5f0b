import { nameKey } from "../../fleet/name-key.ts";
import type { Entry } from "./entry.ts";

/** Key under which rows of dated stock tell of the same units, however many: of one item and lot at one place. */
export function unitKey({ values: { item, place, expiry, lot, serial } }: Entry): string {
  return [item, place, expiry, lot, serial].map((part) => nameKey(String(part))).join("\0");
}
