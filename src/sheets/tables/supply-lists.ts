import { type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import { cellAt, type GridRow } from "../grid.ts";
import { cellText, meansEmpty, textsAt } from "../values/cell-text.ts";
import { type ListedPart, listedIn, listedPart, listsSeveral, listsSupplies } from "../values/listed-supplies.ts";
import { type HeaderMeaning, parseHeader } from "../words/parse-header.ts";
import { saysUse } from "../words/says-use.ts";
import { VOCABULARY } from "../words/vocabulary.ts";
import { assign } from "./assign.ts";
import { fieldSource, sharedField } from "./field-source.ts";
import type { Heading } from "./heading.ts";
import type { Interpreted } from "./interpretation.ts";
import type { ColumnView } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

/** What heads a column whose cells may list supplies: their place, their sort, or nothing known. */
const MAY_LIST = /^(contents|item|uses|quantity|place|site|category|type|value|unit| )*$/;
/** Rows in which lists are looked for, and the share of the column's cells that must be such. */
const LOOKED_AT = 40;
const MOSTLY = 0.6;
/** What such a column speaks for its header. */
const LIST_POINTS = 12;

/** Which part of a cell that lists supplies each field reads. */
const PARTS: Partial<Record<SheetKind, [field: string, part: ListedPart][]>> = {
  dated_stock: [
    ["item", "listed item"],
    ["expiry", "listed expiry"],
    ["lot", "listed lot"],
    ["quantity", "listed count"],
  ],
  use_log: [
    ["item", "listed item"],
    ["quantity", "listed count"],
  ],
};

/** The part of a listing cell that a field of a sheet reads; null where it reads none. */
export function listedPartOf(kind: SheetKind, field: string): ListedPart | null {
  return PARTS[kind]?.find(([name]) => name === field)?.[1] ?? null;
}

/** True for a column whose cells list supplies with their counts or dates: "2 x adult pads exp 03/2027; 1 roll paper". */
export function holdsLists({ says, words }: HeaderMeaning, rows: readonly GridRow[], column: number): boolean {
  if (!MAY_LIST.test(says)) return false;
  const pads = wordForPads(words);
  let filled = 0;
  let lists = 0;
  let several = false;
  for (let at = 0; at < rows.length && filled < LOOKED_AT; at++) {
    const cell = cellAt(rows[at] as GridRow, column);
    if (typeof cell === "string" ? meansEmpty(cellText(cell)) : cell === null || cell === undefined) continue;
    filled++;
    // nearly all columns end here
    if (filled === 1 && !(typeof cell === "string" && /\d/.test(cell) && /\p{L}{2}/u.test(cell))) return false;
    if (!listsSupplies(cell, pads)) continue;
    lists++;
    several ||= listsSeveral(cell);
  }
  return several && lists >= filled * MOSTLY;
}

/** What tells of one item in a column of its own. */
const OF_ONE_ITEM = /^(expiry|price|quantity|serial)$/;

/**
 * What the columns beside a column of items say, where they tell of one item in each line: of "Item, Quantity, Expiry" the
 * first is a name, whatever looks like counts in it ("ECG electrodes 30, adult"). Null for others, which may list several.
 */
export function saidOfItem(
  { things, says }: HeaderMeaning,
  header: readonly (string | null)[],
  column: number,
): string[] | null {
  const others = header.flatMap((name, at) => (name === null || at === column ? [] : parseHeader(name).says));
  return things === "item" && says === "" && others.some((other) => OF_ONE_ITEM.test(other)) ? others : null;
}

/**
 * The parts of a column's cells that name one item each with its lot or expiry ("Adult pads (L1, exp 03/2027)"), and what
 * each part says; null for others.
 *
 * @param others  what is said of the item in other columns
 */
export function namedParts(
  others: readonly string[],
  rows: readonly GridRow[],
  column: number,
): [ListedPart, string][] | null {
  const texts = textsAt(rows.slice(0, LOOKED_AT), column);
  const hold = (part: ListedPart, what: string): [ListedPart, string][] =>
    texts.filter((text) => listedPart(text, part)).length > texts.length * MOSTLY && !others.includes(what)
      ? [[part, what]]
      : [];
  const parts = [...hold("listed expiry", "expiry"), ...hold("listed lot", "lot")];
  return parts.length > 0 && texts.every((text) => listedIn(text).length === 1)
    ? [["listed item", ""], ...parts]
    : null;
}

/** The word for pads in a header, in small letters; empty where there is none. */
function wordForPads(words: string): string {
  return words.split(" ").find((word) => VOCABULARY.get(word) === "pads") ?? "";
}

/** How a table was read, with the rows that its columns of lists yield besides. */
export function withLists(
  { best, tied }: Interpreted,
  lists: readonly ColumnView[],
  others: readonly ColumnView[],
  heading: Heading | null,
): Interpreted {
  const outputs = best === null || tied.length > 0 ? [] : best.outputs;
  const listed = lists.map((view) => listOutput(view, others, outputs, heading));
  const points = (best?.points ?? 0) + listed.length * LIST_POINTS;
  return { best: { outputs: [...outputs, ...listed], points }, tied: [], unclear: null };
}

/**
 * What a column whose cells list supplies yields: a row for each of a cell's parts, at the device or place of the line.
 *
 * @param others  the table's other columns
 * @param outputs  what the other columns yield
 */
function listOutput(
  view: ColumnView,
  others: readonly ColumnView[],
  outputs: readonly Output[],
  heading: Heading | null,
): Output {
  const used = sheetSpec("use_log");
  const date = assign(used, others).find(({ spec }) => spec.field === "date");
  const isUse = date !== undefined && saysUse(`${view.name} ${heading?.text ?? ""}`);
  const sheet = isUse ? used : sheetSpec("dated_stock");
  const fields = sheet.columns.flatMap((spec): FieldSource[] => {
    const part = listedPartOf(sheet.kind, spec.field);
    return part === null ? [] : [{ ...fieldSource(spec, view, 6), part }];
  });
  const device = outputs
    .filter(({ sheet: { kind } }) => kind === "devices" || kind === "packs")
    .flatMap((output) => output.fields)
    .find(({ spec }) => spec.field === "device");
  const place =
    device === undefined
      ? assign(sheet, others).find(({ spec }) => spec.field === "place")
      : sharedField(device, sheet, "place");
  return {
    sheet,
    fields: [...fields, ...(place ? [place] : []), ...(isUse ? [date] : [])],
    implied: {},
    own: [view.column],
    lists: view.column,
    listsPads: wordForPads(view.meaning.words),
  };
}
