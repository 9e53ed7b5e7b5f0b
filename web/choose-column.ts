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

/**
 * A columns file in which one column of a table holds something else, or nothing. A column that held the target
 * before is set free.
 *
 * @param key  the column's name in the columns file
 */
export function chooseColumn(columns: ColumnsFile, place: TablePlace, key: string, target: Target | null): ColumnsFile {
  const tables = columns.tables.map((table) => {
    if (table.file !== place.file || table.sheet !== place.sheet || table.table !== place.table) return table;
    const rows = table.rows.map((row) => ({
      ...row,
      columns: Object.fromEntries(
        Object.entries(row.columns).filter(
          ([name, held]) => held !== key && !(row.kind === target?.kind && name === target.name),
        ),
      ),
    }));
    const named = [...table.unread, ...table.rows.flatMap((row) => Object.values(row.columns))];
    if (target) {
      const row = rows.find(({ kind }) => kind === target.kind);
      if (row) row.columns[target.name] = key;
      else rows.push({ kind: target.kind as (typeof rows)[number]["kind"], columns: { [target.name]: key } });
    }
    const read = new Set(rows.flatMap((row) => Object.values(row.columns)));
    return {
      ...table,
      rows: rows.filter((row) => Object.keys(row.columns).length > 0),
      unread: [...new Set(named)].filter((name) => !read.has(name)),
    };
  });
  return { ...columns, tables };
}
