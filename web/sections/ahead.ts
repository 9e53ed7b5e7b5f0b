import { knowsNothing, outNowWithHeld } from "../../src/index.ts";
import { devicesShort } from "../charts/devices-short.ts";
import { make } from "../dom.ts";
import { dayWords, listWords, monthWords, sentenceWords } from "../format.ts";
import { leastCertain } from "../least-certain.ts";
import { monthAfter } from "../months.ts";
import { needsInWords } from "../needs-words.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { unbroken } from "../unbroken.ts";
import { forecastNote, orderTable } from "./order-table.ts";
import { answer, points, section } from "./section.ts";

const YEAR = 12;
const FIRST_ORDERS = 6;
// Totals, headers that come again and a few slips are set aside of any sheet.
const MANY_ASIDE = 0.05;

/** Ahead: one sentence to read out in a meeting, devices short, and the orders that leave first. */
export function ahead({ plan, reading, behind }: PlannedSession): HTMLElement {
  const byDate = [...plan.orders].sort((a, b) => (a.orderBy < b.orderBy ? -1 : a.orderBy > b.orderBy ? 1 : 0));
  const firstOrders = byDate.slice(0, FIRST_ORDERS);
  return section(
    "ahead",
    say.ahead.heading,
    make("p", { class: "headline" }, unbroken(sentence())),
    // days of expiry alone: a serial may look like a month
    points(
      say.ahead.outNow,
      outNowWithHeld(plan, behind?.heldStock ?? []).map((says) => says.replace(/\(\d{4}-\d\d-\d\d\)/g, sentenceWords)),
    ),
    devicesShort(plan),
    byDate.length > 0 &&
      answer(
        say.ahead.firstHeading,
        forecastNote(firstOrders, plan.asOf),
        orderTable({ caption: say.ahead.firstHeading, asOf: plan.asOf, orders: firstOrders }),
      ),
    uncertain(),
  );

  function uncertain(): HTMLElement | null {
    const words = say.ahead.uncertain;
    const { packs, typical, noForecast, wide } = leastCertain(plan);
    const rows = reading.inputs.reduce((sum, input) => sum + input.rows, 0);
    const aside = reading.inputs.reduce((sum, input) => sum + input.setAside, 0);
    return points(words.heading, [
      aside > rows * MANY_ASIDE && words.aside(aside, rows),
      reading.findings.some(({ code }) => code.startsWith("date-order")) && words.undated,
      plan.short.every(({ devices }) => devices === 0) && plan.datedStock.length > 0 && words.noDevices,
      behind?.useRates.length === 0 && plan.datedStock.length > 0 && words.noUse,
      typical > 0 && words.typical(typical, packs),
      wide > 0 && words.wide(wide),
      noForecast > 0 && words.noForecast(noForecast),
    ]);
  }

  function sentence(): string {
    if (knowsNothing(plan)) return say.ahead.nothingKnown;
    const day = ({ orderBy }: { orderBy: string }) => dayWords(orderBy).replaceAll(" ", "\u00a0");
    const months = Math.min(YEAR, plan.demand[0]?.mean.length ?? YEAR);
    const until = monthWords(monthAfter(plan.horizon.from, months - 1));
    const needs = needsInWords(plan, months);
    const late = plan.orders.filter((order) => order.late).length;
    const first = byDate[0];
    const what = needs.length > 0 ? say.ahead.needs(until, listWords(needs, say.and)) : say.ahead.needsNothing(until);
    if (!first) return what + say.ahead.noOrder;
    if (late === 0) return what + (needs.length > 0 ? say.ahead.firstOrder : say.ahead.orderToBeSafe)(day(first));
    const next = byDate.find((order) => !order.late);
    return what + say.ahead.lateOrders(late, next ? day(next) : null);
  }
}
