import { countText } from "./count-text.ts";

/** How a cell is read. */
export type CellType =
  | "text"
  | "date"
  | "number"
  | "whole"
  | "percent"
  | "share"
  | "yes-no"
  | "choice"
  | "list"
  | "money"
  | "breaks";

/** The largest number in a column without an upper bound of its own. */
export const NO_BOUND = 1e9;

const EXPECTS: Record<CellType, string> = {
  text: "text",
  date: "a date such as 2027-04-03",
  number: "a number",
  whole: "a whole number",
  percent: "a percentage",
  share: "a share such as 0.95 or 95 %",
  "yes-no": "yes or no",
  choice: "one of the known words",
  list: "names parted by semicolons",
  money: "an amount such as 38.50",
  breaks: "breaks such as 10:38.50; 50:35.00",
};

/** What a well-formed cell looks like, to end the words "was expected"; of a number with its bounds: "a whole number from 1 to 120". */
export function expectedOf(type: CellType, min: number, max: number): string {
  if (type !== "number" && type !== "whole" && type !== "percent") return EXPECTS[type];
  if (max < NO_BOUND) return `${EXPECTS[type]} from ${countText(min)} to ${countText(max)}`;
  return `${EXPECTS[type]} ${min > 0 && min < 1 ? "over 0" : `of ${countText(min)} or more`}`;
}
