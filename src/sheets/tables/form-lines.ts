import type { GridRow } from "../grid.ts";
import { parseHeader } from "../words/parse-header.ts";
import { nameIn } from "./header-rows.ts";

/** What the lines of a form above a list say of the one battery that was tested, of the device that it is in, or of what was ordered of whom, as written. */
export interface FormAbove {
  serial?: string;
  device?: string;
  item?: string;
  supplier?: string;
  order?: string;
  arrives?: string;
  ratedAh?: string;
  ratedWh?: string;
  ratedMinutes?: string;
}

/** Lines above a header that may belong to its form. */
const MOST_LINES = 12;
/** What parts several labels in one cell: blanks, or one before a word with a colon. */
const BETWEEN_LABELS = /\s{3,}|\s+(?=\p{Lu}\p{L}*:\s)/u;
/** A label and its value in one cell. */
export const LABEL_AND_VALUE = /^([^:]{2,30}):\s+(\S.*)$/;
/** Where the name of a device ends in a title: "AED-1 - Main hall". */
const BEHIND_NAME = /\s+[-–—(|/]|,/;
const RATED: readonly [keyof FormAbove, RegExp][] = [
  ["ratedAh", /\d\s*m?ah$/i],
  ["ratedWh", /\d\s*wh$/i],
  ["ratedMinutes", /\d\s*min\w*$/i],
];

/** Labels and values of a line of a form ("Serial: BT-3001", or "Serial:" beside it, or several in one cell); null for other lines. */
function pairsIn({ cells }: GridRow): [string, string][] | null {
  const texts = cells.flatMap((cell) => nameIn(cell)?.split(BETWEEN_LABELS) ?? []);
  const pairs: [string, string][] = [];
  for (let at = 0; at < texts.length; at++) {
    const text = texts[at] as string;
    const [, label, value] = LABEL_AND_VALUE.exec(text) ?? [];
    if (label !== undefined && value !== undefined) pairs.push([label, value]);
    else if (text.endsWith(":") && at + 1 < texts.length) pairs.push([text, texts[++at] as string]);
    else return null;
  }
  return pairs.length > 0 ? pairs : null;
}

/** True for a line of a form, which heads no columns. */
export function isFormLine(row: GridRow): boolean {
  return pairsIn(row) !== null;
}

/** True for a line that names one device by its number: "AED-1", "Monitor 3 (ED)". */
function titlesDevice(text = ""): boolean {
  const { says, things, index, coverage } = parseHeader(text.split(BEHIND_NAME)[0]!);
  return things === "device" && says === "" && index !== null && coverage === 1;
}

/** What the lines of a form right above a header say of all that stands below it. */
export function formAbove(rows: readonly GridRow[], at: number): FormAbove {
  const form: FormAbove = {};
  for (let above = at - 1; above >= 0 && above >= at - MOST_LINES; above--) {
    const row = rows[above] as GridRow;
    const pairs = pairsIn(row);
    const texts = pairs === null ? row.cells.flatMap((cell) => nameIn(cell) ?? []) : [];
    if (pairs === null && texts.length !== 1) break;
    if (titlesDevice(texts[0])) form.device ??= texts[0]!.split(BEHIND_NAME)[0]!;
    for (const [label, value] of pairs ?? []) {
      const { says, things } = parseHeader(label);
      const rated = RATED.find(([, unit]) => unit.test(value));
      if (/^(battery)?$/.test(things) && /^(serial|id|)$/.test(says) && says + things !== "") form.serial ??= value;
      else if (things === "device" && /^(serial|id|name|)$/.test(says)) form.device ??= value;
      else if (rated && /rated|capacity/.test(says)) form[rated[0]] ??= value;
      else if (things === "" && /^(supplier|order|arrives)$/.test(says)) form[says as "order"] ??= value;
      else if (things === "item" && says === "" && /\p{L}{3}/u.test(value)) form.item ??= value;
    }
  }
  return form;
}
