import type { ColumnSpec } from "../../fleet/columns.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Table } from "../tables/table.ts";
import { columnName } from "./column-name.ts";
import type { ColumnSurvey } from "./survey-column.ts";

/** Findings about a column as a whole: an open or contradictory date order, dates out of bare numbers. */
export function logSurvey(survey: ColumnSurvey, table: Table, column: number, spec: ColumnSpec, log: FindingLog): void {
  const { file, sheet } = table.grid;
  const place = { file, sheet, line: null, column: column + 1 };
  const name = columnName(table, column);
  const group = String(table.number);
  const effect = spec.required ? "nothing that it dates is used" : "its cells count as empty";
  if (survey.order.state === "unsettled" && survey.example) {
    const { text, line } = survey.example;
    log.add(
      "date-order-unsettled",
      { ...place, value: text },
      () => ({
        message: `"${text}" (line ${line}) in column ${name} can be read in two orders and no date of the column settles it, so ${effect}; a date with a day over 12 would settle it.`,
        severity: spec.required ? "error" : "warning",
      }),
      group,
    );
  }
  if (survey.order.state === "contradicts") {
    const shown = survey.proofs.map(({ text, line }) => `"${text}" (line ${line})`).join(" and ");
    log.add(
      "date-order-contradicts",
      { ...place, value: survey.proofs[0]?.text ?? null },
      () => ({
        message: `Column ${name} holds dates of different orders${shown ? `, such as ${shown}` : ""}, so ${effect}.`,
      }),
      group,
    );
  }
  if (survey.serials) {
    const { text, lines } = survey.serials;
    log.add(
      "date-from-serial",
      { ...place, line: lines[0] ?? null, value: text },
      () => ({ message: `"${text}" in column ${name} was read as a spreadsheet's day number.` }),
      group,
    );
  }
  if (survey.years) {
    const { text, lines } = survey.years;
    log.add(
      "year-alone",
      { ...place, line: lines[0] ?? null, value: text },
      () => ({
        message: `"${text}" in column ${name} is a year alone: its first day was taken.`,
        fix: "Write the month too, as in 2023-05, where it is known.",
        severity: "info",
      }),
      group,
    );
  }
}
