import type { Target } from "../choose-column.ts";
import { make } from "../dom.ts";
import type { EngineWords } from "../engine/messages.ts";
import type { Column, Input } from "../held-columns.ts";
import { say } from "../strings.ts";

/** A kind or a column as people write it. */
export const spaced = (name: string) => name.replaceAll("_", " ");

/** The choice of what a column of a table holds, the kinds that the table is of first. */
export function columnPicker(
  input: Input,
  row: Column,
  held: Target | null,
  sheets: EngineWords["sheets"],
  choose: (target: Target | null) => void,
): HTMLElement {
  const current = held === null ? "" : `${held.kind}.${held.name}`;
  const kinds = sheets.filter(({ kind }) => input.kinds.includes(kind));
  const others = sheets.filter(({ kind }) => !input.kinds.includes(kind));
  return make(
    "select",
    {
      id: `column-${input.file}-${input.sheet ?? ""}-${input.table}-${row.column}${again(input, row)}`,
      "aria-label": say.sheets.readColumnAs(row.header ?? String(row.column)),
      change: (event) => choose(targetOf((event.target as HTMLSelectElement).value)),
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
function again(input: Input, row: Column): string {
  const first = input.columns.find(({ column }) => column === row.column);
  return first === row ? "" : `-${row.kind}-${row.field}`;
}

function targetOf(value: string): Target | null {
  const [kind, name] = value.split(".");
  return kind && name ? { kind, name } : null;
}
