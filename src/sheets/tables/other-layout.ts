import { type Cell, cellAt, type Grid, isBlankCell } from "../grid.ts";
import { isDate } from "../values/date-text.ts";
import { type FieldSource, isTyped, type Table } from "./table.ts";
import { toldAsList } from "./told-as-list.ts";

/** Lines beyond which a sheet is not looked at for other layouts. */
export const LONGEST_LAYOUT = 2000;
/** Share of a column's cells, and of the columns, that must be what their names say. */
const MOSTLY = 0.5;

/**
 * A grid as the list that it holds, where its names stand left of their values and more of them are known that way;
 * else the grid as it stands.
 *
 * @param asItStands  the tables found in it
 * @param find        finds those of the list
 */
export function otherLayout(grid: Grid, asItStands: readonly Table[], find: (list: Grid) => Table[]): Grid {
  // what this program wrote, and what can mean two things, is no other layout
  if (asItStands.some(({ tied, ownOutput }) => tied !== null || ownOutput !== null)) return grid;
  const list = toldAsList(grid);
  if (list === null) return grid;
  const tables = find(list);
  return namesRead(tables) > namesRead(asItStands) && tables.every(holdsWhatItSays) ? list : grid;
}

/** How many different things the headers of tables are known to say. */
function namesRead(tables: readonly Table[]): number {
  const named = tables.flatMap(({ outputs }) =>
    outputs.flatMap(({ sheet, fields }) =>
      fields.flatMap(({ spec, by }) => (by === "header" ? [`${sheet.kind} ${spec.field}`] : [])),
    ),
  );
  return new Set(named).size;
}

/** True where columns are known for dates or numbers, and at least half of them hold such. */
function holdsWhatItSays({ outputs, rows }: Table): boolean {
  const typed = outputs.flatMap(({ fields }) => fields.filter(({ spec }) => isTyped(spec)));
  const held = typed.filter(({ spec, columns }) => {
    const cells = rows.map((row) => cellAt(row, columns[0]!)).filter((cell) => !isBlankCell(cell));
    return cells.filter((cell) => isValue(cell!, spec)).length >= cells.length * MOSTLY;
  });
  return typed.length > 0 && held.length >= typed.length * MOSTLY;
}

function isValue(cell: Cell, { type }: FieldSource["spec"]): boolean {
  return typeof cell === "number" || (type === "date" ? isDate(String(cell)) : /\d/.test(String(cell)));
}
