import { isSpendKnown, knowsNothing, type Plan } from "../../src/index.ts";
import { spend } from "../charts/spend.ts";
import { countColumn, dayColumn, moneyColumn } from "../columns.ts";
import { button, make } from "../dom.ts";
import { offerDownload } from "../download.ts";
import { DOWNLOADS } from "../engine/messages.ts";
import { sentenceWords } from "../format.ts";
import { orderCosts } from "../order-costs.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { forecastNote, scheduleTable } from "./order-table.ts";
import { answer, lead, section } from "./section.ts";
import { supplierTables } from "./supplier-tables.ts";

type FiscalYear = Plan["budget"][number];

/** Orders: the schedule, what it costs year by year, and the files to take along. */
export function orders({ plan, behind }: PlannedSession): HTMLElement {
  const words = say.orders;
  return section(
    "orders",
    words.heading,
    lead(leadText(plan)),
    forecastNote(plan.orders, plan.asOf),
    plan.orders.length > 0 && scheduleTable(plan, words.caption),
    supplierTables(plan),
    ...costs(plan, behind?.spendNotes ?? []),
    plan.deferrals.length > 0 &&
      answer(words.deferrals.heading, make("p", {}, words.deferrals.lead), deferralTable(plan)),
    answer(words.downloads, downloads()),
  );
}

function leadText(plan: Plan): string {
  const words = say.orders;
  if (plan.orders.length === 0) return knowsNothing(plan) ? say.ahead.nothingKnown : words.none;
  const separate = new Set(plan.orders.map((order) => order.order)).size;
  const late = plan.orders.filter((order) => order.late).length;
  return words.lead(plan.orders.length, separate, orderCosts(plan.orders), late);
}

/** The spend of each currency, year by year; without prices there is nothing to add up. */
function costs(plan: Plan, notes: string[]): (HTMLElement | null | false)[] {
  const priced = plan.budget.filter(isSpendKnown);
  if (priced.length === 0) return [plan.orders.length > 0 && make("p", {}, say.orders.noPrices)];
  const currencies = [...new Set(priced.map((year) => year.currency))];
  return [
    ...currencies.map((currency) => spend(plan, currency)),
    yearTable(priced),
    ...notes.map((note) => make("p", {}, sentenceWords(note))),
  ];
}

function yearTable(priced: FiscalYear[]): HTMLElement {
  const { heads, heading } = say.orders.spend;
  return table<FiscalYear>({
    caption: heading,
    rows: priced,
    sortable: false,
    columns: [
      { title: heads[0]!, value: (row) => row.fiscalYear, wide: true },
      moneyColumn(heads[1]!, (row) => row.planned),
      moneyColumn(heads[2]!, (row) => row.p50),
      moneyColumn(heads[3]!, (row) => row.p80),
      moneyColumn(heads[4]!, (row) => row.p95),
    ],
  });
}

function deferralTable({ deferrals }: Plan): HTMLElement {
  const { heads, heading } = say.orders.deferrals;
  return table<Plan["deferrals"][number]>({
    caption: heading,
    rows: deferrals,
    printed: 60,
    columns: [
      { title: heads[0]!, value: (row) => row.fiscalYear },
      { title: heads[1]!, value: (row) => row.item, wide: true },
      countColumn(heads[2]!, (row) => row.quantity),
      dayColumn(heads[3]!, (row) => row.orderBy),
      dayColumn(heads[4]!, (row) => row.deferredTo),
      moneyColumn(heads[5]!, (row) => row.saves),
      countColumn(heads[6]!, (row) => row.deviceMonthsShort, 1),
    ],
  });
}

/** The files to take along, each with what it is for. */
function downloads(): HTMLElement {
  return make(
    "ul",
    { class: "downloads" },
    DOWNLOADS.map((file) =>
      make(
        "li",
        {},
        button(file, () => offerDownload(file)),
        make("span", {}, say.orders.downloadNote[file]),
      ),
    ),
  );
}
