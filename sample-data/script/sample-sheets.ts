import { catalogueSheet, onOrderSheet, policySheet, routineSheet, suppliersSheet } from "./buying.ts";
import { datedStockSheet } from "./dated-stock.ts";
import { devicesSheet } from "./devices.ts";
import { packsSheet, storyPacks } from "./packs.ts";
import { startAnew } from "./random.ts";
import { runtimeTestsSheet } from "./runtime-tests.ts";
import { type Sheet, sheetText } from "./sheet.ts";
import { useLogSheet } from "./use-log.ts";

/** The invented fleet's sheets, the same at every call. */
export function sampleTables(): Sheet[] {
  startAnew();
  const packs = storyPacks();
  return [
    devicesSheet(),
    packsSheet(packs),
    runtimeTestsSheet(packs),
    datedStockSheet(),
    useLogSheet(),
    catalogueSheet(),
    suppliersSheet(),
    onOrderSheet(),
    routineSheet(),
    policySheet(),
  ];
}

/** The sheets as CSV text by file name. */
export function sheetTexts(sheets: readonly Sheet[]): { name: string; text: string }[] {
  return sheets.map((sheet) => ({ name: sheet.name, text: sheetText(sheet) }));
}

/** The invented fleet's sheets as CSV text by file name. */
export function sampleSheets(): { name: string; text: string }[] {
  return sheetTexts(sampleTables());
}
