import type { GridRow } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { textAt, textsAt } from "../values/cell-text.ts";
import { isDate } from "../values/date-text.ts";
import { readNumber } from "../values/number-text.ts";
import { foldAccents } from "../words/fold.ts";
import { parseHeader, tellsStatus } from "../words/parse-header.ts";
import type { Filled } from "./filled.ts";

/** Columns (0-based, -1 for none) of an order list that say what of an order has come, when, and how the order stands. */
export interface SettledBy {
  received: number;
  receivedOn: number;
  status: number;
  remarks: number;
}

/** What headers say of what has come; "delivery" alone is when it is to come. */
const HAS_COME = /^(install( quantity)?|arrives quantity)$/;
const SETTLED =
  /received|closed|cancel|complete|delivered|geliefert|erledigt|abgeschlossen|storniert|livree?\b|recue?\b|annule|solde|cloture|recibid|entregad|cerrad|anulad|geleverd|ontvangen|afgesloten|ricevut|consegnat|annullat|chius|recebid|fechad/;
const NOT_YET = /not|part|nicht|teil|non|no |niet|deels|parzial|parcial|\d (of|von|de) \d/;
/** How many have come: "4 of 10 received", "part delivered (4)". */
const PART_CAME = /^(?:(?:part|teil)[a-z (]+(?=\d+(?:\)| stk|$))|(?=\d+ (?:of|von|de) \d))(\d+)/;

/** What a remark must begin with, to say the same of an order. */
const REMARKED = /^(cancel|received|delivered|storniert|geliefert|annul|livr|recu|recibid|entregad|anulad)/;
const REMARKS = /^(note|rem|com|bem|anm|obs)/;

/** The columns that settle a table's orders; none where it lists what is outstanding, or no orders. */
export function settledBy({ header, rows }: Table, { sheet, fields }: Output): SettledBy {
  const none = { received: -1, receivedOn: -1, status: -1, remarks: -1 };
  const quantity = fields.find(({ spec }) => spec.field === "quantity")?.columns[0];
  if (sheet.kind !== "on_order" || quantity === undefined) return none;
  if (parseHeader(header[quantity] ?? "").says.includes("outstanding")) return none;
  const read = new Set(fields.flatMap(({ columns }) => columns));
  const found = { ...none };
  header.forEach((name, column) => {
    if (name === null) return;
    const meaning = parseHeader(name);
    // "PO / status" heads both
    if (meaning.says === "order status") found.status = column;
    if (read.has(column)) return;
    if (tellsStatus(meaning)) found.status = column;
    if (REMARKS.test(meaning.words)) found.remarks = column;
    if (!HAS_COME.test(meaning.says)) return;
    const texts = textsAt(rows, column);
    const numbers = texts.filter((text) => readNumber(text, ".") !== null && !isDate(text));
    if (texts.length > 0 && numbers.length * 2 > texts.length) found.received = column;
    else if (texts.some(isDate)) found.receivedOn = column;
  });
  return found;
}

/**
 * Takes off an order what has come of it: stock counts that, and no order brings it again.
 *
 * @returns why nothing of the order is still to come; null where some is
 */
export function settleOrder(
  values: Record<string, unknown>,
  record: GridRow,
  { received, receivedOn, status, remarks }: SettledBy,
): Filled | null {
  const said = (column: number) => foldAccents(textAt(record, column)).toLowerCase();
  const standing = said(status);
  if (SETTLED.test(standing) && !NOT_YET.test(standing))
    return settled(`The order's status is "${textAt(record, status)}".`);
  const remark = said(remarks);
  if (REMARKED.test(remark) && !NOT_YET.test(remark))
    return settled(`A remark on the order says "${textAt(record, remarks)}".`);
  if (standing !== "" && values.order === textAt(record, status))
    values.order = textAt(record, status)
      .split(/\s[/–-]\s|[,;(]/)[0]!
      .trim();
  const [, part = ""] = PART_CAME.exec(standing) ?? PART_CAME.exec(remark) ?? [];
  const come = readNumber(textAt(record, received) || part, ".")?.value ?? null;
  if (come !== null && typeof values.quantity === "number") {
    if (come >= values.quantity) return settled(`All ${values.quantity} ordered have come.`);
    if (come > 0) values.quantity -= come;
    return null;
  }
  return isDate(textAt(record, receivedOn)) ? settled(`The order came on ${textAt(record, receivedOn)}.`) : null;
}

const settled = (message: string): Filled => ({ code: "order-settled", message });
