import { heldTold, type Plan, type Reading } from "../../src/index.ts";
import { forgetFigures } from "../charts/figure.ts";
import { unitsDue } from "../charts/units-due.ts";
import { keyName } from "../difference.ts";
import { make } from "../dom.ts";
import { unitsDueByMonth } from "../due-months.ts";
import { compareNames, monthWords } from "../format.ts";
import { keptChoice } from "../kept-choices.ts";
import { picker } from "../picker.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { sitesIn } from "../where.ts";
import { datesBehind } from "./dates-behind.ts";
import { crowdedTable, movesTable, stockTable, swapTable } from "./dates-tables.ts";
import { answer, lead, list, section } from "./section.ts";
import { traceBox } from "./trace-box.ts";

/** Dates: expiries by month, crowded months, swaps, moves and every dated unit. */
export function dates({ plan, reading, behind }: PlannedSession): HTMLElement {
  const words = say.dates;
  if (plan.datedStock.length === 0) return section("dates", words.heading, lead(words.noStock));
  const siteOf = sitesIn(reading);
  const held = behind?.heldStock ?? [];
  const due = unitsDueByMonth(plan, reading, held, null).reduce((sum, row) => sum + row.fitted + row.stored, 0);
  const swapVisits = make("a", { href: "#policy-swaps_per_month" }, keyName("swaps_per_month"));
  return section(
    "dates",
    words.heading,
    lead(leadText(plan, held, due)),
    ...heldTold(held).map((says) => make("p", {}, says)),
    due > 0 && dueChart(plan, reading, held),
    plan.crowdedMonths.length > 0 && answer(words.crowdedHeading, crowdedTable(plan)),
    answer(words.stockHeading, stockTable(plan, siteOf)),
    traceBox({ reading, plan }),
    plan.moves.length > 0 && list(words.movesHeading, movesTable(plan, siteOf)),
    plan.swapCalendar.length > 0
      ? list(words.swapsHeading, swapTable(plan, siteOf))
      : plan.policy.swaps_per_month === null &&
          answer(words.swapsHeading, make("p", {}, words.swapsNone, " ", swapVisits, ".")),
    ...(behind === null ? [] : datesBehind(behind)),
  );
}

function leadText({ asOf, horizon, datedStock }: Plan, held: Plan["datedStock"], due: number): string {
  const before = (rows: Plan["datedStock"], by: "swapBy" | "expiry") =>
    rows.reduce((sum, row) => sum + (row[by] < asOf ? row.quantity : 0), 0);
  const [overdue, expired] = (["swapBy", "expiry"] as const).map((by) => before(datedStock, by) - before(held, by));
  return say.dates.lead(due, monthWords(horizon.to), overdue!, expired!);
}

/** Units due by month, of everything or of an item that the reader picks. */
function dueChart(plan: Plan, reading: Reading, held: Plan["datedStock"]): HTMLElement {
  const words = say.dates;
  const items = [...new Set(plan.datedStock.map((row) => row.item))].sort(compareNames);
  const chart = make("div");
  draw(items.find((name) => name === keptChoice("item-choice")) ?? null);
  return chart;

  function draw(item: string | null): void {
    forgetFigures(chart);
    const option = (value: string, label: string) => make("option", { value, selected: value === (item ?? "") }, label);
    const options = [option("", words.everything), ...items.map((name) => option(name, name))];
    const choices = picker("item-choice", words.pick, options, (name) => draw(name || null));
    chart.replaceChildren(
      unitsDue(
        unitsDueByMonth(plan, reading, held, item),
        item,
        Number(plan.policy.swap_before_expiry_days ?? 0),
        choices,
      ),
    );
  }
}
