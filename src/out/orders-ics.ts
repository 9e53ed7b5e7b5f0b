import { dayFromIso, isoFromDay } from "../calendar/day.ts";
import { namedMoney } from "../fleet/money-text.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { ENGINE } from "./engine.ts";
import { dateValue, foldedLine, textValue } from "./icalendar.ts";
import { isForecast, isPriced } from "./line-standing.ts";
import type { Plan } from "./plan-schema.ts";

/**
 * orders.ics: an all-day event on every order line's order-by date. An event's UID is the line's id, which stays the
 * same from plan to plan, and its stamp is as-of, so that importing a later plan updates what an earlier one brought.
 * Without an order there is a note that says so, since a calendar holds one component at least.
 *
 * @see RFC 5545, sections 3.4, 3.6.1 and 3.6.3
 */
export function ordersIcs(plan: Plan): string {
  const lines = ["BEGIN:VCALENDAR", "VERSION:2.0", `PRODID:-//Wanecast//${ENGINE}//EN`, "CALSCALE:GREGORIAN"];
  for (const order of plan.orders) lines.push(...eventOf(order, plan.asOf));
  if (plan.orders.length === 0) lines.push(...noOrder(plan));
  return [...lines, "END:VCALENDAR"].map(foldedLine).join("");
}

function eventOf(line: Plan["orders"][number], asOf: string): string[] {
  const day = dayFromIso(line.orderBy)!;
  const forecast = isForecast(line, asOf);
  const told = [
    line.reason,
    `Expected to arrive on ${line.arriveBy}.${costWords(line)}`,
    forecast ? `Forecast as of ${asOf}: plan again before ordering.` : `Planned as of ${asOf}.`,
    STANDING_CAUTIONS[0]!,
  ];
  const title = line.late ? "Order now, late" : forecast ? "Order, forecast" : "Order";
  return [
    "BEGIN:VEVENT",
    ...versionOf(line.id, asOf),
    `DTSTART;VALUE=DATE:${dateValue(line.orderBy)}`,
    // exclusive, so an event of one day ends on the next
    `DTEND;VALUE=DATE:${dateValue(isoFromDay(day + 1))}`,
    `SUMMARY:${textValue(`${title}: ${line.quantity} x ${line.item} from ${line.supplier}`)}`,
    `DESCRIPTION:${textValue(told.join("\n"))}`,
    "TRANSP:TRANSPARENT",
    "END:VEVENT",
  ];
}

function noOrder({ asOf, horizon }: Plan): string[] {
  return [
    "BEGIN:VJOURNAL",
    ...versionOf("no-order", asOf),
    `DTSTART;VALUE=DATE:${dateValue(asOf)}`,
    `SUMMARY:${textValue(`No order is planned up to ${horizon.to}`)}`,
    `DESCRIPTION:${textValue(`Planned as of ${asOf}.\n${STANDING_CAUTIONS[0]!}`)}`,
    "END:VJOURNAL",
  ];
}

/** Which entry it is, and as of which plan. */
function versionOf(id: string, asOf: string): string[] {
  const stamp = `${dateValue(asOf)}T000000Z`;
  return [
    `UID:${textValue(`${id}@wanecast`)}`,
    `DTSTAMP:${stamp}`,
    `LAST-MODIFIED:${stamp}`,
    // rises with every later plan
    `SEQUENCE:${dayFromIso(asOf)!}`,
  ];
}

function costWords(line: Plan["orders"][number]): string {
  if (!isPriced(line)) return "";
  return ` ${namedMoney(line.lineCost + line.feeShare, line.currency)} with its share of the order's fee.`;
}
