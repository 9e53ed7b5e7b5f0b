import {
  makePlan,
  openWorkbooks,
  type Plan,
  policyChoicesIn,
  readSheets,
  resolvePolicy,
  type SheetFile,
} from "../src/index.ts";
import { planSchema } from "../src/out/plan-schema.ts";
import type { MadeUpSheets, SheetRow } from "./made-up-fleet.ts";
import { textFile } from "./sheets/sheet-file.ts";

export const ISO_DAY = /^\d{4}-\d\d-\d\d$/;
const DECIMAL = /^-?\d+\.\d+$/;

/** How a sheet of text is written. */
interface Manner {
  separator: string;
  day: (iso: string) => string;
  decimal: (text: string) => string;
}
export const PLAIN: Manner = { separator: ",", day: (iso) => iso, decimal: (text) => text };

function csv(rows: readonly SheetRow[], columns: readonly string[], { separator, day, decimal }: Manner): string {
  const cell = (text: string) => {
    if (ISO_DAY.test(text)) return day(text);
    const told = DECIMAL.test(text) ? decimal(text) : text;
    return told.includes(separator) ? `"${told}"` : told;
  };
  const lines = rows.map((row) => columns.map((column) => cell(row[column] ?? "")));
  return `${[columns, ...lines].map((cells) => cells.join(separator)).join("\n")}\n`;
}

/** A file for each sheet that has rows; the policy's is always the same. */
export function filesOf(
  sheets: MadeUpSheets,
  columnsOf = (rows: SheetRow[]) => Object.keys(rows[0]!),
  manner = PLAIN,
): SheetFile[] {
  return Object.entries(sheets)
    .filter(([, rows]) => rows.length > 0)
    .map(([kind, rows]) =>
      kind === "policy"
        ? textFile("policy.csv", csv(rows, ["key", "value"], PLAIN))
        : textFile(`${kind}.csv`, csv(rows, columnsOf(rows), manner)),
    );
}

/** The rows that the files hold, and the policy that some of them hold. */
export async function read(files: SheetFile[], policyFiles = files) {
  await openWorkbooks(files);
  const { policy } = resolvePolicy(policyChoicesIn(policyFiles), 0);
  return { policy, reading: readSheets(files, { asOf: policy.asOf, dateOrder: policy.dateOrder }) };
}

/** The plan from the files, in which every figure is one. */
export async function planned(files: SheetFile[], policyFiles = files): Promise<Plan> {
  const { policy, reading } = await read(files, policyFiles);
  const plan = makePlan(reading, policy);
  planSchema.parse(plan);
  return plan;
}
