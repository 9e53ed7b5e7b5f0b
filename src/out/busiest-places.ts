import { countText } from "../fleet/count-text.ts";
import { SOON_MONTHS } from "../supplies/stock-tally.ts";
import type { DatesReport } from "./dates-report.ts";
import { firstYearEnd, planMonth } from "./horizon-text.ts";
import type { PlaceToSwap } from "./places-to-swap.ts";
import { textTable } from "./text-table.ts";

/** Places told; dates.csv and --json have them all. */
const TOLD = 10;

/** The places with most units to swap in the first year, the busiest first; null where nothing is to be swapped. */
export function busiestPlaces(report: DatesReport, width: number): string | null {
  const { places } = report;
  const yearTo = planMonth(report, firstYearEnd(report));
  const soonTo = planMonth(report, Math.min(SOON_MONTHS - 1, firstYearEnd(report)));
  if (places.length === 0) return null;
  const table = textTable<PlaceToSwap>(
    [
      { head: "place", cell: ({ place }) => place, clipTo: 12 },
      { head: "overdue", align: "right", cell: ({ overdue }) => countText(overdue) },
      ...(soonTo === yearTo
        ? []
        : [{ head: `to ${soonTo}`, align: "right" as const, cell: ({ soon }: PlaceToSwap) => countText(soon) }]),
      { head: `all to ${yearTo}`, align: "right", cell: ({ year }) => countText(year) },
    ],
    places.slice(0, TOLD),
    width,
  );
  const more = places.length - TOLD;
  return more > 0 ? `${table}\n(${countText(more)} more in dates.csv and --json)` : table;
}
