import { sheetSpec } from "../../fleet/columns.ts";
import type { HeaderRows } from "../tables/header-rows.ts";
import { besideOutput, ratingOutput } from "../tables/lists-beside.ts";
import { listedPartOf } from "../tables/supply-lists.ts";
import type { FieldSource, Output } from "../tables/table.ts";
import type { CellPart } from "../values/lot-and-date.ts";
import { parseHeader } from "../words/parse-header.ts";
import { columnKeys, sameKey } from "./column-keys.ts";
import type { ColumnsFile, MappedTable } from "./columns-file.ts";

/** The least share of a mapping's named columns that a row must hold to be its header. */
const MIN_SHARE = 0.6;

/** A mapped table's header found in a sheet. */
export interface MappedHeader {
  rows: HeaderRows;
  mapped: MappedTable;
  share: number;
}

/** The table of a columns file whose columns a header names best, of the same file and tab first; null where none. */
export function mappedHeader(
  candidates: readonly HeaderRows[],
  columns: ColumnsFile,
  file: string,
  sheet: string | null,
): MappedHeader | null {
  let best: (MappedHeader & { near: number }) | null = null;
  for (const rows of candidates) {
    const keys = new Set(columnKeys(rows.header, rows.groups).flatMap((key) => (key === null ? [] : [sameKey(key)])));
    for (const mapped of columns.tables) {
      const names = namesOf(mapped);
      if (names.length === 0) continue;
      const share = names.filter((name) => keys.has(sameKey(name))).length / names.length;
      const near = (mapped.file === file ? 1 : 0) + (mapped.sheet === sheet ? 1 : 0);
      if (share < MIN_SHARE || (best && (share < best.share || (share === best.share && near <= best.near)))) continue;
      best = { rows, mapped, share, near };
    }
  }
  return best;
}

function namesOf({ rows }: MappedTable): string[] {
  return [...new Set(rows.flatMap(({ columns }) => Object.values(columns)))];
}

/** The outputs that a mapping asks for, and what of the sheet no longer fits it. */
export function mappedOutputs({ rows: { header, groups }, mapped }: MappedHeader): {
  outputs: Output[];
  changes: string[];
} {
  const keys = columnKeys(header, groups);
  const at = new Map(keys.flatMap((key, column) => (key === null ? [] : [[sameKey(key), column] as const])));
  const missing = namesOf(mapped).filter((name) => !at.has(sameKey(name)));
  const known = new Set([...namesOf(mapped), ...mapped.unread].map(sameKey));
  const added = keys.filter((key): key is string => key !== null && !known.has(sameKey(key)));
  const outputs = mapped.rows.flatMap(({ kind, item, columns, thing }): Output[] => {
    const sheet = sheetSpec(kind);
    const fields: FieldSource[] = [];
    // a column named for the item and its number lists several in a cell
    const listing = columns.item !== undefined && columns.item === columns.quantity ? columns.item : null;
    const lists = listing === null ? undefined : at.get(sameKey(listing));
    for (const spec of sheet.columns) {
      const name = columns[spec.name];
      const column = name === undefined ? undefined : at.get(sameKey(name));
      if (column === undefined) continue;
      fields.push({
        spec,
        columns: [column],
        by: "mapping",
        headerUnit: parseHeader(header[column] ?? "").unit,
        part:
          column === lists || (name === columns.item && (name === columns.lot || name === columns.expiry))
            ? listedPartOf(kind, spec.field)
            : columns.lot === undefined || columns.lot !== columns.expiry
              ? null
              : partFor(spec.name),
        points: 10,
      });
    }
    const implied: Record<string, string> = item === undefined ? {} : { item };
    const labelled = fields.some(({ spec }) => spec.field === "label");
    const complete =
      labelled ||
      sheet.columns.every(
        ({ required, field }) =>
          !required || implied[field] || (thing && field === "item") || fields.some(({ spec }) => spec.field === field),
      );
    if (complete)
      return [{ sheet, fields, implied, own: [], ...(thing && { thing }), ...(lists !== undefined && { lists }) }];
    const list = mapped.rows.find((row) => row.kind === "packs" || row.kind === "dated_stock");
    const named = fields.find(({ spec }) => spec.field === "item");
    if (kind !== "catalogue") return [];
    const beside =
      named === undefined ? ratingOutput(fields) : list && besideOutput(named, fields, list.kind === "packs");
    return beside ? [beside] : [];
  });
  for (const output of outputs) output.own = ownColumns(output, outputs);
  const changes = [...missing.map((name) => `"${name}" is gone`), ...added.map((name) => `"${name}" is new`)];
  return { outputs, changes };
}

/** What of a column named for both the lot and the expiry a field means. */
function partFor(field: string): CellPart | null {
  return field === "expiry" ? "date" : field === "lot" ? "lot" : null;
}

/** Columns that this output alone reads; all of its columns where it shares every one. */
function ownColumns(output: Output, outputs: readonly Output[]): number[] {
  const all = output.fields.flatMap(({ columns }) => columns);
  const elsewhere = new Set(
    outputs.filter((other) => other !== output).flatMap(({ fields }) => fields.flatMap(({ columns }) => columns)),
  );
  const own = all.filter((column) => !elsewhere.has(column));
  return own.length > 0 ? own : all;
}
