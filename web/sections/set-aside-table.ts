import type { Reading } from "../../src/index.ts";
import { button, make } from "../dom.ts";
import type { CellChange, RowPlace } from "../engine/correct-row.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { fileAndTab } from "../where.ts";

type Row = Reading["setAside"][number];

type Correct = (row: RowPlace, changes: CellChange[]) => void;

/** Every row that was set aside, with its reason; with the sheets at hand it can be corrected in place and read again. */
export function setAsideTable(reading: Reading, correct: Correct | null): HTMLElement {
  const heads = say.sheets.asideHeads;
  return table({
    caption: say.sheets.asideHeading,
    rows: reading.setAside,
    first: 20,
    columns: [
      { title: heads[0]!, value: (row) => fileAndTab(row.file, row.sheet), wide: true },
      { title: heads[1]!, value: (row) => String(row.line), figures: true },
      { title: heads[2]!, value: (row) => row.message, wide: true },
    ],
    below: asItStands,
  });

  function asItStands(row: Row): Node {
    const code = make("code", {}, text(row));
    if (correct === null) return code;
    const holder = make("div", {}, code);
    const open = button(say.sheets.correct, () => holder.replaceChildren(form(row, correct, close)), {
      class: "link correct",
    });
    const close = () => {
      holder.replaceChildren(code, " ", open);
      open.focus();
    };
    holder.append(" ", open);
    return holder;
  }

  function form(row: Row, submit: Correct, close: () => void): HTMLElement {
    const headers = headersFor(row, reading);
    const inputs = Array.from({ length: Math.max(row.cells.length, headers.length) }, (_, index) => {
      const value = row.cells[index] ?? "";
      return make("input", { type: "text", value: String(value), autocomplete: "off", spellcheck: "false" });
    });
    const made = make(
      "form",
      {
        class: "correction",
        keydown: (event) => (event as KeyboardEvent).key === "Escape" && close(),
        submit: (event) => {
          event.preventDefault();
          // Cells that were left alone stay what they are: a number, a date, or another table's beside this one.
          const changes = inputs.flatMap(({ value, defaultValue }, index) =>
            value === defaultValue ? [] : [{ column: index + 1, text: value }],
          );
          submit({ file: row.file, sheet: row.sheet, line: row.line }, changes);
        },
      },
      inputs.map((input, index) => make("label", {}, headers[index] ?? say.sheets.columnNumber(index + 1), input)),
      row.sheet !== null && make("small", {}, say.sheets.correctedHere),
      make(
        "p",
        { class: "buttons" },
        make("button", { type: "submit" }, say.sheets.readAgain),
        button(say.sheets.leave, close),
      ),
    );
    queueMicrotask(() => inputs[0]?.focus());
    return made;
  }
}

function text(row: Row): string {
  return row.cells.map((cell) => cell ?? "").join(" | ");
}

/** Headers of the table in which a row stands: the last one of its file that begins above it. */
function headersFor(row: Row, reading: Reading): (string | null)[] {
  const above = reading.inputs
    .filter((input) => input.file === row.file && input.sheet === row.sheet && (input.headerLines[0] ?? 0) < row.line)
    .sort((a, b) => (a.headerLines[0] ?? 0) - (b.headerLines[0] ?? 0));
  const headers: (string | null)[] = [];
  for (const column of above.at(-1)?.columns ?? []) headers[column.column - 1] = column.header;
  return headers;
}
