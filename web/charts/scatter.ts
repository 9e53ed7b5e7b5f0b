import type { Chart, ChartType, Plugin } from "chart.js";

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
    inside(chart, (pen, x, y) => {
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
    inside(chart, (pen, x, y) => {
      pen.fillStyle = dotColour;
      // One by one: a path of thousands that overlap takes a browser a second to fill. Of very many small ones squares
      // look no different, and take a fifth of the time.
      const side = dots.length > MOST_ROUND ? 2 * radius : 0;
      for (const dot of dots) {
        const [across, up] = [x(dot.x), y(dot.y)];
        if (side > 0) {
          pen.fillRect(across - radius, up - radius, side, side);
          continue;
        }
        pen.beginPath();
        pen.arc(across, up, radius, 0, 2 * Math.PI);
        pen.fill();
      }
    });
  },
};

/** The lists as they were given: the chart's own view of its options would wrap every point. */
function given(chart: Chart, options: object): Partial<Scatter> {
  return Object.keys(options).length === 0 ? {} : ((chart.config.options?.plugins?.scatter ?? {}) as Partial<Scatter>);
}

/** Draws in the chart's area, a little beyond its edge so that a dot on it is whole. */
function inside(
  chart: Chart,
  draw: (pen: CanvasRenderingContext2D, x: (value: number) => number, y: (value: number) => number) => void,
): void {
  const { ctx: pen, chartArea: area, scales } = chart;
  if (!scales.x || !scales.y) return;
  const [across, up] = [scales.x, scales.y];
  const EDGE = 3;
  pen.save();
  pen.beginPath();
  pen.rect(area.left - EDGE, area.top - EDGE, area.width + 2 * EDGE, area.height + EDGE);
  pen.clip();
  draw(
    pen,
    (value) => across.getPixelForValue(value),
    (value) => up.getPixelForValue(value),
  );
  pen.restore();
}
