import { countText } from "../fleet/count-text.ts";
import { LATE_YEARS } from "../life/failure-cautions.ts";
import type { Plan } from "./plan-schema.ts";
import type { TextSetting } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Years of age that the table goes to, and packs that must still be watched for a row. */
const YEARS_SHOWN = 10;
const ENOUGH_AT_RISK = 3;

type Row = Plan["suddenFailures"][number]["survival"][number] & { item: string; first: boolean };

/** Share that outlives each year of age, of items that have shown a sudden failure: as seen beside as planned. */
export function failuresText({ suddenFailures }: Plan, { width }: TextSetting): string[] {
  const shown = suddenFailures.filter(({ failures }) => failures > 0);
  const rows = shown.flatMap(({ item, survival }): Row[] =>
    survival
      .filter(({ years, atRisk }) => years <= YEARS_SHOWN && atRisk >= ENOUGH_AT_RISK)
      .map((row, index) => ({ ...row, item, first: index === 0 })),
  );
  if (rows.length === 0) return [];
  const late = shown.filter(({ watchedFromYears }) => watchedFromYears >= LATE_YEARS);
  const note = late.map(
    ({ item, watchedFromYears }) =>
      `${item}: nothing was watched before an age of ${watchedFromYears.toFixed(1)} years; shares are of packs that reached it.`,
  );
  return [failuresTable(rows, width), ...note.map((line) => wrapText(line, width))];
}

function failuresTable(rows: readonly Row[], width: number): string {
  const percent = (share: number) => `${(100 * share).toFixed(1)} %`;
  return textTable<Row>(
    [
      { head: "item", cell: ({ item, first }) => (first ? item : ""), clipTo: 12 },
      { head: "age, years", align: "right", cell: ({ years }) => String(years) },
      { head: "watched", align: "right", cell: ({ atRisk }) => countText(atRisk) },
      { head: "seen to outlive it", align: "right", cell: ({ seen }) => percent(seen) },
      {
        head: "give or take",
        align: "right",
        dropRank: 1,
        cell: ({ standardError }) => (standardError === 0 ? "-" : percent(standardError)),
      },
      { head: "plan counts on", align: "right", cell: ({ planned }) => percent(planned) },
    ],
    rows,
    width,
  );
}
