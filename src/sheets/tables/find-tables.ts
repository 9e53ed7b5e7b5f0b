import type { Cell, Grid, GridRow } from "../grid.ts";
import { cellAt, holdsBlankRow, isBlankRow } from "../grid.ts";
import { type MappedHeader, mappedHeader, mappedOutputs } from "../mapping/apply-mapping.ts";
import { sameKey } from "../mapping/column-keys.ts";
import type { ColumnsFile } from "../mapping/columns-file.ts";
import { cellText, MAX_TYPED_CHARACTERS, meansEmpty } from "../values/cell-text.ts";
import { readDateText } from "../values/date-text.ts";
import { readNumber } from "../values/number-text.ts";
import { columnViews } from "./column-views.ts";
import { countedDevices } from "./counted-things.ts";
import { headsDates } from "./dated-columns.ts";
import { withoutDittos } from "./dittos.ts";
import { type HeaderRows, knownNames, nameIn, oneRowHeader, twoRowHeader } from "./header-rows.ts";
import { type Heading, headingAbove } from "./heading.ts";
import { interpret, kindsOf } from "./interpret.ts";
import { endOfValues, holdsValue, looksLikeData } from "./looks-like-data.ts";
import { ownOutput } from "./own-outputs.ts";
import type { ColumnView } from "./score-column.ts";
import { type SetAsidePart, setAsideParts } from "./set-aside-tables.ts";
import type { Output, Table } from "./table.ts";
import { thingsAsMapped, thingsByRow } from "./things-by-row.ts";
import { dropTitles, repeatsTitle } from "./title-lines.ts";
import { withTitledPlace } from "./titled-places.ts";
import { unreadTable } from "./unread-table.ts";
import { withVehiclesAtSites } from "./vehicles-at-sites.ts";

/** The least share of a row's cells that must name something known, in a header and in one below a table. */
const MIN_KNOWN_SHARE = 0.4;
const MIN_KNOWN_BELOW = 0.6;
/** The least share of attribute words in a header that stands right below a table. */
const MIN_STRONG_SHARE = 0.75;
/** By how many points a header a line lower must be the better one. */
const MORE_POINTS = 3;
const NUMERIC: ReadonlySet<string> = new Set(["number", "whole", "percent", "share", "money"]);

/** How many rows below a header are read to tell which reading of it fits. */
const LOOK_AHEAD = 200;

interface Found {
  rows: HeaderRows;
  at: number;
  body: GridRow[];
  odd: Table["odd"];
  /** What stands above the header; null where it was not looked for. */
  heading: Heading | null;
  /** How the header was read by its words, to tell records from the next header. */
  outputs: Output[];
  /** One of its columns of dates or numbers; -1 where there is none. */
  typed: number;
  /** The mapping that named the header; null where it was recognised. */
  mapped: MappedHeader | null;
}

/** Every table of a text file or tab. Rows above a header are titles and no rows; so are those between tables. */
export function findTables(grid: Grid, columns: ColumnsFile | null): Table[] {
  const rows = holdsBlankRow(grid.rows) ? grid.rows.filter((row) => !isBlankRow(row)) : grid.rows;
  const parts = setAsideParts(rows);
  if (parts) return parts.map((part, at) => tableOf(grid, foundPart(part), at + 1));
  const found: Found[] = [];
  let current: Found | null = null;
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as GridRow;
    if (columns === null && current !== null && holdsValue(cellAt(row, current.typed))) {
      const end = endOfValues(rows, i + 1, current.typed);
      if (current.body.length === 0) current.body = rows.slice(i, end);
      else for (let at = i; at < end; at++) current.body.push(rows[at] as GridRow);
      i = end - 1;
      continue;
    }
    const mapped = columns === null ? null : mappedAt(rows, i, columns, grid);
    const header: HeaderRows | null = mapped
      ? mapped.rows
      : looksLikeData(row.cells) && (current !== null || !headsDates(row, rows[i + 1]))
        ? null
        : headerAt(rows, i, current, grid.spans);
    if (header === null) {
      if (current && repeatsTitle(row, rows, current)) current.odd.set(current.body.length, "repeated-header");
      current?.body.push(row);
      continue;
    }
    if (current && sameHeader(current.rows, header)) {
      for (const line of rows.slice(i, i + header.lines.length)) {
        current.odd.set(current.body.length, "repeated-header");
        current.body.push(line);
      }
    } else {
      dropTitles(current, row);
      current = {
        rows: header,
        at: i,
        body: [],
        odd: new Map(),
        heading: headingAbove(rows, i, found.length === 0),
        outputs: outputsOf(header),
        typed: -1,
        mapped,
      };
      current.typed = typedColumn(current.outputs);
      found.push(current);
    }
    i += header.lines.length - 1;
  }
  const unread = found.length === 0 ? unreadTable(grid, rows) : null;
  return unread ? [unread] : found.map((each, at) => tableOf(grid, each, at + 1));
}

/** A source table's part of a set-aside.csv, as if its header had been found in the sheet. */
function foundPart({ line, header, rows }: SetAsidePart): Found {
  const headerRows = { lines: [line], header, groups: header.map(() => null) };
  return { rows: headerRows, at: 0, body: rows, odd: new Map(), heading: null, outputs: [], typed: -1, mapped: null };
}

/** A column of dates or numbers, the surest sign that a line is a record; -1 where there is none. */
function typedColumn(outputs: readonly Output[]): number {
  const fields = outputs.flatMap((output) => output.fields);
  return fields.find(({ spec }) => spec.type === "date" || NUMERIC.has(spec.type))?.columns[0] ?? -1;
}

function outputsOf(header: HeaderRows): Output[] {
  return interpret(columnViews(header, []), null).best?.outputs ?? [];
}

/** The header that starts at a row, over one line or two; null where the row names no columns. */
function headerAt(
  rows: readonly GridRow[],
  at: number,
  current: Found | null,
  spans: Grid["spans"],
): HeaderRows | null {
  const row = rows[at] as GridRow;
  const next = rows[at + 1];
  const plain = oneRowHeader(row);
  if (current === null && headsDates(row, next)) return plain;
  if (ownOutput(plain.header) !== null) return plain;
  const names = knownNames(row.cells);
  const { known, filled, strong, exact } = names;
  const share = current ? MIN_KNOWN_BELOW : MIN_KNOWN_SHARE;
  if (known < Math.min(exact > 0 ? 1 : 2, filled) || known < filled * share) return null;
  const one = plain;
  if (current) {
    const two = next ? twoRowHeader(row, next, spans) : null;
    if (two && current.rows.lines.length === 2 && sameHeader(current.rows, two)) return two;
    if (sameHeader(current.rows, one)) return one;
    if (!mayStartTable(row, rows[at - 1] as GridRow, names, current)) return null;
  }
  // A line of one text above others is a title or a note, whatever its words.
  if (
    filled === 1 &&
    next &&
    next.cells.filter((cell) => nameIn(cell) !== null).length > 1 &&
    nameIn(row.cells[0]) !== null
  )
    return null;
  const candidates = [one];
  if (next && isLowerHeader(next, row, spans)) candidates.push(twoRowHeader(row, next, spans));
  const readings = candidates.map((header) => {
    const sample = rows.slice(at + header.lines.length, at + header.lines.length + LOOK_AHEAD);
    const { best, unclear } = interpret(columnViews(header, sample), null);
    return { header, points: best?.points ?? 0, unclear: unclear !== null };
  });
  const best = readings.sort((a, b) => b.points - a.points)[0] as (typeof readings)[number];
  if (current === null && headsBetter(rows, at + 1, best.header.lines.length, best.points, spans)) return null;
  if (best.points > 0) return best.header;
  if (current === null && best.unclear) return best.header;
  return current === null && strong >= 2 && known >= filled * MIN_KNOWN_BELOW ? one : null;
}

/** True where the header that starts a line lower names more: the line above it only groups it further. */
function headsBetter(
  rows: readonly GridRow[],
  at: number,
  lines: number,
  points: number,
  spans: Grid["spans"],
): boolean {
  const row = rows[at];
  if (!row || looksLikeData(row.cells) || row.cells.some((cell) => isNothing(cell) || isCount(cell) || isDay(cell)))
    return false;
  const { known, filled } = knownNames(row.cells);
  if (known < 2 || known < filled * MIN_KNOWN_SHARE) return false;
  const lower = rows[at + 1];
  const candidates = lines > 1 ? [] : [oneRowHeader(row)];
  if (lower && !looksLikeData(lower.cells) && knownNames(lower.cells).strong > 1)
    candidates.push(twoRowHeader(row, lower, spans));
  return candidates.some((header) => {
    const sample = rows.slice(at + header.lines.length, at + header.lines.length + LOOK_AHEAD);
    return (interpret(columnViews(header, sample), null).best?.points ?? 0) > points + MORE_POINTS;
  });
}

/** True where the row below a header's can be its second line: it names columns under groups or fills its gaps. */
function isLowerHeader(lower: GridRow, upper: GridRow, spans: Grid["spans"]): boolean {
  if (looksLikeData(lower.cells) || lower.line > upper.line + 1 || lower.cells.some(isNothing)) return false;
  const { known, strong, filled } = knownNames(lower.cells);
  if (known < 2 || strong < 1 || known < filled * MIN_KNOWN_SHARE) return false;
  const merged = spans.some(({ line }) => line === upper.line);
  return merged || lower.cells.some((cell, column) => nameIn(cell) !== null && nameIn(upper.cells[column]) === null);
}

/** True for a bare number that is no year: a line below the names of columns that holds one is a record. */
function isCount(cell: Cell): boolean {
  return typeof cell === "string" && /^\d{1,3}( \p{L}+)?$/u.test(cell.trim());
}

/** True for a whole date: below the names of columns it stands in a record. */
function isDay(cell: Cell): boolean {
  return typeof cell === "string" && /^\s*\d{1,4}([-/.])\d{1,2}\1\d{2,4}\s*$/.test(cell);
}

/** True for a cell that says "nothing here", as cells below a header do and headers do not. */
function isNothing(cell: Cell): boolean {
  return typeof cell === "string" && cell.trim() !== "" && (meansEmpty(cell.trim()) || /^#[A-Z]/.test(cell.trim()));
}

/**
 * True where a row among a table's records may be the header of the next table: it must not read as a record
 * of the one before, and must either stand off from it or be named beyond doubt.
 */
function mayStartTable(
  row: GridRow,
  before: GridRow,
  { strong, exact, filled }: { strong: number; exact: number; filled: number },
  { outputs }: Found,
): boolean {
  if (row.cells.some(isNothing)) return false;
  for (const { fields } of outputs) {
    for (const { spec, columns } of fields) {
      const text = cellText(row.cells[columns[0] as number] ?? null);
      if (text === "" || text.length > MAX_TYPED_CHARACTERS) continue;
      if (spec.type === "date" ? readDateText(text) !== null : NUMERIC.has(spec.type) && readNumber(text, ".") !== null)
        return false;
    }
  }
  const standsOff = row.line > before.line + 1 || before.cells.filter((cell) => nameIn(cell) !== null).length === 1;
  return standsOff
    ? strong >= 2 || (filled >= 2 && exact === filled)
    : strong >= 3 && strong >= filled * MIN_STRONG_SHARE;
}

function sameHeader(a: HeaderRows, b: HeaderRows): boolean {
  const same = (x: readonly (string | null)[], y: readonly (string | null)[]) => {
    for (let i = 0; i < Math.max(x.length, y.length); i++)
      if ((x[i] ?? "").toLowerCase() !== (y[i] ?? "").toLowerCase()) return false;
    return true;
  };
  return same(a.header, b.header);
}

/** The header of a mapped table that starts at a row, over one line or two. */
function mappedAt(rows: readonly GridRow[], at: number, columns: ColumnsFile, grid: Grid): MappedHeader | null {
  const row = rows[at] as GridRow;
  const next = rows[at + 1];
  const candidates = [oneRowHeader(row), ...(next ? [twoRowHeader(row, next, grid.spans)] : [])];
  return mappedHeader(candidates, columns, grid.file, grid.sheet);
}

/** Outputs as mapped, with vehicles at their sites, unless the mapping leaves the vehicles unread. */
function withVehicles(outputs: Output[], views: readonly ColumnView[], mapped: MappedHeader | null): Output[] {
  const unread = new Set(mapped?.mapped.unread.map(sameKey));
  return withVehiclesAtSites(
    outputs,
    views.filter(({ name }) => !unread.has(sameKey(name))),
  );
}

function tableOf(grid: Grid, { rows, body, odd, heading, mapped }: Found, number: number): Table {
  const wanted = mapped ? mappedOutputs(mapped) : { outputs: [], changes: [] };
  const isMapped = wanted.outputs.length > 0;
  const own = isMapped ? null : ownOutput(rows.header);
  const views = own === null ? columnViews(rows, body) : [];
  const { best, tied, unclear } = own === null ? interpret(views, heading) : { best: null, tied: [], unclear: null };
  const plain = best && tied.length === 0 ? best.outputs : [];
  const lines = odd.size === 0 ? body : body.filter((_, row) => !odd.has(row));
  const sorts = isMapped
    ? thingsAsMapped(wanted.outputs, lines, views)
    : own === null
      ? thingsByRow(rows, lines, views, plain)
      : null;
  return {
    grid,
    number,
    headerLines: rows.lines,
    header: rows.header,
    groups: rows.groups,
    outputs: withTitledPlace(
      isMapped ? withVehicles(wanted.outputs, views, mapped) : (sorts?.outputs ?? plain),
      heading?.place ?? null,
    ),
    thingColumns: sorts?.columns ?? [],
    rows: withoutDittos(body),
    odd,
    tied: tied.length > 0 && !isMapped && sorts === null ? [...new Set(tied.map(kindsOf))] : null,
    ownOutput: own,
    unclear: isMapped || sorts !== null ? null : unclear,
    counted: isMapped || sorts !== null || unclear !== null ? [] : countedDevices(views),
    changes: wanted.changes,
  };
}
