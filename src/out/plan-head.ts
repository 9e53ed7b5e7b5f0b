import { isoFromDay } from "../calendar/day.ts";
import { monthOfDay, monthText } from "../calendar/month.ts";
import type { Finding } from "../fleet/finding.ts";
import { groupBy } from "../fleet/group-by.ts";
import type { Policy } from "../fleet/policy.ts";
import { POLICY_KEYS } from "../fleet/policy-keys.ts";
import { sortBy } from "../maths/sort-by.ts";
import type { Reading, ReadTable } from "../sheets/reading.ts";
import { ENGINE } from "./engine.ts";
import type { Plan } from "./plan-schema.ts";

/** What every part of a plan begins with: for when, under which choices, from which sheets. */
export type PlanHead = Pick<Plan, "format" | "engine" | "asOf" | "horizon" | "policy" | "inputs" | "findings">;

/**
 * The head of a plan.
 *
 * @param later  findings of the stages after reading
 */
export function planHead({ inputs, findings }: Reading, policy: Policy, later: readonly Finding[]): PlanHead {
  const from = monthOfDay(policy.asOf);
  return {
    format: "wanecast.plan/1",
    engine: ENGINE,
    asOf: isoFromDay(policy.asOf),
    horizon: { from: monthText(from), to: monthText(from + policy.horizonMonths - 1) },
    policy: policyRecord(policy),
    inputs: inputRows(inputs),
    findings: findingRows([...findings, ...later]),
  };
}

/** Every policy value under its sheet key, dates as ISO text, null where there is none. */
export function policyRecord(policy: Policy): Plan["policy"] {
  return Object.fromEntries(
    POLICY_KEYS.map(({ key, field }) => {
      const value = policy[field];
      const isDay = field === "asOf" || field === "useLogFrom";
      return [key, isDay && typeof value === "number" ? isoFromDay(value) : value];
    }),
  );
}

/** What was read, by file, tab and table, without the columns. */
export function inputRows(inputs: readonly ReadTable[]): Plan["inputs"] {
  return tablesInOrder(inputs).map((input) => {
    const { file, sheet, table, kinds, headerLines, rows, used, setAside } = input;
    return {
      file,
      sheet,
      table,
      kinds,
      headerLines,
      rows,
      used,
      setAside,
      get sha256() {
        return input.sha256;
      },
    };
  });
}

/** Findings by place: file, tab, line, column, then code and value. */
export function findingRows(findings: readonly Finding[]): Plan["findings"] {
  const rows = findings.map(({ code, severity, file, sheet, line, lines, column, value, message, fix }) => ({
    code,
    severity,
    file,
    sheet,
    line,
    lines: [...lines].sort((a, b) => a - b),
    column,
    value,
    message,
    fix,
  }));
  return sortBy(rows, (row) => [row.file, row.sheet, row.line, row.column, row.code, row.value, row.message]);
}

/** Tables read by file, tab and place in the tab. The digest, which takes long to work out, tells two files of one name apart. */
export function tablesInOrder(inputs: readonly ReadTable[]): ReadTable[] {
  const placeOf = ({ file, sheet, table }: ReadTable) => JSON.stringify([file, sheet, table]);
  const places = groupBy(inputs, placeOf);
  const alike = new Set([...places.values()].flatMap((tables) => (tables.length > 1 ? tables[0]!.file : [])));
  return sortBy(inputs, (input) => [input.file, input.sheet, alike.has(input.file) ? input.sha256 : "", input.table]);
}
