import type { Chart, ChartType, Plugin, Scale } from "chart.js";
import { drawSquares, type Place } from "./squares.ts";

interface Point {
  x: number;
  y: number;
}

/** Very many dots and thin lines in scale values, drawn by hand: as elements of the chart they would hold up the page. */
interface Scatter {
  dots: readonly Point[];
  radius: number;
  dotColour: string;
  lines: readonly (readonly Point[])[];
  lineColour: string;
}

const MOST_ROUND = 2000;

declare module "chart.js" {
  interface PluginOptionsByType<TType extends ChartType> {
    scatter?: Partial<Scatter> & { kind?: TType };
  }
}

/** Draws dots over and thin lines under what else the chart shows. */
export const scatter: Plugin = {
  id: "scatter",
  beforeDatasetsDraw(chart, _arguments, options) {
    const { lines = [], lineColour = "#000" } = given(chart, options);
    inside(chart, (pen, { x, y }) => {
      pen.strokeStyle = lineColour;
      pen.lineWidth = 1;
      pen.beginPath();
      for (const line of lines) {
        line.forEach((point, at) => {
          if (at === 0) pen.moveTo(x(point.x), y(point.y));
          else pen.lineTo(x(point.x), y(point.y));
        });
      }
      pen.stroke();
    });
  },
  afterDatasetsDraw(chart, _arguments, options) {
    const { dots = [], radius = 2, dotColour = "#000" } = given(chart, options);
    inside(chart, (pen, place) => {
      pen.fillStyle = dotColour;
      if (dots.length > MOST_ROUND) {
        if (!isFirstOnScreen(chart)) drawSquares(pen, dots, place, radius);
        return;
      }
      // One by one: a path of thousands that overlap takes a browser a second to fill.
      for (const dot of dots) {
        pen.beginPath();
        pen.arc(place.x(dot.x), place.y(dot.y), radius, 0, 2 * Math.PI);
        pen.fill();
      }
    });
  },
};

const shown = new WeakSet<Chart>();

/**
 * Whether a chart is drawn for the first time where the reader looks: then it is drawn again with its dots a task later,
 * as making a chart and setting thousands of dots at once would hold up the page.
 */
function isFirstOnScreen(chart: Chart): boolean {
  if (!chart.options.responsive || shown.has(chart)) return false;
  shown.add(chart);
  // a chart that is gone by then has no pen
  setTimeout(() => chart.ctx && chart.draw());
  return true;
}

/** The lists as they were given: the chart's own view of its options would wrap every point. */
function given(chart: Chart, options: object): Partial<Scatter> {
  return Object.keys(options).length === 0 ? {} : ((chart.config.options?.plugins?.scatter ?? {}) as Partial<Scatter>);
}

/** Draws in the chart's area, a little beyond its edge so that a dot on it is whole. */
function inside(chart: Chart, draw: (pen: CanvasRenderingContext2D, place: Place) => void): void {
  const { ctx: pen, chartArea: area, scales } = chart;
  if (!scales.x || !scales.y) return;
  const EDGE = 3;
  const room = {
    left: area.left - EDGE,
    top: area.top - EDGE,
    width: area.width + 2 * EDGE,
    height: area.height + EDGE,
  };
  pen.save();
  pen.beginPath();
  pen.rect(room.left, room.top, room.width, room.height);
  pen.clip();
  draw(pen, { x: along(scales.x), y: along(scales.y), area: room, fineness: chart.currentDevicePixelRatio });
  pen.restore();
}

/** A linear scale as plain sums: asked for thousands of points, the chart's own takes its time. */
function along(scale: Scale): Place["x"] {
  const start = scale.getPixelForValue(scale.min);
  const step = (scale.getPixelForValue(scale.max) - start) / (scale.max - scale.min);
  return (value) => start + step * (value - scale.min);
}
