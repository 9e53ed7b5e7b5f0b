import { describe, expect, it } from "vitest";
import type { SheetKind } from "../../src/fleet/columns.ts";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import type { AwkwardSheet } from "./awkward/awkward-sheet.ts";
import { BLOCKS } from "./awkward/blocks.ts";
import { BOOKKEEPING } from "./awkward/bookkeeping.ts";
import { CAPACITY_LOGS } from "./awkward/capacity-logs.ts";
import { CELL_LISTS } from "./awkward/cell-lists.ts";
import { CHECKED } from "./awkward/checked.ts";
import { COLUMNS_OF_NUMBERS } from "./awkward/columns-of-numbers.ts";
import { COUNTRIES } from "./awkward/countries.ts";
import { COUNTS } from "./awkward/counts.ts";
import { DEPARTMENTS } from "./awkward/departments.ts";
import { FORMS } from "./awkward/forms.ts";
import { GONE } from "./awkward/gone.ts";
import { HABITS } from "./awkward/habits.ts";
import { HEADERS } from "./awkward/headers.ts";
import { INHERITED } from "./awkward/inherited.ts";
import { KEEPERS } from "./awkward/keepers.ts";
import { LANGUAGES } from "./awkward/languages.ts";
import { LISTS } from "./awkward/lists.ts";
import { MISTAKEN } from "./awkward/mistaken.ts";
import { MIXED_COLUMNS } from "./awkward/mixed-columns.ts";
import { OFFICES } from "./awkward/offices.ts";
import { PLANNERS } from "./awkward/planners.ts";
import { PURCHASING } from "./awkward/purchasing.ts";
import { RATINGS } from "./awkward/ratings.ts";
import { REGISTERS } from "./awkward/registers.ts";
import { REPEATED_TESTS } from "./awkward/repeated-tests.ts";
import { SHAPES } from "./awkward/shapes.ts";
import { SILENT } from "./awkward/silent.ts";
import { SORTS } from "./awkward/sorts.ts";
import { STOCKROOMS } from "./awkward/stockrooms.ts";
import { STRANGERS } from "./awkward/strangers.ts";
import { TAKEN_OVER } from "./awkward/taken-over.ts";
import { TITLED_PLACES } from "./awkward/titled-places.ts";
import { VALUES } from "./awkward/values.ts";
import { VEHICLES } from "./awkward/vehicles.ts";
import { WORKSHOPS } from "./awkward/workshops.ts";
import { read } from "./sheet-file.ts";

// Read by hand from each sheet under the reading rules; common practice, no source.
describe.each([
  ["registers", REGISTERS],
  ["lists", LISTS],
  ["values", VALUES],
  ["lists of strangers", STRANGERS],
  ["sheets of offices", OFFICES],
  ["lists of other countries", COUNTRIES],
  ["headers", HEADERS],
  ["sheets of departments", DEPARTMENTS],
  ["sheets in more languages", LANGUAGES],
  ["shapes", SHAPES],
  ["sheets of workshops", WORKSHOPS],
  ["lists of all sorts", SORTS],
  ["sheets of many keepers", KEEPERS],
  ["lists that count devices", COUNTS],
  ["vehicles at their sites", VEHICLES],
  ["habits", HABITS],
  ["answers to forms", FORMS],
  ["ratings beside tests", RATINGS],
  ["lists inside cells", CELL_LISTS],
  ["columns of numbers", COLUMNS_OF_NUMBERS],
  ["places above a table", TITLED_PLACES],
  ["sheets easily mistaken", MISTAKEN],
  ["columns that hold something else besides", MIXED_COLUMNS],
  ["sheets of planners", PLANNERS],
  ["checks in words and numbers", CHECKED],
  ["registers with several tests in a line", REPEATED_TESTS],
  ["logs of capacity tests", CAPACITY_LOGS],
  ["lists of stockrooms", STOCKROOMS],
  ["lists of those who buy", PURCHASING],
  ["batteries that are gone", GONE],
  ["sheets of bookkeepers", BOOKKEEPING],
  ["sheets that are misread in silence", SILENT],
  ["lists below each other", BLOCKS],
  ["sheets that somebody else made", INHERITED],
  ["cells taken for another thing", TAKEN_OVER],
])("readSheets: awkward %s", (_, sheets) => {
  it.each(sheets.map((sheet) => [sheet.name, sheet] as [string, AwkwardSheet]))("reads %s", (_name, sheet) => {
    const reading = read({ "sheet.csv": sheet.text }, sheet.dateOrder ?? null);
    const rows = canonicalRows(reading.fleet);
    for (const [kind, expected] of Object.entries(sheet.rows)) {
      expect(rows[kind as SheetKind]).toMatchObject(expected);
      expect(rows[kind as SheetKind]).toHaveLength(expected.length);
    }
    expect(reading.setAside.map(({ line, reason }) => [line, reason])).toEqual(sheet.aside ?? []);
    expect(reading.findings.map(({ code }) => code)).toEqual(expect.arrayContaining(sheet.findings ?? []));
    const unread = reading.inputs.flatMap(({ columns }) => columns).filter(({ kind }) => kind === null);
    expect(unread.map(({ header }) => header)).toEqual(sheet.unread ?? []);
    for (const table of reading.inputs) expect(table.rows).toBe(table.used + table.setAside);
  });
});
