import { join } from "node:path";
import {
  ordersCsv,
  ordersIcs,
  ordersWorkbook,
  packsCsv,
  setAsideCsv,
  summaryText,
  writePlanJson,
} from "../../src/index.ts";
import { failOn } from "../fail-on.ts";
import { type LoadedPlan, loadPlan } from "../load-plan.ts";
import { noteUncut } from "../note-uncut.ts";
import { pageWith } from "../page-template.ts";
import { note, print, stdoutSetting, suggest, typed } from "../print.ts";
import type { VerbOptions } from "../verb-options.ts";
import { type OutFile, writeFiles } from "../write-files.ts";
import { noteWritten } from "../write-out.ts";

const PAGE = "page.html";

/**
 * Everything: the summary on stdout, the plan's files in --out.
 *
 * @param makePage  what makes the page: null for a fleet too large for one
 */
export async function runPlan(inputs: readonly string[], options: VerbOptions, makePage = pageWith): Promise<void> {
  const loaded = await loadPlan(inputs, options);
  const { reading, plan, paths } = loaded;
  const files = options.out === undefined ? [] : await planFiles(loaded, makePage(loaded.plan, loaded.reading));
  if (options.out !== undefined) await writeFiles(options.out, files, paths);
  await print(options.json ? writePlanJson(plan) : [summaryText(plan, stdoutSetting(), loaded.heldStock())]);
  if (options.out === undefined) {
    suggest(`${typed(["wanecast", "plan", ...inputs, "--out", "out"])} writes the orders, a calendar and the page`);
  } else {
    noteWritten(options.out, files);
    noteUncut(plan);
    if (files.some(({ name }) => name === PAGE)) suggest(`open ${typed([join(options.out, PAGE)])} in a browser`);
  }
  failOn(options.failOn ?? [], reading, plan);
}

async function planFiles({ reading, plan }: LoadedPlan, page: string | null): Promise<OutFile[]> {
  if (page === null) note("No page was made: the fleet is too large for one.");
  return [
    { name: "plan.json", chunks: writePlanJson(plan) },
    { name: "orders.csv", chunks: [ordersCsv(plan)] },
    { name: "orders.xlsx", chunks: [await ordersWorkbook(plan)] },
    { name: "orders.ics", chunks: [ordersIcs(plan)] },
    { name: "packs.csv", chunks: [packsCsv(plan)] },
    { name: "set-aside.csv", chunks: [setAsideCsv(reading.setAside, reading.inputs)] },
    ...(page === null ? [] : [{ name: PAGE, chunks: [page] }]),
  ];
}
