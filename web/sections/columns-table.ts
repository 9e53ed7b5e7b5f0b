import type { ColumnsFile } from "../../src/index.ts";
import { chooseColumn } from "../choose-column.ts";
import { ask } from "../engine/engine.ts";
import type { EngineWords } from "../engine/messages.ts";
import { type Column, heldColumns, type Input, neededBy } from "../held-columns.ts";
import { opening } from "../opening.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { fileAndTab } from "../where.ts";
import { columnPicker, spaced } from "./column-picker.ts";

type SetColumns = (columns: ColumnsFile) => void;

/**
 * How one table's columns were read, made when it is opened. With the sheets at hand each column shows what stands in
 * it, and can be given to another column of the canonical sheets.
 */
export function columnsOf(input: Input, words: EngineWords, setColumns: SetColumns | null): HTMLElement {
  const name = fileAndTab(input.file, input.sheet);
  const columns = new Set(input.columns.map(({ column }) => column));
  const unused = input.columns.filter(({ field }) => field === null).length;
  const title = say.sheets.columnsOf(name, columns.size, unused);
  const attributes = { class: "columns", id: `columns-${name}-${input.table}` };
  return opening(title, () => columnsTable(input, title, words, setColumns), attributes);
}

async function columnsTable(
  input: Input,
  caption: string,
  { sheets }: EngineWords,
  setColumns: SetColumns | null,
): Promise<HTMLElement> {
  const now = setColumns === null ? null : await ask("columns", {});
  const { at, heldBy, lacking, by } = heldColumns(input, sheets, now);
  const picker = (row: Column) => {
    const key = at(row)?.key ?? null;
    if (now === null || setColumns === null || key === null) return null;
    const held = heldBy(row);
    return columnPicker(input, row, held, sheets, (target) => {
      setColumns(chooseColumn(now.file, input, key, held, target, target ? neededBy(target.kind, sheets) : []));
    });
  };
  const lackWords = (row: Column) => {
    const lacks = lacking(row);
    return lacks && say.sheets.lacks(spaced(lacks.kind), lacks.missing.map(spaced));
  };
  const heads = say.sheets.columnHeads;
  return table({
    caption,
    rows: input.columns,
    first: 60,
    sortable: false,
    columns: [
      { title: heads[0]!, value: (row) => row.column, figures: true },
      { title: heads[1]!, value: (row) => [row.group, row.header].filter(Boolean).join(" · ") || null },
      { title: heads[2]!, value: readAs, show: (row) => picker(row) ?? readAs(row) },
      { title: heads[3]!, value: (row) => lackWords(row) ?? how(row, by(row), now !== null) },
      { title: heads[4]!, value: (row) => at(row)?.examples.join(" | ") ?? null, wide: true },
    ],
  });
}

function readAs(row: Column): string {
  return row.field === null ? say.sheets.notUsed : `${spaced(row.kind ?? "")}: ${spaced(row.field)}`;
}

/** How a column was recognised, or who chose: whoever made the plan, where its sheets are not at hand. */
function how({ dateOrder }: Column, by: Column["by"], atHand: boolean): string | null {
  if (by === null) return null;
  return (
    say.sheets.by[by === "mapping" && !atHand ? "file" : by] + (dateOrder === null ? "" : say.sheets.order(dateOrder))
  );
}
