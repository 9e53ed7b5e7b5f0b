import { button, make } from "../dom.ts";
import { opening } from "../opening.ts";
import { say } from "../strings.ts";
import { Chart } from "./chart-kit.ts";
import type { FigureSpec } from "./figure-spec.ts";
import { chartKey } from "./key.ts";
import { palette } from "./palette.ts";
import { forgetSheets, onPaper, prepareForPaper } from "./paper.ts";
import { savePicture } from "./picture.ts";
import { showReadingLine } from "./rules.ts";

interface Live {
  canvas: HTMLCanvasElement;
  draw: () => void;
  chart: Chart | null;
  /** Not drawn yet, or in the other colours. */
  stale: boolean;
}

const live = new Set<Live>();
let pending = false;

/** A chart with its question, unit, key, readout, caption and table. */
export function figure(spec: FigureSpec): HTMLElement {
  const head = make("h3", {}, spec.question);
  const caption = make("figcaption", {}, spec.caption);
  if (spec.empty) return make("figure", {}, head, spec.choices, caption);
  const canvas = make("canvas", { role: "img", "aria-label": `${spec.question} ${spec.caption}` });
  const output = make("output", { class: "says" });
  const step = make("input", { type: "range", min: 0, max: Math.max(0, spec.points.length - 1), step: 1 });
  step.setAttribute("aria-label", `${say.figure.step}: ${spec.question}`);

  const entry: Live = {
    canvas,
    chart: null,
    stale: true,
    draw: () => {
      entry.stale = false;
      entry.chart?.destroy();
      const colours = palette();
      const configuration = spec.draw(colours);
      configuration.options = { ...configuration.options, color: colours.soft };
      configuration.plugins = [{ id: "step", afterLayout: (chart) => layStep(step, chart, spec.points) }];
      entry.chart = new Chart(canvas, configuration);
    },
  };

  const show = (index: number) => {
    const point = spec.points[index];
    if (!point) return;
    step.value = String(index);
    step.setAttribute("aria-valuetext", point.says);
    output.textContent = point.says;
    if (entry.chart) showReadingLine(entry.chart, point.at);
  };
  step.addEventListener("input", () => show(Number(step.value)));
  let under = -1;
  const showNearest = ({ offsetX }: PointerEvent) => {
    const across = entry.chart?.scales.x;
    if (!across) return;
    const at = nearest(spec.points.map((point) => Math.abs(across.getPixelForValue(point.at) - offsetX)));
    if (at !== under) show(at);
    under = at;
  };
  canvas.addEventListener("pointermove", showNearest);
  canvas.addEventListener("pointerdown", showNearest);
  show(spec.firstPoint ?? spec.points.length - 1);

  live.add(entry);
  drawFigures();
  return make(
    "figure",
    {},
    head,
    make("p", { class: "unit" }, spec.unit),
    spec.choices,
    chartKey(spec.key),
    make("div", { class: "plot" }, canvas),
    onPaper(spec),
    spec.points.length > 1 && make("div", { class: "readout" }, step, output),
    caption,
    make(
      "div",
      { class: "take" },
      spec.points.length > 0 && opening(say.figure.table, spec.table),
      button(say.figure.picture, () => savePicture(spec), { class: "link picture" }),
    ),
  );
}

function nearest(distances: readonly number[]): number {
  return distances.reduce((best, distance, at) => (distance < distances[best]! ? at : best), 0);
}

// The width of the slider's thumb, which style/figure.css sets.
const THUMB = 14;

/** Lays the slider below the axis so that its thumb stands under the step that it reads out. */
function layStep(step: HTMLElement, chart: Chart, points: FigureSpec["points"]): void {
  const across = chart.scales.x;
  const [first, last] = [points[0], points.at(-1)];
  if (!across || !first || !last) return;
  const [from, to] = [across.getPixelForValue(first.at), across.getPixelForValue(last.at)];
  step.style.marginLeft = `${from - THUMB / 2}px`;
  step.style.width = `${to - from + THUMB}px`;
}

/** Draws the charts in the page that are not drawn yet, one a task, so that the page answers in between. */
export function drawFigures(): void {
  if (pending) return;
  pending = true;
  setTimeout(() => {
    pending = false;
    for (const entry of live) {
      if (!entry.stale || !entry.canvas.isConnected) continue;
      entry.draw();
      drawFigures();
      return;
    }
    prepareForPaper();
  });
}

/** Forgets the charts of a part of the page that is about to be replaced. */
export function forgetFigures(within: Element): void {
  forgetSheets(within);
  for (const entry of live) {
    if (!within.contains(entry.canvas)) continue;
    entry.chart?.destroy();
    live.delete(entry);
  }
}

/** Draws the charts anew where the reader's screen goes from light to dark or back. */
export function followColours(): void {
  matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => {
    for (const entry of live) entry.stale = true;
    drawFigures();
  });
}
