import type { Day } from "../calendar/day.ts";
import { groupBy } from "../fleet/group-by.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { Source } from "../fleet/rows.ts";
import { type Cell, cellAt, widthOf } from "../sheets/grid.ts";
import type { ColumnsFile } from "../sheets/mapping/columns-file.ts";
import { openFile } from "../sheets/open-file.ts";
import type { Reading, ReadTable, SheetFile } from "../sheets/reading.ts";
import { matcherOf } from "./trace-matcher.ts";
import type { Trace, TracedId } from "./traced.ts";

/** A line in which an identifier stands, though nothing that was traced came of it. */
export interface Mention extends Source {
  id: string;
}

/** Fields in which an identifier may stand; what was read as a number or a day bears none. */
const MAY_BEAR = new Set<string | null>(["lot", "serial", "label", "gtin", "order", null]);

/**
 * Lines in which an identifier stands and of which no traced row came: rows that were set aside, and cells that were not read. What is
 * recalled may lie there all the same. Passed over are repeats of rows that were traced and lists that this program
 * wrote, and of an identifier that was found also tests, uses and the catalogue.
 *
 * @param columns  how the planner chose columns to be read, as for the reading
 */
export function mentionsBeside(
  files: readonly SheetFile[],
  columns: ColumnsFile | null,
  reading: Reading,
  { ids, stock, packs, orders }: Trace,
  asOf: Day,
): Mention[] {
  const { fleet, inputs, setAside } = reading;
  const sources = (rows: readonly { source: Source }[]) => rows.map(({ source }) => lineKey(source));
  const traced = new Set([
    ...sources([...stock.map(({ row }) => row), ...packs, ...orders]),
    ...setAside.filter(({ reason }) => reason === "repeat" || reason === "own-output").map(lineKey),
  ]);
  const told = new Set(sources([...fleet.runtimeTests, ...fleet.useLog, ...fleet.catalogue]));
  const aside = new Set(setAside.map(lineKey));
  const tables = groupBy(inputs, tabKey);
  const standsIn = namedIn(ids, asOf);
  return files.flatMap((file) =>
    openFile(file, columns).tabs.flatMap(({ grid }) => {
      const { sheet, rows } = grid;
      const readOtherwise = columnsReadOtherwise(tables.get(tabKey(grid)) ?? []);
      return rows.flatMap((row) => {
        const source = { file: file.name, sheet, line: row.line };
        const key = lineKey(source);
        if (traced.has(key)) return [];
        const passed = readOtherwise(row.line);
        const named = new Set<TracedId>();
        for (let at = 0; at < widthOf(row); at++)
          if (!passed.has(at + 1)) for (const one of standsIn(textOf(cellAt(row, at)))) named.add(one);
        return (
          [...named]
            // of the start of a lot any word may be the whole
            .filter(({ id, as }) => (id.endsWith("*") ? aside.has(key) : as.length === 0 || !told.has(key)))
            .map(({ id }) => ({ id, ...source }))
        );
      });
    }),
  );
}

function textOf(cell: Cell | undefined): string {
  return cell === null || cell === undefined ? "" : String(cell);
}

/** The identifiers that are a cell's text or a word of it; each text is looked at once. */
function namedIn(ids: readonly TracedId[], asOf: Day): (text: string) => readonly TracedId[] {
  const matchers = ids.map((one) => ({ one, match: matcherOf(one.id, asOf).match }));
  const known = new Map<string, readonly TracedId[]>([["", NONE]]);
  return (text) => {
    let named = known.get(text);
    if (!named) {
      const words = [text, ...text.split(/[\s,;/|()]+/)].map(nameKey).filter((word) => word !== "");
      const found = matchers.filter(({ match }) => words.some(match)).map(({ one }) => one);
      named = found.length > 0 ? found : NONE;
      known.set(text, named);
    }
    return named;
  };
}

const NONE: readonly TracedId[] = [];

/** Of a tab: the columns that can bear no identifier in a line, as they were read below the headers above it. */
function columnsReadOtherwise(tables: readonly ReadTable[]): (line: number) => ReadonlySet<number> {
  const known = new Map<number, ReadonlySet<number>>();
  return (line) => {
    const above = tables.filter(({ headerLines }) => (headerLines[0] ?? 0) < line);
    let passed = known.get(above.length);
    if (!passed) {
      const fields = new Map<number, (string | null)[]>();
      for (const { columns } of above)
        for (const [column, entries] of groupBy(columns, (entry) => entry.column))
          fields.set(
            column,
            entries.map(({ field }) => field),
          );
      passed = new Set([...fields].filter(([, of]) => !of.some((field) => MAY_BEAR.has(field))).map(([at]) => at));
      known.set(above.length, passed);
    }
    return passed;
  };
}

function tabKey({ file, sheet }: { file: string; sheet: string | null }): string {
  return JSON.stringify([file, sheet]);
}

function lineKey({ file, sheet, line }: Source): string {
  return JSON.stringify([file, sheet, line]);
}
