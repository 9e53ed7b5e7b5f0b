import { sheetSpec } from "../../fleet/columns.ts";
import { assign } from "./assign.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** What a numbered column may say of one of a line's lots; nothing where it names its item. */
const OF_A_LOT = /^(lot|expiry|quantity|expiry lot|made|opened|place|site|)$/;

/** What a list with several lots of an item in a line yields ("Lot 1, Exp 1, Qty 1, Lot 2, ..."): a row a lot; null for others. */
export function numberedLots(views: readonly ColumnView[]): Output[] | null {
  const numbered = views.filter(
    ({ index, things, meaning }) =>
      index !== null && (things === "item" || (things === "" && meaning.says !== "")) && OF_A_LOT.test(meaning.says),
  );
  const numbers = new Set(numbered.map(({ index }) => index));
  // what was counted several times is there once
  if (numbers.size < 2 || numbered.every(({ meaning }) => meaning.says === "quantity")) return null;
  const counted = numbered.some(({ meaning }) => meaning.says === "quantity");
  // a count of all beside those of each lot is no lot's
  const shared = views.filter((view) => !numbered.includes(view) && !(counted && view.meaning.says === "quantity"));
  const sheet = sheetSpec("dated_stock");
  const outputs = [...numbers].map((number): Output => {
    const lot = numbered.filter(({ index }) => index === number);
    return { sheet, fields: assign(sheet, [...shared, ...lot]), implied: {}, own: lot.map(({ column }) => column) };
  });
  const has = ({ fields }: Output, field: string) => fields.some(({ spec }) => spec.field === field);
  return outputs.every((output) => has(output, "item") && has(output, "expiry")) ? outputs : null;
}
