import type { Highs } from "highs";
import { cumulative, holdingCost, orderDays, priceOn } from "./case-calendar.ts";
import type { OrderCase } from "./random-cases.ts";

/**
 * A case as a mixed integer programme in LP format. Per item i and order day c: boxes n and a choice y for each price
 * step, units w that lapse, and E, the cumulative needs covered after the day. Per day: fee paid f, order free g.
 */
export function programmeOf(one: OrderCase): string {
  const cost: string[] = [];
  const rows: string[] = [];
  const whole: string[] = [];
  const yesNo: string[] = [];
  const linesOn = new Map<number, { choice: string[]; value: string[] }>();
  let constant = 0;

  one.items.forEach((item, i) => {
    const needs = cumulative(item);
    const end = needs.at(-1)!;
    const holding = holdingCost(one, item);
    const days = orderDays(one, item);
    const most = Math.ceil((end + item.minimum + 40) / item.box);
    const steps = [{ from: 1, price: item.price }, ...item.breaks].map((step, k, all) => ({
      from: Math.max(step.from, item.minimum),
      below: all[k + 1]?.from ?? null,
      price: step.price,
    }));
    const held = new Array<number>(days.length).fill(0);
    for (let month = 0; month < one.months; month++) {
      const last = days.filter((order) => order.reaches <= month).length - 1;
      constant -= last < 0 ? 0 : holding * needs[month]!;
      if (last < 0) continue;
      held[last]! += holding;
      rows.push(`E_${i}_${last} >= ${needs[month]}`);
    }
    days.forEach((order, c) => {
      const choices: string[] = [];
      const boxes: string[] = [];
      steps.forEach((step, k) => {
        if (step.below !== null && step.from >= step.below) return;
        const n = `n_${i}_${c}_${k}`;
        const y = `y_${i}_${c}_${k}`;
        const price = priceOn(one, step.price, order.day);
        const least = Math.ceil(step.from / item.box);
        const largest = step.below === null ? most : Math.ceil(step.below / item.box) - 1;
        whole.push(n);
        yesNo.push(y);
        choices.push(y);
        boxes.push(`- ${item.box} ${n}`);
        cost.push(`+ ${price * item.box} ${n}`);
        rows.push(`${n} - ${least} ${y} >= 0`, `${n} - ${largest} ${y} <= 0`);
        const on = linesOn.get(order.day) ?? { choice: [], value: [] };
        linesOn.set(order.day, on);
        on.value.push(`+ ${price * item.box} ${n}`);
      });
      const before = c === 0 ? "" : `- E_${i}_${c - 1}`;
      rows.push(`E_${i}_${c} ${before} ${boxes.join(" ")} + w_${i}_${c} = 0`);
      const sum = choices.join(" + ");
      const cap = needs[order.last]!;
      rows.push(`${sum} <= 1`, `E_${i}_${c} <= ${end}`);
      if (cap < end) rows.push(`E_${i}_${c} + ${choices.map((y) => `${end - cap} ${y}`).join(" + ")} <= ${end}`);
      // first in, first out: units lapse only where the lot reaches the end of its life
      yesNo.push(`z_${i}_${c}`);
      rows.push(`w_${i}_${c} - ${most * item.box} z_${i}_${c} <= 0`, `z_${i}_${c} - ${sum.replaceAll("+", "-")} <= 0`);
      rows.push(`E_${i}_${c} - ${cap} z_${i}_${c} >= 0`);
      const wasted = holding * (order.last - order.reaches + 1);
      cost.push(`+ ${wasted} w_${i}_${c}`, `+ ${held[c]} E_${i}_${c}`);
      linesOn.get(order.day)?.choice.push(sum);
    });
  });
  for (const [day, { choice, value }] of linesOn) {
    yesNo.push(`f_${day}`);
    cost.push(`+ ${one.fee} f_${day}`);
    const free = one.freeOver === null ? "" : `- g_${day}`;
    for (const sum of choice) rows.push(`${sum} - f_${day} ${free} <= 0`);
    if (one.freeOver === null) continue;
    yesNo.push(`g_${day}`);
    rows.push(`${value.join(" ")} - ${one.freeOver} g_${day} >= 0`);
  }
  yesNo.push("always");
  rows.push("always = 1");
  cost.push(`${constant < 0 ? "-" : "+"} ${Math.abs(constant)} always`);
  const named = rows.map((row, n) => `r${n}: ${row}`);
  return [
    "Minimize",
    ` cost: ${cost.join("\n ")}`,
    "Subject To",
    ...named,
    "General",
    ...whole,
    "Binary",
    ...yesNo,
    "End",
  ].join("\n");
}

/**
 * The least cost of a case in cents: goods, fees and holding.
 *
 * @returns null where the optimum is not proved within the time limit
 */
export function solveCase(highs: Highs, one: OrderCase, timeLimitSeconds: number): number | null {
  const options = { output_flag: false, mip_rel_gap: 0, mip_abs_gap: 1e-6, time_limit: timeLimitSeconds };
  const result = highs.solve(programmeOf(one), options);
  return result.Status === "Optimal" ? result.ObjectiveValue : null;
}
