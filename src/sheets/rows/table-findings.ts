import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Table } from "../tables/table.ts";
import { parseHeader } from "../words/parse-header.ts";

/** Findings of what was taken for granted: a bare date for the first day in service, a blank for what stands above it, and more. */
export function notePresumed(
  { grid: { file, sheet }, number, header, headerLines, outputs, carried }: Table,
  log: FindingLog,
): void {
  for (const { spec, columns, by } of outputs.flatMap(({ fields }) => fields)) {
    const [column] = columns;
    const name = header[column!] ?? "";
    if (spec.field !== "inService" || by === "mapping" || parseHeader(name).says !== "date") continue;
    const place = { file, sheet, line: headerLines[0] ?? null, column: column! + 1, value: name };
    const message = `"${shortened(name)}" does not say which day it gives; it was taken for the first day in service.`;
    log.add("date-presumed", place, () => ({ message }), String(number));
  }
  if (carried !== undefined) {
    const value = header[carried] ?? "";
    const place = { file, sheet, line: headerLines[0] ?? null, column: carried + 1, value };
    const message = `Blank cells under "${shortened(value)}" were read as what stands above them.`;
    log.add("carried-down", place, () => ({ message }), String(number));
  }
  for (const presumed of new Set(outputs.map((output) => output.presumed))) {
    if (presumed === undefined) continue;
    const columns = outputs.flatMap((output) => (output.presumed === presumed ? output.own : []));
    const names = columns.map((column) => shortened(header[column] ?? "")).join(", ");
    const place = { file, sheet, line: headerLines[0] ?? null, column: null, value: null };
    const { code, says } = PRESUMED[presumed];
    log.add(code, place, () => ({ message: says(names) }), String(number));
  }
}

/** What is said of columns by what was presumed of them. */
const PRESUMED = {
  uses: {
    code: "uses-presumed",
    says: (names: string) => `Nothing says what the numbers under ${names} count; they were taken for units used.`,
  },
  moves: {
    code: "moves",
    says: () => "The list says from where to where units were carried, so none of them counts as used.",
  },
  "mid-year": {
    code: "year-alone",
    says: (names: string) =>
      `The columns ${names} give years alone; their readings were dated the middle of each year.`,
  },
  packs: {
    code: "packs-presumed",
    says: (names: string) => `Nothing says what ${names} are of; they were taken for batteries.`,
  },
  "named-by-device": {
    code: "battery-unnamed",
    says: (names: string) =>
      `${names}: no column gives these batteries a serial number, so each goes by its device's name, unless a list of packs says what is in the device.`,
  },
} as const;

/** A finding for each column that counts devices, which are then not in the fleet. */
export function noteCounted(
  { grid: { file, sheet }, number, header, headerLines, counted }: Table,
  log: FindingLog,
): void {
  for (const name of counted) {
    const place = { file, sheet, line: headerLines[0] ?? null, column: header.indexOf(name) + 1, value: name };
    const message = `The column "${shortened(name)}" counts devices and names none, so none was added to the fleet.`;
    log.add("devices-counted", place, () => ({ message }), String(number));
  }
}

/** Why no record of the table can be read, with its finding; null where its columns are known. */
export function unknownTable(
  table: Table,
  log: FindingLog,
): { code: "kind-tied" | "unknown-table" | "own-output"; message: string } | null {
  if (table.outputs.length > 0) return null;
  const { file, sheet } = table.grid;
  const place = { file, sheet, line: table.headerLines[0] ?? null, column: null, value: null };
  const names = table.header
    .filter((name) => name !== null)
    .join(", ")
    .slice(0, 120);
  const [code, message] =
    table.ownOutput !== null
      ? (["own-output", `This program wrote the table itself: it is ${table.ownOutput}.`] as const)
      : table.tied
        ? (["kind-tied", `The columns ${names} can be ${table.tied.join(" or ")}.`] as const)
        : table.unclear !== null
          ? (["unknown-table", table.unclear.message] as const)
          : (["unknown-table", `The columns ${names} make up no sheet that is known here.`] as const);
  const fix = table.unclear?.fix;
  log.add(code, place, () => (fix === undefined ? { message } : { message, fix }), String(table.number));
  return { code, message };
}

/** A finding where the sheet no longer fits the columns file that was made for it. */
export function noteChanges({ grid, number, headerLines, changes }: Table, log: FindingLog): void {
  if (changes.length === 0) return;
  const place = { file: grid.file, sheet: grid.sheet, line: headerLines[0] ?? null, column: null, value: null };
  const message = `The columns are not those of the columns file: ${changes.join(", ")}.`;
  log.add("mapping-changed", place, () => ({ message }), String(number));
}
