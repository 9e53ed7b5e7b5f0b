import type { Day } from "../../calendar/day.ts";
import type { ColumnsFile } from "../mapping/columns-file.ts";
import type { DateOrder } from "../values/date-text.ts";

/** What reading needs to know from outside the sheets. */
export interface ReadOptions {
  asOf: Day;
  dateOrder: DateOrder | null;
  /** How columns are to be read where a columns file says so. */
  columns?: ColumnsFile | null;
}
