import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import type { Entry } from "./entry.ts";
import type { RowPlan } from "./fill-row.ts";

/** The rating that each measure of a test stands against. */
const RATING_OF = { wh: "ratedWh", ah: "ratedAh", minutes: "ratedMinutes" } as const;
/** Shares of the rating outside which a capacity is absurd, or nothing is left, in percent (the bounds of the sheet of tests). */
const MOST_PERCENT = 130;
const LEAST_PERCENT = 5;

/**
 * Says in percent what the tests of a record measured against the rating that stands beside them. Tests of more than a
 * pack of that rating can hold are set aside.
 *
 * @param entries  those of all records so far
 * @param from  the first of this record
 */
export function rateTests(
  entries: Entry[],
  from: number,
  { readers, template }: RowPlan,
  record: GridRow,
  log: FindingLog,
): void {
  const ratings = new Map([
    ...Object.entries(template),
    ...readers.map(({ spec, read }): [string, unknown] => [spec.field, read(record)]),
  ]);
  for (const entry of entries.slice(from)) {
    const { values, state, row } = entry;
    if (values.percent !== null || entry.sheet.kind !== "runtime_tests") continue;
    const percent = Object.entries(RATING_OF)
      .map(([measure, rating]) => [values[measure], ratings.get(rating)])
      .flatMap(([measured, rated]) =>
        typeof measured === "number" && typeof rated === "number"
          ? Number(((measured / rated) * 100).toPrecision(12))
          : [],
      )[0];
    if (percent === undefined) continue;
    if (percent > MOST_PERCENT) {
      const { file, sheet } = values.source;
      const message = `The test of "${shortened(String(values.serial))}" comes to ${Math.round(percent)} % of the rating beside it; 5 to 130 % was expected.`;
      const place = { file, sheet, line: record.line, column: null, value: `${Math.round(percent)} %` };
      log.add("capacity-over-rated", place, () => ({ message }));
      entries.splice(entries.indexOf(entry), 1);
      state.drop(row, "capacity-over-rated", message);
    } else if (percent >= LEAST_PERCENT) values.percent = percent;
    else values.result = "fail";
  }
}
