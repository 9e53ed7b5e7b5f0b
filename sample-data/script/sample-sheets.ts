import { catalogueSheet, onOrderSheet, policySheet, routineSheet, suppliersSheet } from "./buying.ts";
import { datedStockSheet } from "./dated-stock.ts";
import { devicesSheet } from "./devices.ts";
import { packsSheet, storyPacks } from "./packs.ts";
import { runtimeTestsSheet } from "./runtime-tests.ts";
import { sheetText } from "./sheet.ts";
import { useLogSheet } from "./use-log.ts";

/**
 * The invented fleet's sheets by file name. Call it once: the random numbers go on from where they stand.
 */
export function sampleSheets(): { name: string; text: string }[] {
  const packs = storyPacks();
  const sheets = [
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
  return sheets.map((sheet) => ({ name: sheet.name, text: sheetText(sheet) }));
}
