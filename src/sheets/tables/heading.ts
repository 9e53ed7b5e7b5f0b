import { type Grid, type GridRow, tabName } from "../grid.ts";
import { isDate } from "../values/date-text.ts";
import { type HeaderMeaning, parseHeader } from "../words/parse-header.ts";
import { type FormAbove, formAbove, isFormLine } from "./form-lines.ts";
import { nameIn } from "./header-rows.ts";
import { placeAbove } from "./titled-places.ts";

/** What stands above a table's header. */
export interface Heading {
  /** The nearest single text that names a thing; where none stands close, the tab's name, which names no item. */
  title: HeaderMeaning;
  /** Every lone text above the header, as written. */
  text: string;
  /** The names of the tab and of the file. */
  named: string;
  /** The day on which the table's tests were made, as a line above it gives it ("Date tested: 12.03.2026"). */
  testedOn: string | null;
  /** The place whose things the table lists, as a line above it names it ("Ambulance 7"). */
  place: string | null;
  /** What the lines of a form above the table say of all its rows: whose tests, which order. */
  form: FormAbove;
}

/** How many lines above a header may be its title, and how many may belong to its head. */
const TITLE_LINES = 3;
const HEAD_LINES = 15;

/** What stands above the header at a row; of a later table on a tab, the lines close above it. */
export function headingAbove(grid: Grid, rows: readonly GridRow[], at: number, first: boolean): Heading {
  const above = rows.slice(Math.max(0, at - (first ? HEAD_LINES : TITLE_LINES)), at);
  const lone: string[] = [];
  let place: string | null = null;
  for (const row of [...above].reverse()) {
    const { cells } = row;
    const texts = cells.flatMap((cell) => nameIn(cell) ?? []);
    if (first || texts.length === 1) place ??= placeAbove(row);
    if (texts.length !== 1) break;
    lone.push(texts[0] as string);
  }
  const titles = lone.slice(0, TITLE_LINES).map(parseHeader);
  return {
    title: titles.find(({ things }) => things !== "") ?? { ...parseHeader(tabName(grid) ?? ""), subject: "" },
    text: lone.join("\n"),
    named: `${tabName(grid) ?? ""} ${grid.file}`,
    testedOn: testedOn(first ? above : above.filter(isFormLine)),
    place,
    form: formAbove(rows, at),
  };
}

/** The date beside a word for the test, else beside a plain word for a date. */
function testedOn(above: readonly GridRow[]): string | null {
  let plain: string | null = null;
  for (const { cells } of above) {
    const texts = cells.flatMap((cell) => nameIn(cell) ?? []);
    const parts = texts.length === 1 ? (texts[0] as string).split(/:\s(.*)/s) : texts;
    for (let i = 0; i + 1 < parts.length; i++) {
      if (!isDate(parts[i + 1] as string)) continue;
      const { things, says } = parseHeader(parts[i] as string);
      if (things === "test" && /^(date)?$/.test(says)) return parts[i + 1] as string;
      if (things === "" && /^(date|date install|date site|install)$/.test(says)) plain = parts[i + 1] as string;
    }
  }
  return plain;
}
