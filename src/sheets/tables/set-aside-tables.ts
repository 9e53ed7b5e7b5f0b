import type { GridRow } from "../grid.ts";
import { nameIn } from "./header-rows.ts";

/** The columns with which set-aside.csv begins. */
export const SET_ASIDE_HEAD = ["file", "sheet", "line", "reason", "message"] as const;

/** One source table's part of a set-aside.csv: its header over the file's columns, and its rows. */
export interface SetAsidePart {
  line: number;
  header: (string | null)[];
  rows: GridRow[];
}

/** The parts of a set-aside.csv that was corrected and is read again; null where the rows are no such file. */
export function setAsideParts(rows: readonly GridRow[]): SetAsidePart[] | null {
  const [head] = rows;
  if (!head || !SET_ASIDE_HEAD.every((name, at) => head.cells[at] === name)) return null;
  const parts = new Map<string, SetAsidePart>();
  head.cells.forEach((cell, column) => {
    const name = column < SET_ASIDE_HEAD.length ? null : nameIn(cell);
    if (name === null) return;
    const [, title = "", own = name] = /^\[([^\]]*)\] (.*)$/s.exec(name) ?? [];
    const part = parts.get(title) ?? { line: head.line, header: head.cells.map(() => null), rows: [] };
    // The number that tells a column from one of its name before it was added on writing.
    const bare = own.replace(/ #\d+$/, "");
    part.header[column] = part.header.includes(bare) ? bare : own;
    parts.set(title, part);
  });
  for (const record of rows.slice(1)) {
    const part = [...parts.values()].find(({ header }) =>
      header.some((name, column) => name !== null && nameIn(record.cells[column]) !== null),
    );
    // Where the row once stood says nothing of the fleet: only its own cells are read.
    const cells = record.cells.map((cell, column) => (column < SET_ASIDE_HEAD.length ? null : cell));
    (part ?? [...parts.values()][0])?.rows.push({ line: record.line, cells });
  }
  return [...parts.values()].filter((part) => part.rows.length > 0);
}
