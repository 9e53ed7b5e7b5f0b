import { counted, tenthsText } from "../fleet/count-text.ts";
import { sortBy } from "../maths/sort-by.ts";
import { STOCK_FINDING_CODES } from "../supplies/finding-codes.ts";
import { aheadText } from "./ahead.ts";
import { findingLines } from "./finding-lines.ts";
import { type HeldRow, outNowWithHeld } from "./held-stock.ts";
import { horizonText } from "./horizon-text.ts";
import { knowsNothing } from "./knows-nothing.ts";
import type { Plan } from "./plan-schema.ts";
import { signsTold } from "./plan-signs.ts";
import { sheetsRead } from "./sheets-read.ts";
import { budgetWords, neededTable, orderBlocks, shortBlocks, spendBlocks } from "./summary-tables.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { wrapText } from "./text-width.ts";

/** Order lines, crowded months and early signs that the summary shows before it points to the rest. */
const SHOWN_ORDERS = 8;
const SHOWN_CROWDS = 5;
const SHOWN_SIGNS = 4;

/**
 * The plan on one screen or two: what lies ahead, what is needed, when to order, what it costs, what was read.
 *
 * @param held  dated stock that is held, which plan.json does not hold: what of it sits in devices is to come out
 */
export function summaryText(plan: Plan, setting: TextSetting, held: readonly HeldRow[] = []): string {
  const { width } = setting;
  return joinLines([
    titleLine(`Plan ${horizonText(plan)}`, setting),
    "",
    wrapText(aheadText(plan), width),
    ...section("Out now", bullets(outNowWithHeld(plan, held), setting), setting),
    ...section(
      "Needed (units; likely = P50, safe = P95)",
      plan.demand.length > 0 && !knowsNothing(plan) ? [neededTable(plan, width)] : [],
      setting,
    ),
    ...section("Early signs", bullets(signsTold(plan, SHOWN_SIGNS, "`wanecast packs`"), setting), setting),
    ...section("Crowded months", crowds(plan, setting), setting),
    ...section("Next orders", nextOrders(plan, width), setting),
    ...section("Spend by fiscal year of the order", spend(plan, width), setting),
    ...section("Devices short, expected", shortBlocks(plan, width), setting),
    ...section(
      "Sheets",
      [wrapText(`${sheetsRead(plan)} ${whereFound(plan)}`, width), ...goneWithout(plan, width)],
      setting,
    ),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}

/** Which verbs tell the findings: those of stock and use come after reading, so that check has not got them. */
function whereFound({ findings }: Plan): string {
  const ofStock = findings.filter(({ code }) => code in STOCK_FINDING_CODES).length;
  const also =
    ofStock === 0 ? "" : `, and \`wanecast dates\` tells the ${counted(ofStock, "finding")} about stock and use`;
  return `\`wanecast check\` tells how each was read${also}.`;
}

/** What a plan that looks whole goes without: what columns of dates in no settled order date, and policy values that are none. */
function goneWithout({ findings }: Plan, width: number): string[] {
  const told = findings.filter(({ code }) => code.startsWith("date-order-") || code === "policy-unusable");
  return findingLines({ setAside: [], findings: told }, width);
}

function crowds(plan: Plan, setting: TextSetting): string[] {
  // the largest crowds matter most, and are told in the order in which they come
  const largest = sortBy(plan.crowdedMonths, (crowd) => [-crowd.units, crowd.month, crowd.item]).slice(0, SHOWN_CROWDS);
  const told = sortBy(largest, (crowd) => [crowd.month, crowd.item]).map((crowd) => crowd.says);
  const more = plan.crowdedMonths.length - told.length;
  return bullets([...told, ...(more > 0 ? [`${counted(more, "more", "more")} in \`wanecast dates\`.`] : [])], setting);
}

function spend(plan: Plan, width: number): string[] {
  const { deferrals } = plan;
  if (plan.budget.length === 0 || deferrals.length === 0) return spendBlocks(plan, width);
  // a line may be put off year after year, and a device be short of several items at once
  const lines = new Set(deferrals.map(({ line }) => line)).size;
  const months = plan.short.reduce(
    (sum, { withinBudget, withSchedule }) => sum + (withinBudget ?? withSchedule).expected - withSchedule.expected,
    0,
  );
  const told = `The ${budgetWords(plan)} has no room for ${counted(lines, "line")} in full: put off as \`wanecast orders\` lists them, that brings ${tenthsText(months)} device-months short (a device short at one month's end).`;
  return [...spendBlocks(plan, width), wrapText(told, width)];
}

function nextOrders(plan: Plan, width: number): string[] {
  if (plan.orders.length === 0) return [];
  const lines = sortBy(plan.orders, (line) => [line.late ? 0 : 1, line.orderBy, line.supplier, line.item]);
  const more = lines.length - SHOWN_ORDERS;
  return [
    ...orderBlocks(lines.slice(0, SHOWN_ORDERS), plan.asOf, width),
    ...(more > 0 ? [`${counted(more, "more line", "more lines")} in \`wanecast orders\`.`] : []),
  ];
}
