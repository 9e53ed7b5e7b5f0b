import { budgetText, jsonChunks, ordersCsv, ordersIcs, ordersText, ordersWorkbook } from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { loadPlan } from "../load-plan.ts";
import { noteUncut } from "../note-uncut.ts";
import { planPart } from "../plan-part.ts";
import { print, stdoutSetting, suggest, typed } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { writeOut } from "../write-out.ts";

/** Characters on a line of a printed page. */
const PAGE_WIDTH = 80;

/** The procurement schedule and the budget. */
export async function runOrders(inputs: readonly string[], options: VerbOptions): Promise<void> {
  const { reading, plan, paths } = await loadPlan(inputs, options);
  if (options.out !== undefined) {
    const files = [
      { name: "orders.csv", chunks: [ordersCsv(plan)] },
      { name: "orders.xlsx", chunks: [await ordersWorkbook(plan)] },
      { name: "orders.ics", chunks: [ordersIcs(plan)] },
      { name: "budget.txt", chunks: [budgetText(plan, { width: PAGE_WIDTH })] },
    ];
    await writeOut(options.out, files, paths);
    noteUncut(plan);
  }
  const json = () => jsonChunks(planPart(plan, ["demand", "orders", "budget", "deferrals", "short"]));
  await print(options.json ? json() : [ordersText(plan, stdoutSetting())]);
  if (options.out === undefined) {
    suggest(
      `${typed(["wanecast", "orders", ...inputs, "--out", "out"])} writes them as a workbook, CSV and a calendar`,
    );
  }
  failOn(options.failOn ?? [], reading, plan);
}
