import type { ColumnsFile, Reading } from "../../src/index.ts";
import { chooseColumn, type Target } from "../choose-column.ts";
import { make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import type { EngineWords } from "../engine/messages.ts";
import { opening } from "../opening.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { fileAndTab } from "../where.ts";

type Input = Reading["inputs"][number];
type Column = Input["columns"][number];

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
  words: EngineWords,
  setColumns: SetColumns | null,
): Promise<HTMLElement> {
  const now = setColumns === null ? null : await ask("columns", {});
  const known = now?.tables.find(
    (one) => one.file === input.file && one.sheet === input.sheet && one.table === input.table,
  );
  const at = (row: Column) => known?.columns.find(({ column }) => column === row.column);
  const mapped = now?.file.tables.find(
    (one) => one.file === input.file && one.sheet === input.sheet && one.table === input.table,
  );
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
      { title: heads[3]!, value: (row) => lacking(row) ?? how(row) },
      { title: heads[4]!, value: (row) => at(row)?.examples.join(" | ") ?? null, wide: true },
    ],
  });

  function picker(row: Column): HTMLElement | null {
    const key = at(row)?.key ?? null;
    if (now === null || setColumns === null || key === null) return null;
    const held = heldBy(row);
    const current = held === null ? "" : `${held.kind}.${held.name}`;
    const kinds = words.sheets.filter(({ kind }) => input.kinds.includes(kind));
    const others = words.sheets.filter(({ kind }) => !input.kinds.includes(kind));
    return make(
      "select",
      {
        id: `column-${input.file}-${input.sheet ?? ""}-${input.table}-${row.column}${again(row)}`,
        "aria-label": say.sheets.readColumnAs(row.header ?? String(row.column)),
        change: (event) => {
          const target = targetOf((event.target as HTMLSelectElement).value);
          setColumns(chooseColumn(now.file, input, key, held, target, target ? needed(target.kind) : []));
        },
      },
      make("option", { value: "" }, say.sheets.notUsed),
      [...kinds, ...others].map(({ kind, columns }) =>
        make(
          "optgroup",
          { label: spaced(kind) },
          columns.map(({ name }) => {
            const value = `${kind}.${name}`;
            return make("option", { value, selected: value === current }, `${spaced(kind)}: ${spaced(name)}`);
          }),
        ),
      ),
    );
  }

  /** Tells the further uses of a column from its first. */
  function again(row: Column): string {
    const [first] = input.columns.filter(({ column }) => column === row.column);
    return first === row ? "" : `-${row.kind}-${row.field}`;
  }

  /** What a column holds, or is to hold once its kind has what it lacks. */
  function heldBy(row: Column): Target | null {
    if (row.kind !== null && row.field !== null) return { kind: row.kind, name: row.field };
    for (const { kind, columns } of mapped?.rows ?? []) {
      const name = Object.keys(columns).find((one) => columns[one] === at(row)?.key);
      if (name !== undefined) return { kind, name };
    }
    return null;
  }

  /** Says of a column that was chosen, and is not read yet, what its kind lacks. */
  function lacking(row: Column): string | null {
    const held = row.field === null ? heldBy(row) : null;
    if (held === null) return null;
    const chosen = mapped?.rows.find(({ kind }) => kind === held.kind)?.columns ?? {};
    const missing = needed(held.kind).filter((name) => chosen[name] === undefined);
    return missing.length === 0 ? null : say.sheets.lacks(spaced(held.kind), missing.map(spaced));
  }

  function needed(kind: string): string[] {
    const columns = words.sheets.find((sheet) => sheet.kind === kind)?.columns ?? [];
    return columns.filter(({ required }) => required).map(({ name }) => name);
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
