import type { Reading } from "../src/index.ts";
import { samePlace, type Target } from "./choose-column.ts";
import type { Asks, EngineWords } from "./engine/messages.ts";

export type Input = Reading["inputs"][number];
export type Column = Input["columns"][number];

/** How all columns are read now, as the engine answers. */
export type ColumnsNow = Asks["columns"]["answer"];

/** What the columns of one table hold, or are to hold. */
export interface HeldColumns {
  /** A column's name in the columns file, and examples of what stands in it. */
  at: (column: Column) => ColumnsNow["tables"][number]["columns"][number] | undefined;
  /** What a column holds, or is to hold once its kind has what it lacks. */
  heldBy: (column: Column) => Target | null;
  /** Of a column that was chosen, and is not read yet: what its kind lacks. */
  lacking: (column: Column) => { kind: string; missing: string[] } | null;
  /** By what a column holds what it does: as recognised, where the reader's choice is none other. */
  by: (column: Column) => Column["by"];
}

/** What the columns of a table hold, by how they are read now; nothing is at hand of a plan without its sheets. */
export function heldColumns(input: Input, sheets: EngineWords["sheets"], now: ColumnsNow | null): HeldColumns {
  const known = now?.tables.find((one) => samePlace(one, input));
  const mapped = now?.file.tables.find((one) => samePlace(one, input));
  const at = (row: Column) => known?.columns.find(({ column }) => column === row.column);
  const heldBy = (row: Column) => {
    if (row.kind !== null && row.field !== null) return { kind: row.kind, name: row.field };
    for (const { kind, columns } of mapped?.rows ?? []) {
      const name = Object.keys(columns).find((one) => columns[one] === at(row)?.key);
      if (name !== undefined) return { kind, name };
    }
    return null;
  };
  const lacking = (row: Column) => {
    const held = row.field === null ? heldBy(row) : null;
    if (held === null) return null;
    const chosen = mapped?.rows.find(({ kind }) => kind === held.kind)?.columns ?? {};
    const missing = neededBy(held.kind, sheets).filter((name) => chosen[name] === undefined);
    return missing.length === 0 ? null : { kind: held.kind, missing };
  };
  const by = (row: Column) => {
    if (row.by !== "mapping") return row.by;
    const same = at(row)?.recognised.find(({ kind, field }) => kind === row.kind && field === row.field);
    return same?.by ?? row.by;
  };
  return { at, heldBy, lacking, by };
}

/** The columns that a kind cannot do without. */
export function neededBy(kind: string, sheets: EngineWords["sheets"]): string[] {
  const columns = sheets.find((sheet) => sheet.kind === kind)?.columns ?? [];
  return columns.filter(({ required }) => required).map(({ name }) => name);
}
