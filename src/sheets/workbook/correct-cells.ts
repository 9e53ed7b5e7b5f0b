import type { Grid } from "../grid.ts";
import type { CellCorrection } from "../reading.ts";

/** A workbook's tabs with what a person put right; every other cell as it stood. Later corrections win. */
export function withCorrections(grids: readonly Grid[], corrections: readonly CellCorrection[]): Grid[] {
  return grids.map((grid) => {
    const own = corrections.filter(({ sheet }) => sheet === grid.sheet);
    if (own.length === 0) return grid;
    const rows = grid.rows.map((row) => {
      const cells = [...row.cells];
      for (const { line, column, text } of own) {
        if (line !== row.line) continue;
        while (cells.length < column) cells.push(null);
        cells[column - 1] = text;
      }
      return { ...row, cells };
    });
    return { ...grid, rows };
  });
}
