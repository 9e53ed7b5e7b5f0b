import { make } from "./dom.ts";
import { compareNames, numberWords } from "./format.ts";
import { keepChoice, keptChoice } from "./kept-choices.ts";
import { say } from "./strings.ts";
import { table } from "./table.ts";
import type { TableSpec } from "./table-spec.ts";

/** One way to narrow a table: by the value that a row has. */
export interface Filter<Row> {
  id: string;
  label: string;
  of: (row: Row) => string | null;
}

/**
 * A table with a choice for each filter above it; filters that leave nothing to choose are not shown.
 *
 * @param sum  what the rows that are left come to, told beside their count
 */
export function filteredTable<Row>(
  spec: TableSpec<Row>,
  filters: Filter<Row>[],
  sum: (rows: readonly Row[]) => string = () => "",
): HTMLElement {
  const holder = make("div");
  const order = {};
  const count = make("output", { class: "count" });
  const controls = filters.flatMap(({ id, label, of }) => {
    const values = [...new Set(spec.rows.map(of).filter((value) => value !== null))].sort(compareNames);
    if (values.length < 2) return [];
    const select = make(
      "select",
      {
        id,
        change: () => {
          keepChoice(id, select.value || null);
          fill();
        },
      },
      make("option", { value: "" }, say.table.any),
      values.map((value) => make("option", { value, selected: value === keptChoice(id) }, value)),
    );
    return { of, select, shown: make("span", {}, make("label", { for: id }, label), select) };
  });

  function fill(): void {
    const chosen = controls.flatMap(({ of, select: { value } }) => (value === "" ? [] : { of, value }));
    const rows = spec.rows.filter((row) => chosen.every(({ of, value }) => of(row) === value));
    holder.replaceChildren(table({ ...spec, rows }, order));
    count.textContent =
      chosen.length === 0 ? "" : say.table.shown(numberWords(rows.length), numberWords(spec.rows.length)) + sum(rows);
  }

  fill();
  const shown = controls.map((control) => control.shown);
  return make("div", {}, shown.length > 0 && make("div", { class: "choices" }, shown, count), holder);
}
