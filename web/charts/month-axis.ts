import type { Chart } from "chart.js";
import { monthTick } from "../format.ts";

const NARROW = 480;
const ROOM = 48;

/** Labels of a month axis: quarters with the year under January where there is room, else years alone. */
export function monthAxisLabel(months: readonly string[]) {
  return function (this: { chart: Chart }, _value: unknown, index: number): string | string[] | undefined {
    const month = months[index];
    if (!month) return undefined;
    const number = Number(month.slice(5));
    const year = month.slice(0, 4);
    const crowded = months.length > 60 || this.chart.width < NARROW;
    if (crowded) return number === 1 ? year : undefined;
    if (number === 1) return [monthTick(month), year];
    if (number % 3 !== 1) {
      // The first month is named too where the next label leaves it room.
      const next = 3 - ((number - 1) % 3);
      return index === 0 && (next * this.chart.width) / months.length > ROOM ? [monthTick(month), year] : undefined;
    }
    const yearIsNear = months.slice(0, index).every((earlier) => !earlier.endsWith("-01")) && index < 2;
    return yearIsNear ? [monthTick(month), year] : monthTick(month);
  };
}
