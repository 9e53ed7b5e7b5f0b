// The public list, as a table of contents: what cli/ and web/ may use.

// Days and months

export { dayFromIso, isoFromDay } from "./calendar/day.ts";
export { lastDayOfMonth, monthFromText, monthText } from "./calendar/month.ts";

// Sheets in: await openWorkbooks first, then readSheets needs no waiting

export { withDistinctNames } from "./sheets/distinct-names.ts";
export { isHiddenName } from "./sheets/hidden-names.ts";
export { openWorkbooks } from "./sheets/open-file.ts";
export { policyChoicesIn } from "./sheets/policy-choices.ts";
export { readScans } from "./sheets/read-scans.ts";
export { readSheets } from "./sheets/read-sheets.ts";
export type { CellCorrection, Reading, RefusedFile, SheetFile } from "./sheets/reading.ts";
export { policyChoice } from "./sheets/rows/policy-value.ts";

// Columns chosen by hand, and text sheets as they stand, for correcting a row

export { SHEETS } from "./fleet/columns.ts";
export { type ColumnChoices, columnChoices } from "./sheets/mapping/column-choices.ts";
export { columnsFileOf } from "./sheets/mapping/columns-as-read.ts";
export { type ColumnsFile, parseColumnsFile } from "./sheets/mapping/columns-file.ts";
export { decodeText } from "./sheets/text/decode-text.ts";
export { textRecords } from "./sheets/text/records.ts";
export { guardText } from "./sheets/values/formula-guard.ts";

// The planner's choices, and currencies

export { minorDigits, NO_CURRENCY } from "./fleet/currency.ts";
export type { Policy } from "./fleet/policy.ts";
export { POLICY_KEYS } from "./fleet/policy-keys.ts";
export { type PolicyChoice, type PolicyProblem, resolvePolicy } from "./fleet/resolve-policy.ts";

// The plan, and what is kept for the next one

export { rememberStages } from "./fleet/policy-reads.ts";
export type { Plan } from "./out/plan-schema.ts";
export { readPlan } from "./out/read-plan.ts";
export { makeDates, makeDatesBehind, makeHeldStock, makePlan } from "./plan.ts";

// Fits made side by side before a plan, and what the tests say, for drawing

export { readingsByPack } from "./fade/capacity-readings.ts";
export { type Fitter, fitSideBySide } from "./fade/fit-side-by-side.ts";
export { type FitMade, type FitTask, fitFor } from "./fade/kept-fits.ts";
export { fitsToPlan, fitsToProve } from "./life/fits-ahead.ts";

// The plan told: as text, as files, and in words that the page shares

export { budgetText } from "./out/budget-text.ts";
export { STANDING_CAUTIONS } from "./out/cautions.ts";
export { checkJson } from "./out/check-json.ts";
export { checkText } from "./out/check-text.ts";
export { cleanSheets, cleanWorkbook, datedStockCsv } from "./out/clean-sheets.ts";
export { datesCsv } from "./out/dates-csv.ts";
export { datesText } from "./out/dates-text.ts";
export { CAUSE_WORDS } from "./out/due-text.ts";
export { embedInPage } from "./out/embed-in-page.ts";
export { heldTold, outNowWithHeld } from "./out/held-stock.ts";
export { knowsNothing } from "./out/knows-nothing.ts";
export { FORECAST_NOTE, isForecast, isPriced } from "./out/line-standing.ts";
export { ordersCsv } from "./out/orders-csv.ts";
export { ordersIcs } from "./out/orders-ics.ts";
export { ordersText } from "./out/orders-text.ts";
export { packNeeds } from "./out/pack-needs.ts";
export { packsCsv } from "./out/packs-csv.ts";
export { packsText } from "./out/packs-text.ts";
export { pairMoves } from "./out/pair-moves.ts";
export { scanText } from "./out/scan-text.ts";
export { setAsideCsv } from "./out/set-aside-csv.ts";
export { isSpendKnown } from "./out/spend-known.ts";
export { spendNotes } from "./out/spend-notes.ts";
export { summaryText } from "./out/summary-text.ts";
export type { TextSetting } from "./out/text-section.ts";
export { ordersWorkbook } from "./out/workbook/orders-workbook.ts";
export { jsonChunks } from "./out/write-json.ts";
export { writePlanJson } from "./out/write-plan-json.ts";

// Two plans compared, forecasts proved on the fleet's own past, recalls

export { withNamedItems } from "./fleet/named-items.ts";
export { prove } from "./life/prove/prove.ts";
export { comparePlans, type NamedPlan } from "./out/compare.ts";
export { compareText } from "./out/compare-text.ts";
export { proveJson } from "./out/prove-json.ts";
export { proveText } from "./out/prove-text.ts";
export { traceCsv } from "./out/trace-csv.ts";
export { traceJson } from "./out/trace-json.ts";
export { traceText } from "./out/trace-text.ts";
export { mentionsBeside } from "./supplies/mentions.ts";
export { traceIds } from "./supplies/trace.ts";
export { matcherOf } from "./supplies/trace-matcher.ts";
