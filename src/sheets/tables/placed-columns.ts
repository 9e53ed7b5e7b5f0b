import { columnOfField, sheetSpec } from "../../fleet/columns.ts";
import { assign } from "./assign.ts";
import { fieldSource } from "./field-source.ts";
import { impliedItem } from "./group-outputs.ts";
import { IS_SUM } from "./lists-beside.ts";
import { namesPlace } from "./named-places.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** The share of a column's cells that are numbers where it counts what lies at a place. */
const ALL_NUMBERS = 0.99;
/** Words that say of a column that its numbers are names. */
const NUMBERS_NAME = /#|\b(no|nr|id|num\w*|code)\b|n[°º]/i;
/** What stands for a vehicle beside places: "Store, M1, M2". */
const CODE = /^\p{L}{1,5}[ -]?\d+$/u;
/** Words before the name of a place. */
const ON_OR_IN = /^([io]n|im|auf|au|en) /i;

/** What a stock list with a column of counts for each place yields: a row for each count; null for other tables. */
export function placedOutputs(views: readonly ColumnView[]): Output[] | null {
  const isOne = ({ name, meaning, groupSubject, profile }: ColumnView, coded: boolean) =>
    profile.numbers >= ALL_NUMBERS &&
    (((namesPlace(name) || (meaning.says === "" && (ON_OR_IN.test(name) || (coded && CODE.test(name))))) &&
      !NUMBERS_NAME.test(name)) ||
      (meaning.says === "quantity" && isPlace(groupSubject)));
  const beside = views.some((view) => isOne(view, false));
  const places = views.filter((view) => isOne(view, beside));
  // "Shelf" alone may number it
  const [only] = places;
  if (places.length < 2 && !(only && ON_OR_IN.test(only.name) && only.profile.severalEach)) return null;
  const sheet = sheetSpec("dated_stock");
  // what else stands below a place, such as who counted there, is not of every row, and a count of all is no place's
  const others = views.filter(
    (view) => !places.includes(view) && !isPlace(view.groupSubject) && !IS_SUM.test(view.name),
  );
  const fields = assign(sheet, others);
  const has = (name: string) => fields.some(({ spec }) => spec.name === name);
  // "Pads expiring" names the item whose dates stand below it
  const named = has("item") ? {} : { item: impliedItem(others) };
  if (named.item === "" || !has("expiry") || has("quantity") || has("place")) return null;
  const quantity = columnOfField(sheet, "quantity");
  return places.map((view) => ({
    sheet,
    fields: [...fields, fieldSource(quantity, view, 6)],
    implied: { place: isPlace(view.groupSubject) ? view.groupSubject : view.name.trim(), ...named },
    own: [view.column],
  }));
}

/** True for the head of a group of columns that names a place. */
function isPlace(group: string): boolean {
  return group !== "" && namesPlace(group);
}
