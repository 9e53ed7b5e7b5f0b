import type { SheetKind, SheetSpec } from "../../fleet/columns.ts";
import { POINTS } from "../words/meanings.ts";
import { saysUse } from "../words/says-use.ts";
import type { FormAbove } from "./form-lines.ts";
import { impliedItem } from "./group-outputs.ts";
import type { Heading } from "./heading.ts";
import { impliedByPrice } from "./implied-by-price.ts";
import { isPriceList } from "./price-lists.ts";
import type { ColumnView } from "./score-column.ts";
import { countsStock, isPurchase, logsOrders } from "./speaks-for.ts";
import type { FieldSource, Output } from "./table.ts";

/** Points above which a column's header names it, and does not just not speak against it. */
const NAMED_OUTRIGHT = 3.5;

/** What a form above a list says of its rows, by their kind. */
const FROM_FORM: Partial<Record<SheetKind, Readonly<Record<string, keyof FormAbove>>>> = {
  packs: { device: "device" },
  dated_stock: { place: "device" },
  runtime_tests: { serial: "serial" },
  catalogue: { supplier: "supplier" },
  use_log: { item: "item" },
  on_order: { supplier: "supplier", order: "order", arrives: "arrives" },
};

/** An output with what the lines of a form above its table say of all its rows. */
export function withForm(output: Output, heading: Heading | null): Output {
  const said = Object.entries(FROM_FORM[output.sheet.kind] ?? {}).flatMap(([field, line]): [string, string][] => {
    const value = heading?.form[line];
    const known = output.implied[field] !== undefined || output.fields.some(({ spec }) => spec.field === field);
    return known || value === undefined ? [] : [[field, value]];
  });
  if (said.length === 0) return output;
  return {
    ...output,
    implied: { ...output.implied, ...Object.fromEntries(said) },
    fromHeading: [...(output.fromHeading ?? []), ...said.map(([field]) => field)],
  };
}

/** What columns read as the fields of one sheet yield, with what stands above them; null where they are no such sheet. */
export function mainOutput(
  sheet: SheetSpec,
  fields: FieldSource[],
  views: readonly ColumnView[],
  heading: Heading | null,
): Output | null {
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  const output: Output = { sheet, fields, implied: {}, own: fields.flatMap(({ columns }) => columns) };
  if (sheet.kind === "dated_stock" && has("label")) return output;
  if (sheet.kind === "dated_stock" && has("expiry") && !has("item")) {
    const item =
      impliedItem(views.filter(({ column }) => output.own.includes(column))) ||
      (heading?.form.item ?? heading?.title?.subject ?? "");
    if (item === "") return null;
    output.implied.item = item;
  }
  if (sheet.kind === "runtime_tests" && !has("date") && heading?.testedOn) {
    output.implied.date = heading.testedOn;
    output.fromHeading = ["date"];
  }
  Object.assign(output, withForm(output, heading));
  if (sheet.kind === "catalogue") {
    if (logsOrders(views)) return null;
    Object.assign(output.implied, impliedByPrice(fields, views));
  }
  if (sheet.kind === "on_order" && has("expiry") && !has("order") && countsStock(output, views)) return null;
  if (isPurchase(output, views) && ![heading?.text ?? "", ...views.map(({ name }) => name)].some(saysUse)) return null;
  // Item and quantity alone may be stock, a count or a wish: only their own sheet's names say that they are ordered.
  // Stock has a supplier too: what has an expiry is on order where an order's number or its arrival is named.
  const named = (field: string) => fields.some(({ spec, points }) => spec.field === field && points > NAMED_OUTRIGHT);
  const { order, arrives } = output.implied;
  const ordered = has("expiry")
    ? named("order") || named("arrives")
    : has("order") ||
      has("arrives") ||
      order !== undefined ||
      arrives !== undefined ||
      logsOrders(views) ||
      (has("supplier") && !views.some(({ meaning }) => meaning.says === "date"));
  if (
    sheet.kind === "on_order" &&
    !ordered &&
    (fields.length < views.length || fields.some(({ points }) => points < POINTS.canonical))
  )
    return null;
  // A price list often leaves the kind to the item's name; it is a price list by what else it says.
  const priced = sheet.kind === "catalogue" && isPriceList(fields);
  const complete = sheet.columns.every(
    ({ required, field }) =>
      !required || has(field) || output.implied[field] !== undefined || (priced && field === "kind"),
  );
  return complete && (sheet.oneOf.length === 0 || sheet.oneOf.some(has)) ? output : null;
}
