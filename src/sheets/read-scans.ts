import { columnOfField, sheetSpec } from "../fleet/columns.ts";
import { sha256 } from "../maths/sha256.ts";
import { FindingLog } from "./finding-log.ts";
import type { GridRow } from "./grid.ts";
import { scanAsPrinted } from "./labels/hibc.ts";
import { openFile } from "./open-file.ts";
import type { Reading, SheetFile } from "./reading.ts";
import { readingOf } from "./reading-of-tables.ts";
import { buildEntries } from "./rows/build-entries.ts";
import type { ReadOptions } from "./rows/read-options.ts";
import type { Table } from "./tables/table.ts";
import { decodeText } from "./text/decode-text.ts";

/**
 * Reads label scans, one a line, into dated-stock rows: the same as a dated_stock sheet of one column, label.
 *
 * @param catalogues  sheets whose catalogue rows give the scanned products their names; their rows are not returned
 */
export function readScans(scans: SheetFile, options: ReadOptions, catalogues: readonly SheetFile[] = []): Reading {
  const log = new FindingLog();
  const scanned = buildEntries(tableOfScans(scans), options, log);
  const catalogue = catalogues
    .flatMap((file) => openFile(file, options.columns ?? null).tabs)
    .flatMap(({ tables }) => tables)
    .filter(({ outputs }) => outputs.some(({ sheet }) => sheet.kind === "catalogue"))
    .map((table) => buildEntries(table, options, new FindingLog()));
  const { fleet, inputs, findings, setAside } = readingOf([scanned, ...catalogue], options.asOf, log);
  const { file } = scanned.state.table.grid;
  return {
    fleet: { ...fleet, catalogue: [] },
    inputs: inputs.slice(0, 1),
    findings: findings.filter((finding) => finding.file === file),
    setAside: setAside.filter((row) => row.file === file),
    refused: [],
  };
}

function tableOfScans({ name, bytes }: SheetFile): Table {
  const lines = decodeText(bytes).text.split(/\r\n|\n|\r/);
  const rows: GridRow[] = lines.flatMap((text, at) =>
    text.trim() === "" ? [] : [{ line: at + 1, cells: [scanAsPrinted(text)] }],
  );
  const sheet = sheetSpec("dated_stock");
  const spec = columnOfField(sheet, "label");
  const field = { spec, columns: [0], by: "contents" as const, headerUnit: "", part: null, points: 0 };
  return {
    grid: {
      file: name,
      sheet: null,
      rows,
      sha256: sha256(bytes),
      semicolons: false,
      openQuotes: [],
      hidden: { tab: false, rows: 0, columns: 0 },
      spans: [],
    },
    number: 1,
    headerLines: [],
    header: ["label"],
    groups: [null],
    outputs: [{ sheet, fields: [field], implied: {}, own: [0] }],
    rows,
    odd: new Map(),
    tied: null,
    ownOutput: null,
    unclear: null,
    changes: [],
    thingColumns: [],
    counted: [],
  };
}
