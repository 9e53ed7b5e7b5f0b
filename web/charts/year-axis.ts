import type { Scale } from "chart.js";
import { dayNumber, dayText } from "../months.ts";
import type { CommonOptions } from "./chart-options.ts";

// What a year's label takes on the axis, in pixels.
const YEAR_WIDTH = 44;

const yearOf = (day: number) => Number(dayText(day).slice(0, 4));

/** The x axis of a chart by days, with a tick where a year begins: every year, or as many as there is room for. */
export function yearAxis(options: CommonOptions, from: number, to: number) {
  return {
    ...options.scales?.x,
    type: "linear",
    min: from,
    max: to,
    afterBuildTicks: (axis: Pick<Scale, "chart" | "ticks">) => {
      const years = yearStarts(from, to);
      const every = Math.ceil((years.length * YEAR_WIDTH) / axis.chart.width);
      axis.ticks = years.flatMap((value, at) => (at % every === 0 ? { value } : []));
    },
    ticks: { ...options.scales?.x?.ticks, callback: (value: string | number) => String(yearOf(Number(value))) },
  };
}

/** The first days of years between two days, both included. */
export function yearStarts(from: number, to: number): number[] {
  const starts: number[] = [];
  for (let year = yearOf(from); year <= yearOf(to); year++) {
    const day = dayNumber(`${year}-01-01`);
    if (day >= from) starts.push(day);
  }
  return starts;
}
