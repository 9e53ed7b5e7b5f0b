import { type Day, isoFromDay } from "../calendar/day.ts";
import { canonicalRows } from "../sheets/canonical-rows.ts";
import type { Reading } from "../sheets/reading.ts";
import type { Check } from "./check-schema.ts";
import { findingRows, inputRows, tablesInOrder } from "./plan-head.ts";
import { setAsideInOrder } from "./set-aside-csv.ts";

/** What `check --json` prints, format `wanecast.check/1`: how all was read, with the fleet in canonical columns. */
export function checkJson(reading: Reading, asOf: Day): Check {
  const columns = tablesInOrder(reading.inputs).map((table) => table.columns);
  return {
    format: "wanecast.check/1",
    asOf: isoFromDay(asOf),
    inputs: inputRows(reading.inputs).map((input, index) => ({ ...input, columns: columns[index] ?? [] })),
    setAside: setAsideInOrder(reading.setAside),
    findings: findingRows(reading.findings),
    refused: reading.refused,
    fleet: canonicalRows(reading.fleet) as Check["fleet"],
  };
}
