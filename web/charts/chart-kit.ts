import {
  BarController,
  BarElement,
  CategoryScale,
  Chart,
  type ChartOptions,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
} from "chart.js";
import { monthTick } from "../format.ts";
import type { Palette } from "./palette.ts";
import { rules } from "./rules.ts";

Chart.register(
  BarController,
  BarElement,
  CategoryScale,
  Filler,
  LinearScale,
  LineController,
  LineElement,
  PointElement,
  rules,
);

export { Chart };

/** What every chart shares: no motion, no floating box (the readout under the chart speaks), quiet axes. */
export function commonOptions(colours: Palette, unit: string): ChartOptions<"line" | "bar"> {
  const ticks = { color: colours.soft, font: { family: colours.font, size: 12 } };
  return {
    animation: false,
    responsive: true,
    maintainAspectRatio: false,
    interaction: { mode: "index", intersect: false },
    events: ["mousemove", "click", "touchstart", "touchmove"],
    layout: { padding: { top: 18, right: 6 } },
    scales: {
      x: {
        grid: { display: false },
        border: { color: colours.soft },
        ticks: { ...ticks, autoSkip: false, maxRotation: 0 },
      },
      y: {
        beginAtZero: true,
        grid: { color: colours.faint, drawTicks: false },
        border: { display: false },
        ticks: { ...ticks, maxTicksLimit: 6, padding: 6, precision: 0 },
        title: { display: false, text: unit },
      },
    },
  };
}

const NARROW = 480;

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
    if (number % 3 !== 1) return undefined;
    const yearIsNear = months.slice(0, index).every((earlier) => !earlier.endsWith("-01")) && index < 2;
    return yearIsNear ? [monthTick(month), year] : monthTick(month);
  };
}

const LEAST_PERCENT = 0;
const MOST_PERCENT = 130;

/** The range of a capacity axis in whole tens of percent, so wide that every value has room; 100 % always shows. */
export function capacityRange(values: readonly number[]): { beginAtZero: false; min: number; max: number } {
  const lowest = values.reduce((least, value) => Math.min(least, value), 100);
  const highest = values.reduce((most, value) => Math.max(most, value), 100);
  return {
    beginAtZero: false,
    min: Math.max(LEAST_PERCENT, Math.floor((lowest - 5) / 10) * 10),
    max: Math.min(MOST_PERCENT, Math.ceil(highest / 10) * 10),
  };
}
