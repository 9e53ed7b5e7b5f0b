import { counted, countText } from "../fleet/count-text.ts";
import { STOCK_FINDING_CODES } from "../supplies/finding-codes.ts";
import { COST_PER_UNIT_MOVED } from "../supplies/moves.ts";
import { busiestPlaces } from "./busiest-places.ts";
import { type DatedCounts, LATER, OVERDUE } from "./dated-counts.ts";
import { countsOf, type DatesReport, usesOf } from "./dates-report.ts";
import { exchangeTable, swapCapacityLines, swapTable, useTable } from "./dates-tables.ts";
import { findingLines } from "./finding-lines.ts";
import { heldTold } from "./held-stock.ts";
import { horizonText } from "./horizon-text.ts";
import { lapseTable } from "./lapse-table.ts";
import { listTold, pastExpiry } from "./out-now.ts";
import { pairMoves } from "./pair-moves.ts";
import { routineLines } from "./routine-table.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { wrapText } from "./text-width.ts";

/**
 * Dated stock by the month in which it is to be swapped and by place, what lapses, crowded months with their reasons,
 * swaps and moves, the use rates behind them, and stock and use that do not fit the fleet. Held stock is told by itself.
 */
export function datesText(plan: DatesReport, setting: TextSetting): string {
  const { rows, units, expired, due } = countsOf(plan);
  const uses = usesOf(plan);
  return joinLines([
    titleLine(`Dated stock ${horizonText(plan)}`, setting),
    "",
    wrapText(rows === 0 ? "No dated unit was read." : whatThereIs(plan, rows, units), setting.width),
    ...section(
      "Out now",
      bullets([...pastExpiry({ asOf: plan.asOf, datedStock: expired }), ...openedTooLong(plan)], setting),
      setting,
    ),
    ...section("Held", bullets(heldTold(plan.heldStock), setting), setting),
    ...section("Units to swap by month", monthLines(plan, due, setting.width), setting),
    ...section("Places with most to swap", [busiestPlaces(plan, setting.width) ?? []].flat(), setting),
    ...section("What lapses if nothing is done", [lapseTable(plan, setting.width) ?? []].flat(), setting),
    ...section(
      "Crowded months",
      bullets(
        plan.crowdedMonths.map((crowd) => crowd.says),
        setting,
      ),
      setting,
    ),
    ...section(
      "Swap calendar",
      plan.swapCalendar.length > 0 ? [swapTable(plan.swapCalendar, setting.width)] : [],
      setting,
    ),
    ...section("Swap visits a month", swapCapacityLines(plan, setting.width), setting),
    ...section("Moves", plan.moves.length > 0 ? moveLines(plan, setting.width) : [], setting),
    ...section("Use behind these figures", uses.length > 0 ? [useTable(uses, setting.width)] : [], setting),
    ...section("Routine", routineLines(plan, setting.width), setting),
    ...section("Stock and use that do not fit", misfits(plan, setting.width), setting),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}

function whatThereIs({ policy }: DatesReport, rows: number, units: number): string {
  const before = Number(policy.swap_before_expiry_days);
  const by = before === 0 ? "by the day on which it expires" : `${counted(before, "day")} before it expires`;
  return `${counted(units, "dated unit")} in ${counted(rows, "row")}. A unit is to be swapped ${by}; opened gel once its days after opening are over, if sooner.`;
}

/** Units that are in date but have stood open for longer than their days after opening, as one sentence or none. */
function openedTooLong({ openedTooLong: rows }: DatesReport): string[] {
  if (rows.length === 0) return [];
  const units = rows.reduce((sum, { quantity }) => sum + quantity, 0);
  const told = rows.map(({ item, place, swapBy }) => `${item} at ${place ?? "no named place"} (swap by ${swapBy})`);
  return [`${counted(units, "opened unit is", "opened units are")} past the days after opening: ${listTold(told)}.`];
}

/** Counts, places and uses that do not fit the fleet, each with its fix; `check` knows only how sheets were read. */
function misfits({ findings }: DatesReport, width: number): string[] {
  return findingLines({ setAside: [], findings: findings.filter(({ code }) => code in STOCK_FINDING_CODES) }, width);
}

function moveLines({ moves }: DatesReport, width: number): string[] {
  const exchanges = pairMoves(moves);
  const units = moves.reduce((sum, { quantity }) => sum + quantity, 0);
  const saved = moves.reduce((sum, { unitsSaved }) => sum + unitsSaved, 0);
  const says = `${counted(exchanges.length, "exchange")} of ${counted(units, "unit")} ${exchanges.length === 1 ? "saves" : "save"} ${saved.toFixed(1)} from lapsing; every place keeps its count. What saves ${COST_PER_UNIT_MOVED} of a unit or less for each unit carried is left out.`;
  return [wrapText(says, width), "", exchangeTable(exchanges, width)];
}

/** A line a month: its total, then the items; what is overdue stands first and what comes after the plan last. */
function monthLines(plan: DatesReport, due: DatedCounts["due"], width: number): string[] {
  const byMonth = new Map<string, Map<string, number>>();
  for (const { item, when, units } of due) {
    if (units === 0) continue;
    const label = when.padEnd(7);
    const items = byMonth.get(label) ?? new Map<string, number>();
    items.set(item, (items.get(item) ?? 0) + units);
    byMonth.set(label, items);
  }
  const crowded = new Set(plan.crowdedMonths.map((crowd) => `${crowd.month} ${crowd.item}`));
  return monthOrder([...byMonth.keys()]).map((label) => {
    const items = [...(byMonth.get(label) ?? [])].sort(([a], [b]) => (a < b ? -1 : 1));
    const total = items.reduce((sum, [, units]) => sum + units, 0);
    const told = items.map(
      ([item, units]) => `${item} ${countText(units)}${crowded.has(`${label} ${item}`) ? " (crowded)" : ""}`,
    );
    return wrapText(`${label} ${countText(total).padStart(6)}: ${told.join(", ")}`, width, " ".repeat(17));
  });
}

function monthOrder(labels: string[]): string[] {
  const place = (label: string) => (label.startsWith(OVERDUE) ? "" : label.startsWith(LATER) ? "~" : label);
  return labels.sort((a, b) => (place(a) < place(b) ? -1 : 1));
}
