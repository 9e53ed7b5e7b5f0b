import type { Chart, ChartType, Plugin } from "chart.js";

/** A straight line across the chart with its own label: a threshold (`y`) or a day (`x`), in scale values. */
export interface Rule {
  axis: "x" | "y";
  at: number;
  label?: string;
  colour: string;
  dash?: number[];
  width?: number;
  /**
   * Where a level rule starts and ends on x; the whole width without. An upright rule's label is left out where it
   * would run past `to`.
   */
  from?: number;
  to?: number;
  /** A level rule's label stands at its end, not at its start. */
  atEnd?: boolean;
}

/** What the plug-in is given: the rules and the type in which their labels stand. */
interface Rules {
  list: Rule[];
  font: string;
  size: number;
  paper: string;
}

declare module "chart.js" {
  interface PluginOptionsByType<TType extends ChartType> {
    rules?: Rules & { kind?: TType };
  }
}

const readingPoints = new WeakMap<Chart, number>();

/** Puts the reading line at a value of the x scale, or takes it away, and draws the chart anew. */
export function showReadingLine(chart: Chart, at: number | null): void {
  if (at === null) readingPoints.delete(chart);
  else readingPoints.set(chart, at);
  chart.draw();
}

/** Draws rules over the chart, and the reading line at the point that the reader stepped to. */
export const rules: Plugin = {
  id: "rules",
  afterDatasetsDraw(chart, _arguments, options) {
    const { list, ...type } = { list: [], font: "sans-serif", size: 12, paper: "#fff", ...options } as Rules;
    for (const rule of list) drawRule(chart, rule, type);
    const at = readingPoints.get(chart);
    if (at !== undefined) drawRule(chart, { axis: "x", at, colour: String(chart.options.color), width: 1 }, type);
  },
};

function drawRule(chart: Chart, rule: Rule, { font, size, paper }: Omit<Rules, "list">): void {
  const { ctx: pen, chartArea: area, scales } = chart;
  const scale = scales[rule.axis];
  const across = scales.x;
  if (!scale || !across) return;
  const at = scale.getPixelForValue(rule.at);
  const [low, high] = rule.axis === "x" ? [area.left, area.right] : [area.top, area.bottom];
  if (at < low - 1 || at > high + 1) return;
  const left = rule.from === undefined ? area.left : across.getPixelForValue(rule.from);
  const right = rule.to === undefined ? area.right : across.getPixelForValue(rule.to);
  pen.save();
  pen.strokeStyle = rule.colour;
  pen.lineWidth = rule.width ?? 1.5;
  pen.setLineDash(rule.dash ?? []);
  pen.beginPath();
  if (rule.axis === "x") {
    pen.moveTo(at, area.top - 4);
    pen.lineTo(at, area.bottom);
  } else {
    pen.moveTo(left, at);
    pen.lineTo(right, at);
  }
  pen.stroke();
  if (rule.label) drawLabel(rule.label);
  pen.restore();

  function drawLabel(label: string): void {
    pen.font = `${size}px ${font}`;
    const width = pen.measureText(label).width;
    const room = rule.axis === "x" && rule.to !== undefined ? right - at : area.width;
    if (width + 8 > room) return;
    const x = rule.axis === "x" ? Math.min(at + 4, area.right - width) : rule.atEnd ? right - width : left + 4;
    const y = rule.axis === "x" ? area.top - 6 : at - 5;
    // A halo of paper keeps the words readable where lines cross them.
    pen.setLineDash([]);
    pen.strokeStyle = paper;
    pen.lineWidth = 4;
    pen.lineJoin = "round";
    pen.strokeText(label, x, y);
    // the accent is for lines: as small words it would be too faint
    pen.fillStyle = String(chart.options.color);
    pen.fillText(label, x, y);
  }
}
