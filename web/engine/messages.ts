import type {
  ColumnChoices,
  ColumnsFile,
  FitMade,
  FitTask,
  makeDatesBehind,
  Plan,
  PolicyChoice,
  PolicyProblem,
  Reading,
  SheetFile,
} from "../../src/index.ts";
import type { PackReadings } from "../pack-readings.ts";
import type { CellChange, RowPlace } from "./correct-row.ts";
import type { Traced } from "./trace.ts";

/** Files that the page offers for download. */
export const DOWNLOADS = [
  "plan.json",
  "orders.csv",
  "orders.xlsx",
  "orders.ics",
  "budget.txt",
  "packs.csv",
  "set-aside.csv",
] as const;
export type Download = (typeof DOWNLOADS)[number];

/** A policy key's words for people, as the engine gives them. */
export interface PolicyWords {
  key: string;
  unit: string;
  default: string;
  explains: string;
}

/** The engine's own words: policy keys and the cautions that stand beside every forecast. */
export interface EngineWords {
  policy: PolicyWords[];
  /** Canonical sheets with their columns, and which of these a row cannot do without. */
  sheets: { kind: string; columns: { name: string; required: boolean }[] }[];
  cautions: readonly string[];
}

/** What the page asks of the worker. `today` is a day number. */
export interface Asks {
  describe: { ask: Record<string, never>; answer: EngineWords };
  /** The invented fleet's sheets, as if of one folder. */
  sample: { ask: Record<string, never>; answer: (SheetFile & { fromFolder: true })[] };
  read: {
    ask: { files: SheetFile[]; columns: ColumnsFile | null; choices: PolicyChoice[]; today: number };
    answer: Read;
  };
  /** A plan that the page shows, and the reading that it rests on; null where that is what was read last. */
  adopt: { ask: { plan: Plan; reading: Reading | null }; answer: Drawn };
  /** `readingMark` is of the reading that the page has. */
  replan: { ask: { choices: PolicyChoice[]; today: number; readingMark: string }; answer: Planned };
  /** Some packs of the plan, from one to before another. */
  packs: { ask: { from: number; to: number }; answer: Plan["packs"] };
  /** The choices in files that hold nothing but policy sheets; null where they hold more. */
  choicesIn: { ask: { files: SheetFile[]; today: number }; answer: PolicyChoice[] | null };
  /** How the columns are read now, as a columns file, with examples of what they hold. */
  columns: { ask: Record<string, never>; answer: { file: ColumnsFile; tables: ColumnChoices[] } };
  /** A columns file that a person handed over; null where the text is none, with the reason. */
  columnsIn: { ask: { text: string }; answer: { columns: ColumnsFile } | { problem: string } };
  /** The fleet as sheets in canonical columns. */
  clean: { ask: Record<string, never>; answer: { name: string; text: string }[] };
  /** The same as one workbook. */
  cleanWorkbook: { ask: Record<string, never>; answer: Uint8Array };
  /** Reads label scans beside the sheets, whose catalogue names the products. */
  scan: { ask: { scans: SheetFile; today: number }; answer: Scanned[] };
  /** Replaces cells of one row; answers with the sheet as it now stands. */
  correct: { ask: { row: RowPlace; changes: CellChange[] }; answer: SheetFile };
  /** What bears what is wanted, of a reading that the page has, under its plan's policy. */
  trace: { ask: { wanted: string; reading: Reading; policy: Plan["policy"] }; answer: Traced };
  write: { ask: { file: Download }; answer: string | Uint8Array };
  /** The engine's text, from which the worker starts others. */
  carry: { ask: { engine: Blob }; answer: null };
  /** One item's fit, of a worker that does nothing else. */
  fit: { ask: FitTask; answer: FitMade };
}

/** What stands behind a plan's dated stock, and what must be known to read its spend. */
export type Behind = ReturnType<typeof makeDatesBehind> & { spendNotes: string[] };

/** What one label scan says, or why it says nothing. */
export interface Scanned {
  line: number;
  item: string | null;
  lot: string | null;
  serial: string | null;
  /** Day number. */
  expiry: number | null;
  quantity: number | null;
  problem: string | null;
}

export type AskName = keyof Asks;

/** What the page draws beside the plan, worked out in the worker since a large fleet takes a while. */
export interface Drawn {
  readings: PackReadings;
  behind: Behind;
}

/** What was read, before there is a plan. */
export interface Read {
  /** Without the fleet's tests and use log. */
  reading: Reading;
  readings: PackReadings;
}

/** A plan, without what the page has already. */
export interface Planned {
  /** Without its packs; null where no input gave a table or a file was refused. */
  plan: Plan | null;
  /** How many packs it has; they are asked for in portions. */
  packs: number;
  /** Another mark means other packs. */
  packsMark: string;
  /** null where there is no plan. */
  behind: Behind | null;
  /** The reading that the plan rests on; null where the page has it. */
  read: (Read & { readingMark: string }) | null;
  problems: PolicyProblem[];
}

export interface Question {
  id: number;
  name: AskName;
  ask: Asks[AskName]["ask"];
}

export type Answer = { id: number; answer: unknown } | { id: number; failed: string };

/** Told on the way: a stage of the plan begins, by the name under which the engine remembers it. */
export interface Began {
  began: string;
}
