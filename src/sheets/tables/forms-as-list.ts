import { listed } from "../../fleet/listed.ts";
import { sortBy } from "../../maths/sort-by.ts";
import type { GridRow } from "../grid.ts";
import { bandsOf, type Pairs, pairsIn } from "./form-pairs.ts";
import type { ListInside } from "./list-inside.ts";
import { nameColumns } from "./name-columns.ts";

/** How many forms are told by the lines on which they start. */
const FORMS_NAMED = 3;

/**
 * A sheet of forms, each label left of its value, as a list with a line for each form; null for any other.
 *
 * @param labelled  the labels are known as such, so that one column of them is a form
 */
export function formsAsList(rows: readonly GridRow[], labelled: boolean): ListInside | null {
  const columns = nameColumns(rows, labelled);
  if (columns === null) return null;
  const forms: { line: number; pairs: Pairs }[] = [];
  for (const band of bandsOf(rows, columns[0]!)) {
    const parts: Pairs[] = [];
    for (const [at, column] of columns.entries()) {
      const pairs = pairsIn(band, column, columns[at + 1] ?? Infinity);
      if (pairs === null) return null;
      const last = parts.at(-1);
      // labels that stand beside each other again are another form's
      if (last === undefined || [...pairs.keys()].some((key) => last.has(key))) parts.push(pairs);
      else for (const [key, pair] of pairs) last.set(key, pair);
    }
    forms.push(...parts.map((pairs) => ({ line: band[0]!.line, pairs })));
  }
  // in the order of reading: what stands in one line of a form belongs together
  const all = sortBy(
    forms.flatMap(({ pairs }) => [...pairs.entries()]),
    ([, { at }]) => at,
  );
  const labels = new Map(all.map(([key, { label }]) => [key, label]));
  const header = { line: 1, cells: [...labels.values()] };
  const records = forms.map(({ pairs }, at) => ({
    line: at + 2,
    cells: [...labels.keys()].map((key) => pairs.get(key)?.value ?? null),
  }));
  const starts = forms
    .slice(0, FORMS_NAMED)
    .map(({ line }, at) => `line ${at + 2} starts in line ${line} of the sheet`);
  const more = forms.length > FORMS_NAMED ? ["so on"] : [];
  return { rows: [header, ...records], name: "as a list", where: `In the list, ${listed([...starts, ...more])}.` };
}
