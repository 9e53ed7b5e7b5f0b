import type { ColumnsFile } from "../src/index.ts";

/** What a column is to hold: a column of a canonical sheet. */
export interface Target {
  kind: string;
  name: string;
}

export interface TablePlace {
  file: string;
  sheet: string | null;
  table: number;
}

type Rows = ColumnsFile["tables"][number]["rows"];

/** Columns that say which pack or device a row is about: what is read besides of the same row is about it too. */
const ABOUT = ["serial", "device"];

/**
 * A columns file in which one column of a table holds something else, or nothing. A column that held the target
 * before is set free. Where the target's kind is new to the table, it takes along which pack or device a row is about.
 *
 * @param key  the column's name in the columns file
 * @param was  what the column held so far
 * @param needed  the columns that the target's kind cannot do without
 */
export function chooseColumn(
  columns: ColumnsFile,
  place: TablePlace,
  key: string,
  was: Target | null,
  target: Target | null,
  needed: readonly string[] = [],
): ColumnsFile {
  const is = (kind: string, name: string, other: Target | null) => other?.kind === kind && other.name === name;
  const tables = columns.tables.map((table) => {
    if (!samePlace(table, place)) return table;
    const rows: Rows = table.rows.map((row) => ({
      ...row,
      columns: Object.fromEntries(
        Object.entries(row.columns).filter(
          ([name, held]) => !(held === key && is(row.kind, name, was)) && !is(row.kind, name, target),
        ),
      ),
    }));
    const named = [...table.unread, ...table.rows.flatMap((row) => Object.values(row.columns))];
    if (target) {
      const row = rows.find(({ kind }) => kind === target.kind);
      if (row) row.columns[target.name] = key;
      else {
        const about = ABOUT.flatMap((name) => {
          const held = needed.includes(name) ? rows.find(({ columns }) => columns[name])?.columns[name] : undefined;
          return held === undefined ? [] : [[name, held]];
        });
        const kind = target.kind as Rows[number]["kind"];
        rows.push({ kind, columns: { ...Object.fromEntries(about), [target.name]: key } });
      }
    }
    const left = rows.filter((row) => holdsItsOwn(row, rows));
    const read = new Set(left.flatMap((row) => Object.values(row.columns)));
    return { ...table, rows: left, unread: [...new Set(named)].filter((name) => !read.has(name)) };
  });
  return { ...columns, tables };
}

/** Whether a kind holds more than what says which pack or device a row of another kind is about. */
function holdsItsOwn(row: Rows[number], rows: Rows): boolean {
  return Object.entries(row.columns).some(
    ([name, held]) =>
      !ABOUT.includes(name) || !rows.some((other) => other !== row && Object.values(other.columns).includes(held)),
  );
}

/**
 * How columns are read, together with what was chosen but is not read yet, since its kind lacks a column that it
 * cannot do without.
 */
export function withUnfinished(read: ColumnsFile, chosen: ColumnsFile | null): ColumnsFile {
  const tables = read.tables.map((table) => {
    const rows = chosen?.tables.find((other) => samePlace(other, table))?.rows ?? [];
    const added = rows.filter(({ kind }) => !table.rows.some((row) => row.kind === kind));
    const named = new Set(added.flatMap(({ columns }) => Object.values(columns)));
    return { ...table, rows: [...table.rows, ...added], unread: table.unread.filter((name) => !named.has(name)) };
  });
  return { ...read, tables };
}

/** Whether two are the same table. */
export function samePlace(a: TablePlace, b: TablePlace): boolean {
  return a.file === b.file && a.sheet === b.sheet && a.table === b.table;
}
