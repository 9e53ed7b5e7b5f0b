import type { GridRow } from "../grid.ts";
import { fillsOne, textAt } from "../values/cell-text.ts";
import { readNumber } from "../values/number-text.ts";
import { columnsOf, type Output } from "./table.ts";

/*
 * A battery with a serial and an expiry is read twice, as a pack and as dated stock. Its serial says that it is one
 * (src/fleet/packs-in-stock.ts): the expiry then ends the pack, and is no need and no stock besides.
 */

/**
 * Outputs in which a battery goes by one item: where no column names it, the pack takes the name that its header gave the
 * dated unit. Else both would be bought.
 */
export function withOneItem(outputs: readonly Output[]): Output[] {
  return outputs.map((packs) => {
    const [serial] = columnsOf(packs, "serial");
    if (packs.sheet.kind !== "packs" || serial === undefined || columnsOf(packs, "item").length > 0) return packs;
    const dated = outputs.find(
      (output) => output.sheet.kind === "dated_stock" && columnsOf(output, "serial")[0] === serial,
    );
    const item = dated?.implied.item;
    return item === undefined ? packs : { ...packs, implied: { ...packs.implied, item } };
  });
}

/**
 * Tells lines of a list of all sorts whose battery is dated stock alone: one with an expiry and no serial, or one that
 * counts none or several batteries, whose number is then their lot's.
 */
export function isDatedOnly(packs: Output, dated: Output): (record: GridRow) => boolean {
  const serial = columnsOf(packs, "serial");
  const expiry = columnsOf(dated, "expiry");
  const quantity = columnsOf(dated, "quantity");
  const isOne = (record: GridRow) =>
    quantity.every((column) => (readNumber(textAt(record, column), ".")?.value ?? 1) === 1);
  return (record) => fillsOne(expiry, record) && !(fillsOne(serial, record) && isOne(record));
}
