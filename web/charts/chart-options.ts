import type { ChartOptions } from "chart.js";
import { monthAxisLabel } from "./month-axis.ts";
import type { Palette } from "./palette.ts";
import type { Rule } from "./rules.ts";

export type CommonOptions = ChartOptions<"line" | "bar">;

/**
 * What every chart shares: no motion, no floating box (the readout under the chart speaks), quiet axes, and rules
 * whose labels stand in the page's own type.
 *
 * @param list  the rules drawn across this chart
 */
export function commonOptions(colours: Palette, unit: string, list: Rule[] = []): CommonOptions {
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
    plugins: { rules: { list, font: colours.font, size: colours.size, paper: colours.paper } },
  };
}

/** The common options of a chart that has a step a month. */
export function monthOptions(
  colours: Palette,
  unit: string,
  months: readonly string[],
  list: Rule[] = [],
): CommonOptions {
  const options = commonOptions(colours, unit, list);
  options.scales!.x!.ticks!.callback = monthAxisLabel(months);
  return options;
}
