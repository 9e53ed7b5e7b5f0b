import { chanceText, counted, countText, tenthsText } from "../fleet/count-text.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { groupedText } from "../fleet/money.ts";
import { groupedMoney } from "../fleet/money-text.ts";
import { sortBy } from "../maths/sort-by.ts";
import { firstYearEnd, horizonLength } from "./horizon-text.ts";
import { knowsNothing } from "./knows-nothing.ts";
import { FORECAST_NOTE, isForecast, isPriced } from "./line-standing.ts";
import { packNeeds } from "./pack-needs.ts";
import type { Plan } from "./plan-schema.ts";
import { hasPrices, isSpendKnown } from "./spend-known.ts";
import { spendNotes } from "./spend-notes.ts";
import { type TextColumn, textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** Units needed by item: this month, in the first year and to the horizon; P50 and P95. Packs first. */
export function neededTable(plan: Plan, width: number): string {
  const isOfPacks = packNeeds(plan);
  const rows = sortBy(plan.demand, (row) => [isOfPacks(row) ? 0 : 1, row.item]);
  const spans = [...new Set([firstYearEnd(plan), horizonLength(plan) - 1])];
  const at = (values: readonly number[], index: number) => countText(values[index] ?? 0);
  type Row = Plan["demand"][number];
  const thisMonth: TextColumn<Row> = {
    head: "this month",
    align: "right",
    dropRank: 1,
    cell: (row) => at(row.cumulative.p50, 0),
  };
  return textTable<Row>(
    [
      { head: "item", cell: (row) => row.item, clipTo: 14 },
      ...(spans.includes(0) ? [] : [thisMonth]),
      ...spans.flatMap((last): TextColumn<Row>[] => [
        { head: `${counted(last + 1, "month")}: likely`, align: "right", cell: (row) => at(row.cumulative.p50, last) },
        { head: "safe", align: "right", cell: (row) => at(row.cumulative.p95, last) },
      ]),
    ],
    rows,
    width,
  );
}

/** Order lines with their dates and cost, and what a line marked forecast is; nothing without any. */
export function orderBlocks(lines: Plan["orders"], asOf: string, width: number): string[] {
  if (lines.length === 0) return [];
  const note = lines.some((line) => isForecast(line, asOf)) ? [wrapText(FORECAST_NOTE, width)] : [];
  return [ordersTable(lines, asOf, width), ...note];
}

function ordersTable(lines: Plan["orders"], asOf: string, width: number): string {
  type Line = Plan["orders"][number];
  const standing = (line: Line) => (line.late ? "LATE" : isForecast(line, asOf) ? "forecast" : "");
  return textTable<Line>(
    [
      { head: "order by", cell: (line) => line.orderBy },
      ...(lines.some((line) => standing(line) !== "") ? [{ head: "", cell: standing }] : []),
      { head: "supplier", cell: (line) => line.supplier, clipTo: 10, dropRank: 2 },
      { head: "item", cell: (line) => line.item, clipTo: 12 },
      { head: "units", align: "right", cell: (line) => countText(line.quantity) },
      { head: "boxes", align: "right", cell: (line) => countText(line.boxes), dropRank: 4 },
      ...moneyColumns<Line>(lines, { cost: (line) => (isPriced(line) ? line.lineCost + line.feeShare : null) }),
      { head: "arrives", cell: (line) => line.arriveBy, dropRank: 3 },
      { head: "covers", cell: coversText, dropRank: 5 },
    ],
    lines,
    width,
  );
}

/** Spend by fiscal year of the order date: planned, likely (P50) and safe (P95), and what to know of it; nothing without any. */
export function spendBlocks(plan: Plan, width: number): string[] {
  if (plan.budget.length === 0) return [];
  if (!plan.budget.some(hasPrices)) return ["No price is known of anything to be ordered."];
  return [budgetTable(plan, width), ...spendNotes(plan).map((note) => wrapText(note, width))];
}

function budgetTable(plan: Plan, width: number): string {
  type Year = Plan["budget"][number];
  const amount = (of: "planned" | "p50" | "p80" | "p95") => (year: Year) => (isSpendKnown(year) ? year[of] : null);
  const priced = new Set(plan.budget.filter(isSpendKnown).map(({ fiscalYear }) => fiscalYear));
  // what has no price has no currency either: a line of its own beside the year's sums would tell nothing
  const years = plan.budget.filter((year) => isSpendKnown(year) || !priced.has(year.fiscalYear));
  return textTable<Year>(
    [
      { head: "fiscal year", cell: (year) => year.fiscalYear },
      ...moneyColumns<Year>(years, {
        planned: amount("planned"),
        "likely (P50)": amount("p50"),
        P80: amount("p80"),
        "safe (P95)": amount("p95"),
      }),
    ],
    years,
    width,
  );
}

/** "budget of EUR 12,000 a fiscal year", in the currency of what it has no room for. */
export function budgetWords({ deferrals, policy }: Plan): string {
  const currency = deferrals[0]?.currency ?? NO_CURRENCY;
  const named = currency === NO_CURRENCY ? "" : `${currency} `;
  return `budget of ${named}${groupedText(String(policy.budget_per_fiscal_year))} a fiscal year`;
}

/** What to defer where a year's budget is short, in that order: what it spares and what it costs in readiness. */
export function deferralsTable(deferrals: Plan["deferrals"], width: number): string {
  type Deferral = Plan["deferrals"][number];
  return textTable<Deferral>(
    [
      { head: "fiscal year", cell: (one) => one.fiscalYear },
      { head: "order by", cell: (one) => one.orderBy, dropRank: 2 },
      { head: "item", cell: (one) => one.item, clipTo: 12 },
      { head: "units", align: "right", cell: (one) => countText(one.quantity) },
      ...moneyColumns<Deferral>(deferrals, { saves: (one) => one.saves }),
      { head: "deferred to", cell: (one) => one.deferredTo, dropRank: 1 },
      { head: "device-months short", align: "right", cell: (one) => tenthsText(one.deviceMonthsShort) },
    ],
    deferrals,
    width,
  );
}

/** Amounts, with the currency in the first head where all rows that have any share it and in a column of its own where not. */
function moneyColumns<Row extends { currency: string }>(
  rows: readonly Row[],
  amounts: Record<string, (row: Row) => number | null>,
): TextColumn<Row>[] {
  const known = rows.filter((row) => Object.values(amounts).some((amount) => amount(row) !== null));
  const currencies = [...new Set(known.map((row) => row.currency))];
  const shared = currencies.length === 1 && currencies[0] !== NO_CURRENCY ? ` ${currencies[0]}` : "";
  const columns = Object.entries(amounts).map(
    ([head, amount], index): TextColumn<Row> => ({
      head: index === 0 ? head + shared : head,
      align: "right",
      cell: (row) => priced(amount(row), row.currency),
    }),
  );
  return currencies.length > 1
    ? [...columns, { head: "currency", cell: ({ currency }) => (currency === NO_CURRENCY ? "-" : currency) }]
    : columns;
}

/** Devices short at some months' ends, with nothing bought and with the schedule followed; nothing where nothing is known of any. */
export function shortBlocks(plan: Plan, width: number): string[] {
  return plan.short.some(({ devices }) => devices > 0) && !knowsNothing(plan) ? [shortTable(plan, width)] : [];
}

function shortTable(plan: Plan, width: number): string {
  type ShortMonth = Plan["short"][number];
  const last = horizonLength(plan) - 1;
  const shown = new Set([0, 2, 5, 11, 23, last]);
  return textTable<ShortMonth>(
    [
      { head: "end of", cell: (row) => row.month },
      { head: "devices", align: "right", cell: (row) => countText(row.devices), dropRank: 1 },
      { head: "nothing bought", align: "right", cell: (row) => tenthsText(row.withoutBuying.expected) },
      { head: "any short", align: "right", dropRank: 2, cell: (row) => chanceText(row.withoutBuying.anyChance) },
      { head: "schedule followed", align: "right", cell: (row) => tenthsText(row.withSchedule.expected) },
      { head: "any short", align: "right", dropRank: 2, cell: (row) => chanceText(row.withSchedule.anyChance) },
      ...(plan.deferrals.length === 0
        ? []
        : [
            {
              head: "within budget",
              align: "right" as const,
              cell: (row: ShortMonth) => (row.withinBudget ? tenthsText(row.withinBudget.expected) : "-"),
            },
          ]),
    ],
    plan.short.filter((_, index) => shown.has(index)),
    width,
  );
}

/** An amount, or a hyphen where no price is known. */
function priced(amount: number | null, currency: string): string {
  return amount === null ? "-" : groupedMoney(amount, currency);
}

function coversText({ covers }: Plan["orders"][number]): string {
  return covers.from === covers.to ? covers.from : `${covers.from} to ${covers.to}`;
}
