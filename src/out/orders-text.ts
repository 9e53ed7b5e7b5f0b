import { aheadText } from "./ahead.ts";
import { horizonText } from "./horizon-text.ts";
import type { Plan } from "./plan-schema.ts";
import { budgetWords, deferralsTable, orderBlocks, shortBlocks, spendBlocks } from "./summary-tables.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { wrapText } from "./text-width.ts";

/** The procurement schedule: every order line, why the late ones are late, the budget, and what the schedule saves. */
export function ordersText(plan: Plan, setting: TextSetting): string {
  const { width } = setting;
  const late = plan.orders.filter((line) => line.late);
  return joinLines([
    titleLine(`Orders ${horizonText(plan)}`, setting),
    "",
    wrapText(aheadText(plan), width),
    ...section("Schedule", orderBlocks(plan.orders, plan.asOf, width), setting),
    ...section(
      "Late",
      bullets(
        late.map((line) => `${line.item} from ${line.supplier}: ${line.reason}`),
        setting,
      ),
      setting,
    ),
    ...section("Spend by fiscal year of the order", spendBlocks(plan, width), setting),
    ...section(
      `Over the ${budgetWords(plan)}: what to defer, in this order`,
      plan.deferrals.length > 0 ? [deferralsTable(plan.deferrals, width)] : [],
      setting,
    ),
    ...section("Devices short, expected", shortBlocks(plan, width), setting),
    ...section("Cautions", bullets(plan.cautions, setting), setting),
  ]);
}
