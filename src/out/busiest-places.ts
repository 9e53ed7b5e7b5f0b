import { NO_PLACE } from "../supplies/trace.ts";
import { countText } from "./count-text.ts";
import type { DatedRun } from "./dated-runs.ts";
import type { DatesReport } from "./dates-report.ts";
import { firstYearEnd, planMonth } from "./horizon-text.ts";
import { sortBy } from "./sort-by.ts";
import { textTable } from "./text-table.ts";

/** Places told; dates.csv and --json have them all. */
const TOLD = 10;
const SOON_MONTHS = 3;

/** A place with the units to be swapped there, by when. */
interface Place {
  place: string;
  overdue: number;
  soon: number;
  year: number;
}

/** The places with most units to swap in the first year, the busiest first; null where nothing is to be swapped. */
export function busiestPlaces(report: DatesReport, runs: readonly DatedRun[], width: number): string | null {
  const lastOfYear = planMonth(report, firstYearEnd(report));
  const lastSoon = planMonth(report, Math.min(SOON_MONTHS - 1, firstYearEnd(report)));
  const places = new Map<string, Place>();
  for (const { swapBy, rows } of runs) {
    const month = swapBy.slice(0, 7);
    if (month > lastOfYear) continue;
    const span = swapBy < report.asOf ? "overdue" : month <= lastSoon ? "soon" : null;
    for (const { place: name, quantity } of rows) {
      const key = name ?? NO_PLACE;
      let found = places.get(key);
      if (!found) {
        found = { place: key, overdue: 0, soon: 0, year: 0 };
        places.set(key, found);
      }
      if (span !== null) found[span] += quantity;
      found.year += quantity;
    }
  }
  if (places.size === 0) return null;
  const rows = sortBy([...places.values()], ({ place, overdue, soon, year }) => [-overdue, -year, -soon, place]);
  const table = textTable<Place>(
    [
      { head: "place", cell: ({ place }) => place, clipTo: 12 },
      { head: "overdue", align: "right", cell: ({ overdue }) => countText(overdue) },
      { head: `to ${lastSoon}`, align: "right", cell: ({ soon }) => countText(soon) },
      { head: `all to ${lastOfYear}`, align: "right", cell: ({ year }) => countText(year) },
    ],
    rows.slice(0, TOLD),
    width,
  );
  const more = rows.length - TOLD;
  return more > 0 ? `${table}\n(${countText(more)} more in dates.csv and --json)` : table;
}
