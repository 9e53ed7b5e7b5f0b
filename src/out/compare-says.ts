import { counted, countText } from "../fleet/count-text.ts";
import { NO_CURRENCY } from "../fleet/currency.ts";
import { groupedMoney, namedMoney } from "../fleet/money-text.ts";
import type { Comparison } from "./comparison.ts";

/** What changed from plan a to plan b and what may be behind it, in plain sentences. */
export function compareSays(of: Omit<Comparison, "says">): string[] {
  if (of.months === null) return ["The two plans have no month in common."];
  const said = [
    ...policySays(of),
    ...evidenceSays(of),
    ...spendSays(of),
    ...unitSays(of),
    ...shortSays(of),
    ...budgetSays(of),
  ];
  return said.length > 0 ? said : ["Nothing changed."];
}

function policySays({ policy, plans }: Omit<Comparison, "says">): string[] {
  const choices = policy.filter((row) => row.key !== "as_of");
  const said = plans.a.asOf === plans.b.asOf ? [] : [`As of ${plans.a.asOf} against ${plans.b.asOf}.`];
  if (choices.length === 0) return said;
  const told = choices.map((row) => `${row.key} ${row.a ?? "none"} against ${row.b ?? "none"}`);
  return [...said, `Policy: ${told.join("; ")}.`];
}

/** New readings, used stock, prices: what the sheets brought. */
function evidenceSays({ items, inputs }: Omit<Comparison, "says">): string[] {
  const said: string[] = [];
  const sheets = inputs.map((row) => (row.sheet === null ? row.file : `${row.file} (${row.sheet})`));
  if (sheets.length > 0) said.push(`Sheets that differ: ${[...new Set(sheets)].join(", ")}.`);
  for (const { item, readings, stock, unitPrice, firstUnits, firstCurrency } of items) {
    const told: string[] = [];
    const more = readings.b - readings.a;
    if (more !== 0) told.push(`${counted(Math.abs(more), "reading")} ${more > 0 ? "more" : "fewer"}`);
    const left = stock.b - stock.a;
    if (left !== 0) told.push(`${counted(Math.abs(left), "dated unit")} ${left > 0 ? "more" : "fewer"}`);
    const inOne = firstCurrency.a === firstCurrency.b;
    const isSame = unitPrice.a === unitPrice.b && (inOne || unitPrice.a === null);
    if (firstUnits.a > 0 && firstUnits.b > 0 && !isSame) {
      const currency = (of: "a" | "b") => (inOne || firstCurrency[of] === NO_CURRENCY ? "" : ` ${firstCurrency[of]}`);
      const price = (of: "a" | "b") => (unitPrice[of] === null ? "no known price" : `${unitPrice[of]}${currency(of)}`);
      told.push(`its first order ${firstUnits.a} at ${price("a")} against ${firstUnits.b} at ${price("b")} each`);
    }
    if (told.length > 0) said.push(`${item}: ${told.join(", ")}.`);
  }
  return said;
}

function spendSays({ spend, policy }: Omit<Comparison, "says">): string[] {
  if (spend.length > 0 && policy.some(({ key }) => key === "fiscal_year_starts"))
    return ["The fiscal years start in different months: their sums do not compare."];
  return spend.flatMap(({ fiscalYear, currency, months, a, b }) => {
    const parts =
      months.a === months.b
        ? ""
        : months.a === 0 || months.b === 0
          ? ` ${months.a === 0 ? "A" : "B"} does not reach that year.`
          : ` They do not compare: A holds ${counted(months.a, "month")} of that year, B ${countText(months.b)}.`;
    if (!a || !b) {
      const { planned, p95 } = (a ?? b)!;
      if (planned === 0 && p95 === 0) return [];
      return [`${fiscalYear}: ${namedMoney(planned, currency)} planned in ${a ? "A" : "B"} only.${parts}`];
    }
    const more = b.planned - a.planned;
    if (more === 0 && a.p95 === b.p95) return [];
    const change = more === 0 ? "the same" : `${namedMoney(Math.abs(more), currency)} ${more > 0 ? "more" : "less"}`;
    const safe = `${groupedMoney(a.p95, currency)} against ${groupedMoney(b.p95, currency)}`;
    return [`${fiscalYear}: planned spend ${change}; safe (P95) ${safe}.${parts}`];
  });
}

function unitSays({ items, packs, orders }: Omit<Comparison, "says">): string[] {
  const said = items.flatMap(({ item, units, orders: lines }) => {
    if (units.a === units.b && lines.a === lines.b) return [];
    const inLines = `in ${countText(lines.a)} against ${counted(lines.b, "order")}`;
    return [`${item}: ${countText(units.a)} against ${counted(units.b, "unit")} bought, ${inLines}.`];
  });
  if (packs.length > 0) {
    const later = packs.filter((one) => (one.daysLater ?? 0) > 0).length;
    const earlier = packs.filter((one) => (one.daysLater ?? 0) < 0).length;
    const tested = packs.filter((one) => one.newReadings > 0).length;
    const oneOnly = packs.filter((one) => one.daysLater === null).length;
    const others = oneOnly > 0 ? `, ${countText(oneOnly)} with a date in one plan only` : "";
    const why = tested > 0 ? `, ${countText(tested)} of them with new readings` : "";
    said.push(
      `Packs whose likely date moved: ${countText(later)} later, ${countText(earlier)} earlier${others}${why}.`,
    );
  }
  const count = (change: string) => orders.filter((one) => one.change === change).length;
  if (orders.length > 0) {
    const told = `${countText(count("new"))} new, ${countText(count("gone"))} gone, ${countText(count("changed"))} changed`;
    said.push(`Order lines: ${told}.`);
  }
  return said;
}

function shortSays({ short: { a, b } }: Omit<Comparison, "says">): string[] {
  const told = [a, b].map(({ deviceMonths, worst }) => [deviceMonths.toFixed(1), worst.toFixed(1)]);
  const [[sumA, worstA], [sumB, worstB]] = told as [[string, string], [string, string]];
  // what differs by less than is told is no change
  if (sumA === sumB && worstA === worstB) return [];
  return [
    `Devices short with the schedule followed: ${sumA} against ${sumB} device-months short, at worst ${worstA} against ${worstB}.`,
  ];
}

/** What a budget puts off and whom that leaves short: the schedule itself is the same under any. */
function budgetSays({ short }: Omit<Comparison, "says">): string[] {
  const [a, b] = [short.a, short.b].map(({ withinBudget: within }) =>
    within === null
      ? "has none"
      : `puts off ${counted(within.linesPutOff, "line")}, with ${within.deviceMonths.toFixed(1)} device-months short, at worst ${within.worst.toFixed(1)}`,
  );
  return a === b ? [] : [`Within the budget: A ${a}; B ${b}.`];
}
