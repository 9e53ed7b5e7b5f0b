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
  const chosen = new Map<string, string>();
  const holder = make("div");
  const order = {};
  const count = make("output", { class: "count" });
  const controls = filters.flatMap((filter) => {
    const values = [...new Set(spec.rows.map(filter.of).filter((value) => value !== null))];
    if (values.length < 2) return [];
    values.sort(compareNames);
    const before = keptChoice(filter.id);
    if (before !== null && values.includes(before)) chosen.set(filter.id, before);
    const select = make(
      "select",
      {
        id: filter.id,
        change: () => {
          if (select.value === "") chosen.delete(filter.id);
          else chosen.set(filter.id, select.value);
          keepChoice(filter.id, select.value || null);
          fill();
        },
      },
      make("option", { value: "" }, say.table.any),
      values.map((value) => make("option", { value, selected: value === chosen.get(filter.id) }, value)),
    );
    return [make("span", {}, make("label", { for: filter.id }, filter.label), select)];
  });

  function fill(): void {
    const rows = spec.rows.filter((row) =>
      filters.every((filter) => {
        const wanted = chosen.get(filter.id);
        return wanted === undefined || filter.of(row) === wanted;
      }),
    );
    holder.replaceChildren(table({ ...spec, rows }, order));
    count.textContent =
      chosen.size === 0 ? "" : say.table.shown(numberWords(rows.length), numberWords(spec.rows.length)) + sum(rows);
  }

  fill();
  return make("div", {}, controls.length > 0 && make("div", { class: "choices" }, controls, count), holder);
}
