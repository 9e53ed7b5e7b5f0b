import type { Reading } from "../../src/index.ts";
import { make } from "../dom.ts";
import { ask } from "../engine/engine.ts";
import { numberWords } from "../format.ts";
import { rowsRead } from "../rows-read.ts";
import { saveFile } from "../save-file.ts";
import type { ReadSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { fileAndTab } from "../where.ts";
import { columnsOf, type SetColumns } from "./columns-table.ts";
import { findings } from "./findings.ts";
import { answer, lead, section } from "./section.ts";
import { type Correct, setAsideTable } from "./set-aside-table.ts";

export interface SheetActions {
  forget: () => void;
  correct: Correct;
  setColumns: SetColumns;
}

/** Sheets: what was read and how, what was found on the way, and every row that was set aside. */
export function sheets(
  { plan, reading, hasSheets, words: engineWords }: ReadSession,
  actions: SheetActions,
  ...tools: HTMLElement[]
): HTMLElement {
  const words = say.sheets;
  const found = reading.inputs.length > 0;
  return section(
    "sheets",
    words.heading,
    lead(found ? rowsRead(reading) : words.nothing),
    hasSheets
      ? make(
          "p",
          { class: "act-on" },
          `${say.intake.kept} `,
          make(
            "button",
            { type: "button", class: "link", id: "forget", click: () => actions.forget() },
            say.intake.clear,
          ),
        )
      : make("p", {}, words.embedded),
    reading.refused.length > 0 && answer(words.refusedHeading, refused(reading)),
    found && tables(reading),
    found &&
      answer(
        words.columnsHeading,
        ...reading.inputs.map((input) => columnsOf(input, engineWords, hasSheets ? actions.setColumns : null)),
        hasSheets && takeAlong(),
      ),
    answer(words.findingsHeading, findings(plan ?? reading)),
    found &&
      answer(
        words.asideHeading,
        reading.setAside.length > 0
          ? setAsideTable(reading, hasSheets ? actions.correct : null)
          : make("p", {}, words.noneAside),
      ),
    ...tools,
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
    make("button", { type: "button", id: "save-clean", click: () => save() }, words.clean),
    make("button", { type: "button", id: "save-clean-workbook", click: () => saveWorkbook() }, words.workbook),
    make("button", { type: "button", id: "save-columns", click: () => saveColumns() }, words.columns),
    make("span", {}, words.note),
  );
}

const kindWords = (kind: string) => kind.replaceAll("_", " ");

function tables(reading: Reading): HTMLElement {
  const heads = say.sheets.tableHeads;
  return table({
    caption: say.sheets.tablesCaption,
    rows: reading.inputs,
    columns: [
      { title: heads[0]!, value: (row) => fileAndTab(row.file, row.sheet), wide: true },
      { title: heads[1]!, value: (row) => row.kinds.map(kindWords).join(", ") },
      { title: heads[2]!, value: (row) => row.rows, show: (row) => numberWords(row.rows), figures: true },
      { title: heads[3]!, value: (row) => row.used, show: (row) => numberWords(row.used), figures: true },
      { title: heads[4]!, value: (row) => row.setAside, show: (row) => numberWords(row.setAside), figures: true },
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
