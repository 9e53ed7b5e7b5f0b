import type { Day } from "../../calendar/day.ts";
import { columnLetters } from "../../sheets/rows/column-name.ts";
import { zip } from "./zip.ts";

type Cell = string | number | boolean | null;

/** A tab of a workbook to be written. */
export interface Tab {
  name: string;
  /**
   * A column is as wide as its longest text, or as `width` says where that is less, and where it has a format. It `wraps`
   * where its texts are broken into lines rather than cut off by the next cell.
   */
  columns: { header: string; key: string; width?: number; numFmt?: string; wraps?: boolean }[];
  data: Record<string, Cell>[];
  /** Stands below every printed page. */
  footer?: string;
}

/** Day 0 of a spreadsheet's dates: 30 December 1899, so that its dates after February 1900 are right. */
const SPREADSHEET_EPOCH_DAY = -25_569;
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";
/** Formats below this number are the standard's own. */
const OWN_FORMATS_FROM = 164;

/**
 * Writes a workbook (ECMA-376, transitional) of plain cells: a bold header that stays in sight, then text and
 * numbers in each column's format. On paper a tab lies across the page, is as wide as it, and has its header on every
 * page. The reading library can write too, but names a tab with a blank in it wrongly where its header is to stand on
 * every printed page, and is twenty times the size.
 */
export async function writeWorkbook(sheets: readonly Tab[]): Promise<Uint8Array> {
  const formats = [...new Set(sheets.flatMap(({ columns }) => columns.flatMap(({ numFmt }) => numFmt ?? [])))];
  const each = (text: (number: number, tab: Tab) => string) => sheets.map((tab, at) => text(at + 1, tab)).join("");
  const part = (name: string, text: string) => ({ name, text: HEAD + text });
  return zip([
    part(
      "[Content_Types].xml",
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${TYPE}.styles+xml"/>${each((n) => `<Override PartName="/xl/worksheets/sheet${n}.xml" ContentType="${TYPE}.worksheet+xml"/>`)}</Types>`,
    ),
    part("_rels/.rels", relations(relation(1, "officeDocument", "xl/workbook.xml"))),
    part(
      "xl/workbook.xml",
      `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${each((n, { name }) => `<sheet name="${escaped(name)}" sheetId="${n}" r:id="rId${n}"/>`)}</sheets><definedNames>${each(headerOnEveryPage)}</definedNames></workbook>`,
    ),
    part(
      "xl/_rels/workbook.xml.rels",
      relations(
        each((n) => relation(n, "worksheet", `worksheets/sheet${n}.xml`)) +
          relation(sheets.length + 1, "styles", "styles.xml"),
      ),
    ),
    part("xl/styles.xml", styles(formats)),
    ...sheets.map((tab, at) => part(`xl/worksheets/sheet${at + 1}.xml`, worksheet(tab, formats))),
  ]);
}

/** A day as workbooks count it: a number, in a column whose format makes a date of it. */
export function workbookDay(day: Day): number {
  return day - SPREADSHEET_EPOCH_DAY;
}

const relation = (id: number, type: string, target: string) =>
  `<Relationship Id="rId${id}" Type="${OFFICE}/${type}" Target="${target}"/>`;
const relations = (list: string) => `<Relationships xmlns="${PACKAGE}/relationships">${list}</Relationships>`;

const headerOnEveryPage = (number: number, { name }: Tab) =>
  `<definedName name="_xlnm.Print_Titles" localSheetId="${number - 1}">'${escaped(name.replaceAll("'", "''"))}'!$1:$1</definedName>`;

/** Styles by number: 0 plain, 1 the header, 2 text broken into lines, then one for each format. */
const OWN_STYLES = 3;
/** A font without a name is another one in each program, and from cell to cell. */
const LETTERS = '<sz val="11"/><name val="Arial"/>';

function styles(formats: readonly string[]): string {
  const style = (format: number, font = 0, wraps = 0, side = "general") =>
    `<xf numFmtId="${format}" fontId="${font}" fillId="0" borderId="0" xfId="0" applyNumberFormat="1" applyFont="1" applyAlignment="1"><alignment horizontal="${side}" vertical="top" wrapText="${wraps}"/></xf>`;
  const own = formats.map((code, at) => `<numFmt numFmtId="${OWN_FORMATS_FROM + at}" formatCode="${escaped(code)}"/>`);
  return (
    `<styleSheet xmlns="${MAIN}">` +
    (own.length > 0 ? `<numFmts count="${own.length}">${own.join("")}</numFmts>` : "") +
    `<fonts count="2"><font>${LETTERS}</font><font><b/>${LETTERS}</font></fonts>` +
    '<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills>' +
    '<borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs>' +
    `<cellXfs count="${formats.length + OWN_STYLES}">${style(0)}${style(0, 1)}${style(0, 0, 1)}` +
    // a day stands below its header, and away from the text after it
    `${formats.map((code, at) => style(OWN_FORMATS_FROM + at, 0, 0, /y/.test(code) ? "left" : "general")).join("")}</cellXfs>` +
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>'
  );
}

/** Height of a line, in points, and widths of columns of which none is told, in digits. */
const LINE = 15;
const TEXT_WIDTH = 40;
const FORMAT_WIDTH = 12;
/** Letters of a text that stand in a digit's place, where words are broken into lines. */
const LETTERS_A_DIGIT = 1.1;

const lengthOf = (value: Cell = null) => String(value ?? "").length;

function worksheet({ columns, data, footer }: Tab, formats: readonly string[]): string {
  const styleOf = columns.map(({ numFmt, wraps }) =>
    numFmt === undefined ? (wraps ? 2 : 0) : formats.indexOf(numFmt) + OWN_STYLES,
  );
  const widths = columns.map(({ key, header, numFmt, width }) => {
    if (numFmt !== undefined) return width ?? FORMAT_WIDTH;
    const longest = data.reduce((most, row) => Math.max(most, lengthOf(row[key])), header.length);
    return Math.min(width ?? TEXT_WIDTH, longest + 2);
  });
  const rows = data.map((row, at) => {
    // not every program makes a row as high as its lines by itself
    const lines = columns.map(({ key, wraps }, column) =>
      wraps ? lengthOf(row[key]) / (LETTERS_A_DIGIT * widths[column]!) : 1,
    );
    const cells = columns.map(({ key }, column) => cell(row[key] ?? null, at + 2, column, styleOf[column]!));
    return `<row r="${at + 2}" ht="${LINE * Math.ceil(Math.max(1, ...lines))}">${cells.join("")}</row>`;
  });
  return (
    `<worksheet xmlns="${MAIN}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>` +
    `<sheetFormatPr defaultRowHeight="${LINE}"/><cols>${widths.map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`).join("")}</cols><sheetData><row r="1">${columns.map(({ header }, at) => cell(header, 1, at, 1)).join("")}</row>` +
    `${rows.join("")}</sheetData><pageMargins left="0.4" right="0.4" top="0.5" bottom="0.7" header="0.3" footer="0.3"/>` +
    '<pageSetup orientation="landscape" fitToHeight="0"/>' +
    // &A is the tab's name, &P the page and &N their number
    `<headerFooter><oddFooter>${escaped(`&L${footer ?? ""}&C&A&R&P / &N`)}</oddFooter></headerFooter></worksheet>`
  );
}

function cell(value: Cell, row: number, column: number, style: number): string {
  if (value === null) return "";
  const at = `r="${columnLetters(column)}${row}" s="${style}"`;
  if (typeof value === "boolean") return `<c ${at} t="b"><v>${Number(value)}</v></c>`;
  if (typeof value === "string")
    return `<c ${at} t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`;
  return `<c ${at}><v>${value}</v></c>`;
}

// XML 1.0 has no way to write other control characters.
const NO_XML = /[^\t\n\r\x20-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;

function escaped(text: string): string {
  return text
    .replace(NO_XML, "")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");
}
