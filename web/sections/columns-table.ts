import type { ColumnsFile, Reading } from "../../src/index.ts";
import { chooseColumn, type Target } from "../choose-column.ts";
import { make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import type { EngineWords } from "../engine/messages.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";

type Input = Reading["inputs"][number];
type Column = Input["columns"][number];

export type SetColumns = (columns: ColumnsFile) => void;

/**
 * How one table's columns were read, made when it is opened. With the sheets at hand each column shows what stands in
 * it, and can be given to another column of the canonical sheets.
 */
export function columnsOf(input: Input, words: EngineWords, setColumns: SetColumns | null): HTMLElement {
  const name = input.sheet === null ? input.file : `${input.file} · ${input.sheet}`;
  const title = say.sheets.columnsOf(name, new Set(input.columns.map(({ column }) => column)).size);
  const details = make("details", { class: "columns" }, make("summary", {}, title));
  details.addEventListener("toggle", async () => {
    if (details.open && details.children.length === 1)
      details.append(await columnsTable(input, title, words, setColumns));
  });
  return details;
}

async function columnsTable(
  input: Input,
  caption: string,
  words: EngineWords,
  setColumns: SetColumns | null,
): Promise<HTMLElement> {
  const now = setColumns === null ? null : await ask("columns", {});
  const known = now?.tables.find(
    (one) => one.file === input.file && one.sheet === input.sheet && one.table === input.table,
  );
  const at = (row: Column) => known?.columns.find(({ column }) => column === row.column);
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
      { title: heads[3]!, value: how },
      { title: heads[4]!, value: (row) => at(row)?.examples.join(" | ") ?? null, wide: true },
    ],
  });

  function picker(row: Column): HTMLElement | null {
    const key = at(row)?.key ?? null;
    if (now === null || setColumns === null || key === null) return null;
    const current = row.field === null ? "" : `${row.kind}.${row.field}`;
    const kinds = words.sheets.filter(({ kind }) => input.kinds.includes(kind));
    const others = words.sheets.filter(({ kind }) => !input.kinds.includes(kind));
    return make(
      "select",
      {
        id: `column-${input.file}-${input.sheet ?? ""}-${input.table}-${row.column}`,
        "aria-label": say.sheets.readColumnAs(row.header ?? String(row.column)),
        change: (event) => {
          const target = targetOf((event.target as HTMLSelectElement).value);
          setColumns(chooseColumn(now.file, input, key, target));
        },
      },
      make("option", { value: "" }, say.sheets.notUsed),
      [...kinds, ...others].map(({ kind, columns }) =>
        make(
          "optgroup",
          { label: spaced(kind) },
          columns.map((column) => {
            const value = `${kind}.${column}`;
            return make("option", { value, selected: value === current }, `${spaced(kind)}: ${spaced(column)}`);
          }),
        ),
      ),
    );
  }
}

function targetOf(value: string): Target | null {
  const [kind, name] = value.split(".");
  return kind && name ? { kind, name } : null;
}

function readAs(row: Column): string {
  return row.field === null ? say.sheets.notUsed : `${spaced(row.kind ?? "")}: ${spaced(row.field)}`;
}

function how(row: Column): string | null {
  if (row.by === null) return null;
  return say.sheets.by[row.by] + (row.dateOrder === null ? "" : say.sheets.order(row.dateOrder));
}

const spaced = (name: string) => name.replaceAll("_", " ");
