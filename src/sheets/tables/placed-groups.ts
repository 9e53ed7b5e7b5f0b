import { sheetSpec } from "../../fleet/columns.ts";
import { parseHeader } from "../words/parse-header.ts";
import { assign } from "./assign.ts";
import { namesPlace } from "./named-places.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** What a column below a place may say of what lies there. */
const OF_STOCK = /^(quantity|expiry|lot|expiry lot)$/;

/**
 * What a stock list yields whose columns stand in a group for each place ("Medic 1: Qty, Exp; Medic 2: Qty, Exp"): a row for
 * each item and place; null for other tables.
 */
export function placedGroups(views: readonly ColumnView[]): Output[] | null {
  const groups = new Map<string, ColumnView[]>();
  for (const view of views) {
    const { groupSubject, meaning, things, index } = view;
    if (!OF_STOCK.test(meaning.says) || things !== "" || !mayBePlace(groupSubject)) continue;
    if (index !== null && meaning.index !== null) continue;
    groups.set(groupSubject, [...(groups.get(groupSubject) ?? []), view]);
  }
  const dated = [...groups].filter(([, own]) => own.some(({ meaning }) => meaning.says.includes("expiry")));
  if (dated.length < 2 || dated.length < groups.size) return null;
  const sheet = sheetSpec("dated_stock");
  const shared = views.filter(({ groupSubject }) => !groups.has(groupSubject));
  const outputs = dated.map(([place, own]): Output => {
    const fields = assign(sheet, [...shared, ...own]);
    return { sheet, fields, implied: { place }, own: own.map(({ column }) => column) };
  });
  const has = ({ fields }: Output, field: string) => fields.some(({ spec }) => spec.field === field);
  return outputs.every((output) => has(output, "item") && has(output, "expiry") && !has(output, "place"))
    ? outputs
    : null;
}

/** True for the head of a group that names a place, or something that no word of is known. */
function mayBePlace(group: string): boolean {
  const { says, things, variant } = parseHeader(group);
  return /\p{L}{2}/u.test(group) && (namesPlace(group) || (says === "" && things === "" && variant === ""));
}
