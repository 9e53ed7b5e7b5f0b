import { foldAccents } from "../words/fold.ts";
import type { ColumnView } from "./score-column.ts";
import { countsStock } from "./speaks-for.ts";
import type { Output, Unclear } from "./table.ts";

/** Words that tell a log of what came in, in a header or above the list. */
const CAME_IN =
  /deliver(y note|ed by|ies|y log)|goods.(in\b|rec)|\bgrn\b|receipts?\b|(qty|quantity|units) received|received (qty|quantity)|wareneing|lieferschein|bons? de livraison|livraisons|receptions?|albaran|entregas|recepciones|pakbon/;
const A_DATE = /^(install|date|arrives)$/;

/**
 * Why a log of deliveries is not read as stock: what came may long be used up. Null for other lists, and where a column
 * says where the units are or how many are left.
 *
 * @param above  the lines above the table and the name of its tab
 */
export function deliveredOnly(
  outputs: readonly Output[],
  views: readonly ColumnView[],
  above: readonly string[],
): Unclear | null {
  const [stock, ...others] = outputs.filter(({ beside }) => !beside);
  const has = (field: string) => stock?.fields.some(({ spec }) => spec.field === field);
  // what of an order has not come yet is listed beside what has
  const apart = others.some(({ sheet }) => sheet.kind !== "on_order");
  if (apart || (stock && (stock.sheet.kind !== "dated_stock" || has("place") || countsStock(stock, views))))
    return null;
  const tells = (texts: readonly string[]) => texts.some((text) => CAME_IN.test(foldAccents(text).toLowerCase()));
  const dated = views.some(({ meaning, profile }) => A_DATE.test(meaning.says) && profile.dates > 0.5);
  const counted = views.some(({ meaning }) => /quantity/.test(meaning.says));
  if (!counted || !(tells(above) || (dated && tells(views.map(({ name }) => name))))) return null;
  return {
    message: "The list says what was delivered and when, not what is left of it: none of it counts as stock.",
    fix: "Give a count of what is there now, with its expiry; if all of it still is, add a column that says where.",
  };
}
