import type { GridRow } from "../grid.ts";
import type { Output, Table } from "../tables/table.ts";
import { textAt, textsAt } from "../values/cell-text.ts";
import { readYesNo } from "../values/choice-words.ts";
import { isDate } from "../values/date-text.ts";
import { readNumber } from "../values/number-text.ts";
import { Boxes } from "../values/read-cell.ts";
import { foldAccents } from "../words/fold.ts";
import { parseHeader, tellsStatus } from "../words/parse-header.ts";
import type { Filled } from "./filled.ts";

/** Columns (0-based, -1 for none) of an order list that say what of an order has come, when or whether, and how the order stands. */
export interface SettledBy {
  received: number;
  receivedOn: number;
  status: number;
  remarks: number;
  /** The status where it is listed what is still to come: only that nothing will tells more. */
  ended: number;
}

/** What headers say of what has come; "delivery" alone is when it is to come. */
const HAS_COME = /^(install( quantity)?|arrives quantity)$/;
const ENDED = /cancel|storniert|annull?(e|at)|anulad/;
/** Nothing was ordered, or of what has not come nothing will: "Draft", "4 of 10 received, rest cancelled". */
const NOTHING_MORE = new RegExp(
  `\\b(draft|quot|reject|declin)|(not( yet)?|to be) ordered|\\b(rest|balance|remain|saldo|solde)[a-z ]*(${ENDED.source})`,
);
const SETTLED = new RegExp(
  `${ENDED.source}|received|arrived|fulfil|closed|complete|delivered|geliefert|erledigt|abgeschlossen|livree?\\b|recue?\\b|solde|cloture|rec[ei]bid|entreg(ad|ue)|cerrad|geleverd|ontvangen|afgesloten|ricevut|consegnat|chius|fechad`,
);
const NOT_YET =
  /not|nicht|non|nao |no |niet|\b(to|will|should) be |\b(wird|werden|wordt|sera|sara) |\b(un|in)(?=rec|del|compl)/;
/** A part has come, by a status; a remark must also say that it came, since there are spare parts. */
const PARTLY = /\bpart(?!s)|\bteil|deel|\bdels|parzial|parcial|\d (of|von|de) \d/;
const CAME = /deliv|receiv|ship|liefer|livr|recu|entreg|recib|lever/;
/** How many have come: "part delivered (4)". */
const PART_CAME = /^(?:part|teil)[a-z (]+(\d+)(?=\)| stk|$)/;
/** "4 of 10 received", and "4/10" where 10 were ordered, else it is a day; not "4 of 10 open". */
const SO_MANY_OF = /(?<![\d./-])(\d+) ?(?:\/|of|von|de|sur|van|di) ?(\d+)(?![\d./-])/;

const REMARKS = /^(note|rem|com|bem|anm|obs)/;

/** The columns that settle a table's orders; none where it lists no orders. */
export function settledBy({ header, rows }: Table, { sheet, fields }: Output): SettledBy {
  const none = { received: -1, receivedOn: -1, status: -1, remarks: -1, ended: -1 };
  const quantity = fields.find(({ spec }) => spec.field === "quantity")?.columns[0];
  if (sheet.kind !== "on_order" || quantity === undefined) return none;
  if (parseHeader(header[quantity] ?? "").says.includes("outstanding"))
    return { ...none, ended: header.findIndex((name) => tellsStatus(parseHeader(name ?? ""))) };
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
    if (found.status === -1 && texts.some((text) => PARTLY.test(text.toLowerCase()))) found.status = column;
    const numbers = texts.filter((text) => readNumber(text, ".") !== null && !isDate(text));
    if (texts.length > 0 && numbers.length * 2 > texts.length) found.received = column;
    else if (texts.some((text) => isDate(text) || readYesNo(text) === true)) found.receivedOn = column;
  });
  return found;
}

/**
 * Takes off an order what has come of it: stock counts that, and no order brings it again. What was ordered in boxes came
 * in boxes.
 *
 * @returns why nothing of the order is still to come; the words by which a part has come that they do not count; else null
 */
export function settleOrder(
  values: Record<string, unknown>,
  record: GridRow,
  { received, receivedOn, status, remarks, ended }: SettledBy,
): Filled | string | null {
  const said = (column: number) => foldAccents(textAt(record, column)).toLowerCase();
  if (ENDED.test(said(ended))) return settled(`The order's status is "${textAt(record, ended)}".`);
  const { quantity } = values;
  if (quantity === 0) return settled("None of it is still to come.");
  const inBoxes = quantity instanceof Boxes;
  const ordered = inBoxes ? quantity.count : quantity;
  const partIn = (words: string) => {
    const [, came, all] = SO_MANY_OF.exec(words) ?? [];
    const ofAll = Number(all) === ordered && (CAME.test(words) || !/[a-z]{4}/.test(words));
    return ofAll ? came : PART_CAME.exec(words)?.[1];
  };
  const standing = said(status);
  const remark = said(remarks);
  const part = partIn(said(received)) ?? partIn(standing) ?? partIn(remark);
  const done = (words: string) =>
    part !== undefined || NOT_YET.test(words) || PARTLY.test(words) ? -1 : words.search(SETTLED);
  if (done(standing) !== -1 || NOTHING_MORE.test(standing))
    return settled(`The order's status is "${textAt(record, status)}".`);
  // a remark begins so, and not with "complete set"
  if (done(remark) === 0 && !/^compl/.test(remark))
    return settled(`A remark on the order says "${textAt(record, remarks)}".`);
  if (standing !== "" && values.order === textAt(record, status))
    values.order = textAt(record, status)
      .split(/\s[/–-]\s|[,;(]/)[0]!
      .trim();
  const come = readNumber(part ?? textAt(record, received), ".")?.value ?? null;
  if (come !== null && typeof ordered === "number") {
    const open = ordered - come;
    if (open <= 0) return settled(`All ${ordered} ordered have come.`);
    if (come > 0) values.quantity = inBoxes ? new Boxes(open) : open;
    return null;
  }
  if (PARTLY.test(standing)) return textAt(record, status);
  const whenCame = textAt(record, receivedOn);
  if (isDate(whenCame)) return settled(`The order came on ${whenCame}.`);
  if (readYesNo(whenCame) === true) return settled("The order has come.");
  return PARTLY.test(remark) && CAME.test(remark) ? textAt(record, remarks) : null;
}

const settled = (message: string): Filled => ({ code: "order-settled", message });
