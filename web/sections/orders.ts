import { knowsNothing } from "../../src/index.ts";
import { spend } from "../charts/spend.ts";
import { make } from "../dom.ts";
import { offerDownload } from "../download.ts";
import { DOWNLOADS } from "../engine/messages.ts";
import { dayWords, moneyWords, numberWords, sentenceWords } from "../format.ts";
import { orderCosts } from "../order-costs.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { forecastNote, scheduleTable } from "./order-table.ts";
import { answer, lead, section } from "./section.ts";
import { supplierTables } from "./supplier-tables.ts";

/** Orders: the schedule, what it costs year by year, and the files to take along. */
export function orders({ plan, behind }: PlannedSession): HTMLElement {
  const words = say.orders;
  // Without prices there is nothing to add up.
  const priced = plan.budget.filter(({ planned, p95 }) => planned > 0 || p95 > 0);
  const currencies = [...new Set(priced.map((year) => year.currency))];
  const separate = new Set(plan.orders.map((order) => order.order)).size;
  const late = plan.orders.filter((order) => order.late).length;
  return section(
    "orders",
    words.heading,
    lead(
      plan.orders.length > 0
        ? words.lead(plan.orders.length, separate, orderCosts(plan.orders), late)
        : knowsNothing(plan)
          ? say.ahead.nothingKnown
          : words.none,
    ),
    forecastNote(plan.orders, plan.asOf),
    plan.orders.length > 0 && scheduleTable(plan, words.caption),
    supplierTables(plan),
    ...(currencies.length > 0
      ? [
          ...currencies.map((currency) => spend(plan, currency)),
          yearTable(),
          ...(behind?.spendNotes ?? []).map((note) => make("p", {}, sentenceWords(note))),
        ]
      : [plan.orders.length > 0 && make("p", {}, words.noPrices)]),
    plan.deferrals.length > 0 && answer(words.deferrals.heading, make("p", {}, words.deferrals.lead), deferralTable()),
    answer(
      words.downloads,
      make(
        "ul",
        { class: "downloads" },
        DOWNLOADS.map((file) =>
          make(
            "li",
            {},
            make("button", { type: "button", click: () => offerDownload(file) }, file),
            make("span", {}, words.downloadNote[file]),
          ),
        ),
      ),
    ),
  );

  function deferralTable(): HTMLElement {
    const heads = words.deferrals.heads;
    return table({
      caption: words.deferrals.heading,
      rows: plan.deferrals,
      printed: 60,
      columns: [
        { title: heads[0]!, value: (row) => row.fiscalYear },
        { title: heads[1]!, value: (row) => row.item, wide: true },
        { title: heads[2]!, value: (row) => row.quantity, show: (row) => numberWords(row.quantity), figures: true },
        { title: heads[3]!, value: (row) => row.orderBy, show: (row) => dayWords(row.orderBy) },
        { title: heads[4]!, value: (row) => row.deferredTo, show: (row) => dayWords(row.deferredTo) },
        {
          title: heads[5]!,
          value: (row) => row.saves,
          show: (row) => moneyWords(row.saves, row.currency),
          figures: true,
        },
        {
          title: heads[6]!,
          value: (row) => row.deviceMonthsShort,
          show: (row) => numberWords(row.deviceMonthsShort, 1),
          figures: true,
        },
      ],
    });
  }

  function yearTable(): HTMLElement {
    const heads = words.spend.heads;
    const money = (key: "planned" | "p50" | "p80" | "p95", at: number) => ({
      title: heads[at]!,
      value: (row: (typeof plan.budget)[number]) => row[key],
      show: (row: (typeof plan.budget)[number]) => moneyWords(row[key], row.currency),
      figures: true,
    });
    return table({
      caption: words.spend.heading,
      rows: priced,
      sortable: false,
      columns: [
        { title: heads[0]!, value: (row) => row.fiscalYear, wide: true },
        money("planned", 1),
        money("p50", 2),
        money("p80", 3),
        money("p95", 4),
      ],
    });
  }
}
