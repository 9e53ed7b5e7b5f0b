import { groupBy } from "../../fleet/group-by.ts";
import type { Grid, GridRow } from "../grid.ts";
import { cellAt, holdsBlankRow, isBlankRow, tabName } from "../grid.ts";
import { type MappedHeader, mappedHeader, mappedOutputs } from "../mapping/apply-mapping.ts";
import { sameKey } from "../mapping/column-keys.ts";
import type { ColumnsFile } from "../mapping/columns-file.ts";
import type { HeaderMeaning } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { carriedDown } from "./carried-down.ts";
import { columnViews } from "./column-views.ts";
import { countedDevices } from "./counted-things.ts";
import { headsDates } from "./dated-columns.ts";
import { deliveredOnly } from "./delivery-logs.ts";
import { withoutDittos } from "./dittos.ts";
import { goneUndated, withRetirements } from "./gone-lists.ts";
import { headerAt, headerKey, sameHeader } from "./header-at.ts";
import { type HeaderRows, oneRowHeader, twoRowHeader } from "./header-rows.ts";
import { type Heading, headingAbove } from "./heading.ts";
import { interpret, kindsOf } from "./interpret.ts";
import { endOfValues, holdsValue, looksLikeData } from "./looks-like-data.ts";
import { ownOutput } from "./own-outputs.ts";
import { recalledElsewhere } from "./recall-lists.ts";
import type { ColumnView } from "./score-column.ts";
import { type SetAsidePart, setAsideParts } from "./set-aside-tables.ts";
import { asSpares } from "./spare-lists.ts";
import { isTyped, type Output, type Table } from "./table.ts";
import { thingsAsMapped, thingsByRow } from "./things-by-row.ts";
import { dropTitles, repeatsTitle } from "./title-lines.ts";
import { withTitledPlace } from "./titled-places.ts";
import { isForm, unreadTable } from "./unread-table.ts";
import { withVehiclesAtSites } from "./vehicles-at-sites.ts";

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
        : headerAt(rows, i, current, grid);
    if (header === null) {
      if (current && repeatsTitle(row, rows, current)) current.odd.set(current.body.length, "repeated-header");
      current?.body.push(row);
      continue;
    }
    const heading = headingAbove(grid, rows, i, found.length === 0);
    if (current && sameHeader(current.rows, header) && !isOfAnother(current, heading)) {
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
        heading,
        outputs: outputsOf(header),
        typed: -1,
        mapped,
      };
      current.typed = typedColumn(current.outputs);
      found.push(current);
    }
    i += header.lines.length - 1;
  }
  const tables = found.map((each, at) => tableOf(grid, each, at + 1));
  const isRead =
    found.some(({ mapped }) => mapped) || (tables.some(({ outputs }) => outputs.length > 0) && !isForm(rows));
  const unread = isRead ? null : unreadTable(grid, rows, tables.length > 0);
  return unread ? [unread] : withAlike(tables);
}

/** Tables with the records of all under their header: one list in parts, each below the name of its device. */
function withAlike(tables: Table[]): Table[] {
  const parts = [...groupBy(tables, headerKey).values()].filter((under) => under.length > 1);
  const alike = new Map<Table, readonly GridRow[]>();
  for (const under of parts) {
    const records = under.flatMap(({ rows, odd }) => rows.filter((_, row) => !odd.has(row)));
    for (const table of under) alike.set(table, records);
  }
  return tables.map((table) => (alike.has(table) ? { ...table, alike: alike.get(table)! } : table));
}

/** True where what stands above names other supplies, or another battery, device, order or day of tests, than what stands above the table before. */
function isOfAnother({ heading }: Found, { title, form, testedOn }: Heading): boolean {
  const names = ["serial", "device", "item", "supplier", "order"] as const;
  const ofThings = ({ things, variant }: HeaderMeaning) => things + variant;
  return (
    (title.subject !== "" && DATED_THINGS.has(title.things) && ofThings(title) !== ofThings(heading!.title)) ||
    (testedOn !== null && testedOn !== heading!.testedOn) ||
    names.some((name) => (form[name] ?? heading?.form[name]) !== heading?.form[name])
  );
}

/** A source table's part of a set-aside.csv, as if its header had been found in the sheet. */
function foundPart({ line, header, rows }: SetAsidePart): Found {
  const headerRows = { lines: [line], header, groups: header.map(() => null) };
  return { rows: headerRows, at: 0, body: rows, odd: new Map(), heading: null, outputs: [], typed: -1, mapped: null };
}

/** A column of dates or numbers, the surest sign that a line is a record; -1 where there is none. */
function typedColumn(outputs: readonly Output[]): number {
  const fields = outputs.flatMap((output) => output.fields);
  return fields.find(({ spec }) => isTyped(spec))?.columns[0] ?? -1;
}

function outputsOf(header: HeaderRows): Output[] {
  return interpret(columnViews(header, []), null).best?.outputs ?? [];
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
  const { best, tied, ...told } = own === null ? interpret(views, heading) : { best: null, tied: [], unclear: null };
  const above = [tabName(grid) ?? "", ...(heading?.text.split("\n") ?? [])];
  const read = best && tied.length === 0 ? withRetirements(asSpares(best.outputs, views, above), views, above) : [];
  const unclear =
    told.unclear ?? recalledElsewhere(read, above) ?? deliveredOnly(read, views, above) ?? goneUndated(read, above);
  const plain = unclear === null ? read : [];
  const lines = odd.size === 0 ? body : body.filter((_, row) => !odd.has(row));
  const sorts = isMapped
    ? thingsAsMapped(wanted.outputs, lines, views)
    : own === null
      ? thingsByRow(rows, lines, views, plain)
      : null;
  const table: Table = {
    grid,
    number,
    headerLines: rows.lines,
    header: rows.header,
    groups: rows.groups,
    outputs: withTitledPlace(
      isMapped ? withVehicles(wanted.outputs, views, mapped) : (sorts?.outputs ?? plain),
      heading?.place ?? null,
      heading?.form.device,
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
  const carried = carriedDown(table);
  return carried === null ? table : { ...table, rows: carried.rows, carried: carried.column };
}
