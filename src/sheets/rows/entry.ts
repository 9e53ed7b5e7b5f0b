import type { SheetSpec } from "../../fleet/columns.ts";
import type { Source } from "../../fleet/rows.ts";
import type { Table } from "../tables/table.ts";

/** What the entries of one kind from one table have in common: kept once, since what each entry keeps costs a large sheet. */
interface Shared {
  sheet: SheetSpec;
  time: string;
  state: TableState;
}

/** A row of a sheet before it is known to be used: fields by name, null where empty. */
export class Entry {
  /** @param row  index of the record in its table */
  constructor(
    readonly shared: Shared,
    readonly values: Record<string, unknown> & { source: Source },
    readonly row: number,
  ) {}

  get sheet(): SheetSpec {
    return this.shared.sheet;
  }

  /** Time of day as written beside the date, so that two tests of a day stay two. */
  get time(): string {
    return this.shared.time;
  }

  get state(): TableState {
    return this.shared.state;
  }
}

/** The tables of entries that stand table by table, as those of one kind do. */
export function tablesOf(entries: readonly Entry[]): TableState[] {
  const found: TableState[] = [];
  const last = entries.at(-1)?.state;
  for (let at = 0; at < entries.length; at++) {
    const { state } = entries[at]!;
    if (state !== found.at(-1)) found.push(state);
    if (state === last) break;
  }
  return found;
}

/** Why a record was set aside. */
interface Reason {
  code: string;
  message: string;
}

/** One table's bookkeeping: how many live entries each record has, and why one without any has none. */
export class TableState {
  readonly live: Uint16Array;
  /** Entries whose item's name is still to come from the product number of their label. */
  readonly labelled: { entry: Entry; product: string }[] = [];
  readonly reasons = new Map<number, Reason>();
  private shared: Shared | null = null;

  constructor(readonly table: Table) {
    this.live = new Uint16Array(table.rows.length);
  }

  /** Takes one entry of a record out of use, keeping the reason in case it was the last. */
  drop(row: number, code: string, message: string): void {
    this.live[row]!--;
    this.reasons.set(row, { code, message });
  }

  /** An entry of a record; one whose item came from a label waits for the name of its product. */
  entryOf(sheet: SheetSpec, values: Entry["values"], time: string, row: number, product: string | null): Entry {
    if (this.shared?.sheet !== sheet || this.shared.time !== time) this.shared = { sheet, time, state: this };
    const entry = new Entry(this.shared, values, row);
    if (product !== null) this.labelled.push({ entry, product });
    return entry;
  }

  /** Indices of the records that yielded nothing. */
  unused(): number[] {
    const rows: number[] = [];
    for (let row = this.live.indexOf(0); row !== -1; row = this.live.indexOf(0, row + 1)) rows.push(row);
    return rows;
  }

  /** Notes why a record yielded nothing. */
  never(row: number, code: string, message: string): void {
    if (!this.reasons.has(row)) this.reasons.set(row, { code, message });
  }
}
