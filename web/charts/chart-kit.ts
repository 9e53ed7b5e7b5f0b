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
import { scatter } from "./scatter.ts";

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
  scatter,
);

export { Chart };

/** What every chart shares: no motion, no floating box (the readout under the chart speaks), quiet axes. */
export function commonOptions(colours: Palette, unit: string): ChartOptions<"line" | "bar"> {
  const ticks = { color: colours.soft, font: { family: colours.font, size: colours.size } };
  return {
    animation: false,
    responsive: true,
    maintainAspectRatio: false,
    // The figure listens to the pointer itself: it reads out the nearest step, whatever is drawn there.
    events: [],
    layout: { padding: { top: colours.size + 6, right: 9 } },
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
        ticks: { ...ticks, autoSkip: false, maxTicksLimit: 6, padding: 6, precision: 0 },
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

// A pack below this is long past any threshold for a rechargeable one: the axis ends here and lines run off it.
const LEAST_OF_INTEREST = 40;
const MOST_PERCENT = 130;

/** The range of a capacity axis in whole steps of percent: every reading and the threshold have room, 100 % shows. */
function capacityRange(threshold: number, values: readonly number[]) {
  const least = Math.min(LEAST_OF_INTEREST, Math.max(0, threshold - 10));
  const lowest = values.reduce((low, value) => Math.min(low, value), threshold);
  const highest = values.reduce((high, value) => Math.max(high, value), 100);
  const from = Math.max(least, Math.floor((lowest - 2) / 10) * 10);
  const to = Math.min(MOST_PERCENT, Math.ceil(highest / 10) * 10);
  const step = to - from > 50 ? 20 : 10;
  return {
    beginAtZero: false,
    min: Math.floor(from / step) * step,
    max: to,
    stepSize: step,
  };
}

/** The y axis of a capacity chart. */
export function capacityAxis(options: ChartOptions<"line" | "bar">, threshold: number, values: readonly number[]) {
  const { stepSize, ...range } = capacityRange(threshold, values);
  return { ...options.scales?.y, ...range, ticks: { ...options.scales?.y?.ticks, stepSize, includeBounds: false } };
}
