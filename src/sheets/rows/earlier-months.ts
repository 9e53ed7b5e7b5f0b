import type { Day } from "../../calendar/day.ts";
import { monthOfDay } from "../../calendar/month.ts";
import { groupBy } from "../../fleet/group-by.ts";
import type { FindingLog } from "../finding-log.ts";
import { tabName } from "../grid.ts";
import { monthInName } from "../values/month-in-name.ts";
import { dropEarlierCheck } from "./earlier-check.ts";
import { type Entry, type TableState, tablesOf } from "./entry.ts";
import { unitKey } from "./unit-key.ts";

/** The share of a month's units that must stand in the next one's sheet for both to list the same shelves. */
const MOSTLY = 0.5;

/**
 * Of sheets or tabs with a month in their name that list nearly the same dated units, those of the last month: what an
 * earlier one found is the same, or was swapped since.
 *
 * @param entries  of dated stock
 * @returns the entries that stand; the others are dropped, with a finding
 */
export function withoutEarlierMonths(entries: Entry[], asOf: Day, log: FindingLog): Entry[] {
  const named = tablesOf(entries).flatMap((state) => {
    const { grid, header } = state.table;
    const tab = tabName(grid);
    const name = tab ?? grid.file.replace(/\.\w+$/, "");
    const found = monthInName(name, monthOfDay(asOf));
    const series = [tab === null ? "" : grid.file, found?.rest, ...header].join("\0");
    return found === null ? [] : [{ state, name, time: found.time, series }];
  });
  const later = new Map<TableState, string>();
  for (const series of groupBy(named, (one) => one.series).values()) {
    const checks = [...groupBy(series, ({ time }) => time)].sort(([a], [b]) => b - a);
    let next: { name: string; units: Set<string> } | null = null;
    for (const [, tables] of checks) {
      const states = new Set(tables.map(({ state }) => state));
      const units = entries.filter(({ state }) => states.has(state)).map(unitKey);
      const known = units.filter((unit) => next?.units.has(unit)).length;
      if (next !== null && known >= units.length * MOSTLY) for (const state of states) later.set(state, next.name);
      next = { name: tables[0]!.name, units: new Set(units) };
    }
  }
  return entries.filter((entry) => {
    const name = later.get(entry.state);
    if (name === undefined) return true;
    dropEarlierCheck(entry, null, `Most of these units stand again in "${name}": what was found then counts.`, log);
    return false;
  });
}
