import type { Reading } from "../../src/index.ts";
import { countColumn } from "../columns.ts";
import { button, make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import { forgetChoices } from "../kept-choices.ts";
import { forgetWork, isKept } from "../kept-work.ts";
import { rowsRead } from "../rows-read.ts";
import { saveFile } from "../save-file.ts";
import type { ReadSession } from "../session.ts";
import { mention } from "../status.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { addFiles, beforeCorrection, correct, setColumns } from "../take-sheets.ts";
import { fileAndTab } from "../where.ts";
import { columnsOf } from "./columns-table.ts";
import { findings } from "./findings.ts";
import { answer, lead, section } from "./section.ts";
import { setAsideTable } from "./set-aside-table.ts";

/** Sheets: what was read and how, what was found on the way, and every row that was set aside. */
export function sheets(
  { plan, reading, hasSheets, words: engineWords }: ReadSession,
  ...tools: HTMLElement[]
): HTMLElement {
  const words = say.sheets;
  const found = reading.inputs.length > 0;
  return section(
    "sheets",
    words.heading,
    lead(found ? rowsRead(reading) : words.nothing),
    hasSheets ? keptLine() : make("p", {}, words.embedded),
    reading.refused.length > 0 && answer(words.refusedHeading, refused(reading)),
    found && tables(reading),
    found &&
      answer(
        words.columnsHeading,
        ...reading.inputs.map((input) => columnsOf(input, engineWords, hasSheets ? setColumns : null)),
        hasSheets && takeAlong(),
      ),
    answer(words.findingsHeading, findings(plan ?? reading)),
    found &&
      answer(
        words.asideHeading,
        reading.setAside.length > 0
          ? setAsideTable(reading, hasSheets ? correct : null)
          : make("p", {}, words.noneAside),
        takeBack(),
      ),
    ...tools,
  );
}

/** That the reader's work is kept in this browser, with a button to keep nothing any longer; the page goes on showing it. */
function keptLine(): HTMLElement {
  const { kept, clear, cleared } = say.intake;
  const forget = async () => {
    forgetChoices();
    await forgetWork();
    line.replaceChildren(cleared);
    line.focus();
    mention(cleared);
  };
  const line = make(
    "p",
    { class: "act-on", tabindex: -1 },
    isKept() ? [`${kept} `, button(clear, forget, { class: "link", id: "forget" })] : cleared,
  );
  return line;
}

/** A button that takes the last correction back, so that the row can be corrected otherwise. */
function takeBack(): HTMLElement | null {
  const before = beforeCorrection();
  if (before === undefined) return null;
  const text = say.sheets.uncorrect(before.name);
  return make(
    "p",
    { class: "act-on" },
    button(text, () => addFiles([before]), { id: "uncorrect" }),
  );
}

/** The fleet as clean sheets, and how the columns were read, to keep. */
function takeAlong(): HTMLElement {
  const words = say.sheets.takeAlong;
  const save = async () => {
    for (const { name, text } of await ask("clean", {})) saveFile(text, name);
  };
  const saveWorkbook = async () => saveFile(await ask("cleanWorkbook", {}), "cleaned.xlsx");
  const saveColumns = async () => saveFile(JSON.stringify((await ask("columns", {})).file, null, 2), "columns.json");
  return make(
    "p",
    { class: "buttons act-on" },
    button(words.clean, save, { id: "save-clean" }),
    button(words.workbook, saveWorkbook, { id: "save-clean-workbook" }),
    button(words.columns, saveColumns, { id: "save-columns" }),
    make("span", {}, words.note),
  );
}

const kindWords = (kind: string) => kind.replaceAll("_", " ");

function tables(reading: Reading): HTMLElement {
  const heads = say.sheets.tableHeads;
  return table<Reading["inputs"][number]>({
    caption: say.sheets.tablesCaption,
    rows: reading.inputs,
    columns: [
      { title: heads[0]!, value: (row) => fileAndTab(row.file, row.sheet), wide: true },
      { title: heads[1]!, value: (row) => row.kinds.map(kindWords).join(", ") },
      countColumn(heads[2]!, (row) => row.rows),
      countColumn(heads[3]!, (row) => row.used),
      countColumn(heads[4]!, (row) => row.setAside),
    ],
  });
}

function refused(reading: Reading): HTMLElement {
  const heads = say.sheets.refusedHeads;
  return table({
    caption: say.sheets.refusedHeading,
    rows: reading.refused,
    columns: [
      { title: heads[0]!, value: (row) => row.file },
      { title: heads[1]!, value: (row) => row.message, wide: true },
    ],
  });
}
