import { Chart } from "./chart-kit.ts";
import type { FigureSpec } from "./figure-spec.ts";
import type { Palette } from "./palette.ts";

/** How large a chart is drawn, in CSS pixels, and how many dots each of them has each way. */
interface Size {
  width: number;
  height: number;
  fineness: number;
}

/** A figure's chart on a canvas of its own. */
export function plot(spec: FigureSpec, colours: Palette, { width, height, fineness }: Size): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  // what is drawn is read back, not shown
  canvas.getContext("2d", { willReadFrequently: true });
  const configuration = spec.draw(colours);
  const fixed = { responsive: false, devicePixelRatio: fineness, color: colours.soft };
  configuration.options = { ...configuration.options, ...fixed };
  new Chart(canvas, configuration);
  return canvas;
}
