import type { Cell, WriteSheet } from "hucre/xlsx";
import { writeXlsx } from "hucre/xlsx";
import type { Sheet } from "../sheet.ts";
import { layOutTab, type RegisterTab } from "./lay-out-tab.ts";
import { TAB_PLANS } from "./tab-plans.ts";

/** A first tab that is nothing but talk. */
const READ_ME: RegisterTab = {
  name: "Read me first",
  rows: [["Register of Tarnfell Ambulance"], [], ["One tab for each list. The Totals are counted by hand."]],
  merges: [],
  hiddenColumns: [],
};

/** The tabs of the same fleet as someone else's spreadsheet; every sheet of the fleet has its tab. */
function registerTabs(sheets: readonly Sheet[]): RegisterTab[] {
  const tabs = sheets.map((sheet) => {
    const plan = TAB_PLANS[sheet.name];
    if (!plan) throw new Error(`registerTabs: the register has no tab for ${sheet.name}`);
    return layOutTab(sheet, plan);
  });
  return [READ_ME, ...tabs];
}

/** The register as an XLSX file. */
export async function fleetRegister(sheets: readonly Sheet[]): Promise<Uint8Array> {
  return writeXlsx({ sheets: registerTabs(sheets).map(workbookTab) });
}

function workbookTab({ name, rows, merges, hiddenColumns }: RegisterTab): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  const values = rows.map((row, rowIndex) =>
    row.map((cell, column) => {
      if (cell === null || typeof cell !== "object") return cell;
      cells.set(`${rowIndex},${column}`, { value: cell.value, type: "number", style: { numFmt: cell.numFmt } });
      return cell.value;
    }),
  );
  const width = Math.max(...rows.map((row) => row.length));
  const columns = Array.from({ length: width }, (_, index) => ({ width: 16, hidden: hiddenColumns.includes(index) }));
  return { name, rows: values, cells, merges, columns };
}
