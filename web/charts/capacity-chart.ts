import type { AgePoint } from "../fade-by-age.ts";
import { percentWords } from "../format.ts";
import { say } from "../strings.ts";
import type { CommonOptions } from "./chart-options.ts";
import type { Palette } from "./palette.ts";
import type { Rule } from "./rules.ts";

// A pack below this is long past any threshold for a rechargeable one: lines run off the axis here.
const LEAST_OF_INTEREST = 40;
const MOST_PERCENT = 130;

/** The range of a capacity axis in whole steps of percent: every reading, the path's begin and the threshold have room, 100 % shows. */
function capacityRange(threshold: number, readings: readonly number[], path: readonly number[]) {
  const least = (values: readonly number[], from: number) => values.reduce((low, value) => Math.min(low, value), from);
  const shown = least([...readings, ...path.slice(0, 1)], threshold);
  const lowest = least(path, shown);
  const highest = readings.reduce((high, value) => Math.max(high, value), 100);
  const from = Math.max(0, Math.min(LEAST_OF_INTEREST, threshold - 10, shown - 2), Math.floor((lowest - 2) / 10) * 10);
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
export function capacityAxis(
  options: CommonOptions,
  threshold: number,
  readings: readonly number[],
  path: readonly number[] = [],
) {
  const { stepSize, ...range } = capacityRange(threshold, readings, path);
  return { ...options.scales?.y, ...range, ticks: { ...options.scales?.y?.ticks, stepSize, includeBounds: false } };
}

/** The x axis of a chart by age, in whole years from new. */
export function ageAxis(options: CommonOptions, oldestYears: number) {
  const ticks = { ...options.scales?.x?.ticks, stepSize: 1 };
  return { ...options.scales?.x, type: "linear", min: 0, max: oldestYears, ticks };
}

/** The rule below which a pack counts as faded, in percent of rated. */
export function thresholdRule(colours: Palette, percent: number): Rule {
  const label = say.batteries.fade.threshold(percentWords(percent / 100));
  return { axis: "y", at: percent, label, colour: colours.accent, dash: [8, 4] };
}

// More dots than this overlap: smaller ones still show where they are dense.
const MANY_DOTS = 400;

/** Readings as the dots of a chart by age. */
export function readingDots(colours: Palette, dots: readonly AgePoint[]) {
  return {
    dots,
    radius: dots.length > MANY_DOTS ? 1.5 : 2.25,
    dotColour: colours.ink,
  };
}
