import type { Source } from "../../fleet/rows.ts";
import type { ColumnTexts } from "./column-texts.ts";

/**
 * The cells of a text's records as numbers into the texts of their columns. A list of cells for each record would take
 * several times the room, and what is kept for each row is what a large sheet costs.
 */
export interface TextCells {
  firstLine: number;
  columns: readonly ColumnTexts[];
  /** By record, then column. */
  numbers: Int32Array;
  /** Where the numbers of each record start, and where those of the last one end. */
  starts: Int32Array;
}

/** A record of a text of one line a record. It is the source of what is read from it, too. */
export class TextRow implements Source {
  readonly file: string;
  readonly sheet = null;
  readonly line: number;
  // no part of a source that is written, compared or sent elsewhere
  readonly #text: TextCells;

  constructor(file: string, line: number, text: TextCells) {
    this.file = file;
    this.line = line;
    this.#text = text;
  }

  /** By column, the texts that stand in it in any record of the text, each once or a few times. */
  get columns(): readonly ColumnTexts[] {
    return this.#text.columns;
  }

  get width(): number {
    const { firstLine, starts } = this.#text;
    const record = this.line - firstLine;
    return starts[record + 1]! - starts[record]!;
  }

  at(column: number): string | undefined {
    const number = this.numberAt(column);
    return number === -1 ? undefined : this.#text.columns[column]?.texts[number];
  }

  /** The number of a cell's text in its column: the same where the texts are; -1 beyond the record's end. */
  numberAt(column: number): number {
    const { firstLine, starts, numbers } = this.#text;
    const record = this.line - firstLine;
    const at = starts[record]! + column;
    return column >= 0 && at < starts[record + 1]! ? numbers[at]! : -1;
  }

  /** A list of its own at each call. */
  get cells(): string[] {
    const cells = new Array<string>(this.width);
    for (let column = 0; column < cells.length; column++) cells[column] = this.at(column)!;
    return cells;
  }
}
