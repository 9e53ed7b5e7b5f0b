import type { Day } from "../calendar/day.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Fleet } from "../fleet/rows.ts";

/** The day of each pack's first test up to a day, by pack key. */
export function firstTests({ runtimeTests }: Fleet, asOf: Day): Map<string, Day> {
  const first = new Map<string, Day>();
  for (const { serial, date } of runtimeTests) {
    if (date > asOf) continue;
    const key = nameKey(serial);
    first.set(key, Math.min(first.get(key) ?? date, date));
  }
  return first;
}
