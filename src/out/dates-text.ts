import { counted, countText } from "./count-text.ts";
import { moveTable, swapTable } from "./dates-tables.ts";
import { horizonText } from "./horizon-text.ts";
import { pastExpiry } from "./out-now.ts";
import type { Plan } from "./plan-schema.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { wrapText } from "./text-width.ts";

/** Dated stock by the month in which it is to be swapped, crowded months with their reasons, swaps and moves. */
export function datesText(plan: Plan, setting: TextSetting): string {
  const units = plan.datedStock.reduce((sum, row) => sum + row.quantity, 0);
  return joinLines([
    titleLine(`Dated stock ${horizonText(plan)}`, setting),
    "",
    wrapText(
      `${counted(units, "dated unit")} in ${counted(plan.datedStock.length, "row")}. A unit is to be swapped ${plan.policy.swap_before_expiry_days} days before it expires; opened gel by its opened date if that is sooner.`,
      setting.width,
    ),
    ...section("Out now", bullets(pastExpiry(plan), setting), setting),
    ...section("Units to swap by month", monthLines(plan, setting.width), setting),
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
    ...section("Moves", plan.moves.length > 0 ? [moveTable(plan.moves, setting.width)] : [], setting),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}

/** A line a month: its total, then the items; what is overdue stands first and what comes after the plan last. */
function monthLines(plan: Plan, width: number): string[] {
  const byMonth = new Map<string, Map<string, number>>();
  for (const row of plan.datedStock) {
    if (row.quantity === 0) continue;
    const label = monthLabel(row.swapBy, plan);
    const items = byMonth.get(label) ?? new Map<string, number>();
    items.set(row.item, (items.get(row.item) ?? 0) + row.quantity);
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

const OVERDUE = "overdue";
const LATER = "later";

function monthLabel(swapBy: string, plan: Plan): string {
  if (swapBy < plan.asOf) return OVERDUE.padEnd(7);
  const month = swapBy.slice(0, 7);
  return month > plan.horizon.to ? LATER.padEnd(7) : month;
}

function monthOrder(labels: string[]): string[] {
  const place = (label: string) => (label.startsWith(OVERDUE) ? "" : label.startsWith(LATER) ? "~" : label);
  return labels.sort((a, b) => (place(a) < place(b) ? -1 : 1));
}
