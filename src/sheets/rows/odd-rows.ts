import type { OddRow } from "../tables/table.ts";

/** What is said of a record that is no data. */
export const ODD_ROW_MESSAGES: Record<OddRow, string> = {
  "repeated-header": "The header stands here again.",
  "total-row": "The row sums up other rows.",
  "section-line": "The line names a group of rows.",
  "note-row": "The line is a note.",
};
