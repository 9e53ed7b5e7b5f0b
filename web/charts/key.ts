import { make, makeSvg } from "../dom.ts";

/** How a series looks: by shape first, so that it is told apart without colour. */
export type Mark =
  | "line"
  | "accent-line"
  | "dashed"
  | "dotted"
  | "bar"
  | "light-bar"
  | "accent-bar"
  | "hatch"
  | "dot"
  | "faint-line";

export interface KeyEntry {
  mark: Mark;
  label: string;
}

/** The chart's key: a small sample and a label for each series. */
export function chartKey(entries: readonly KeyEntry[]): HTMLElement {
  return make(
    "ul",
    { class: "key" },
    entries.map(({ mark, label }) => make("li", {}, sample(mark), label)),
  );
}

function sample(mark: Mark): SVGElement {
  const line = (extra: Record<string, string>) =>
    makeSvg("line", { x1: 1, y1: 7, x2: 27, y2: 7, stroke: "currentColor", "stroke-width": 2, ...extra });
  const box = (extra: Record<string, string>) => makeSvg("rect", { x: 7.5, y: 1.5, width: 13, height: 11, ...extra });
  const drawn: Record<Mark, () => SVGElement[]> = {
    line: () => [line({})],
    dashed: () => [
      line({ "stroke-dasharray": "6 4" }),
      makeSvg("circle", { cx: 14, cy: 7, r: 3, fill: "var(--paper)", stroke: "currentColor", "stroke-width": 1.5 }),
    ],
    dotted: () => [line({ "stroke-dasharray": "2 3" })],
    "accent-line": () => [
      line({ stroke: "var(--accent)" }),
      makeSvg("rect", { x: 11, y: 4, width: 6, height: 6, fill: "var(--accent)" }),
    ],
    bar: () => [box({ fill: "var(--soft)" })],
    "faint-line": () => [line({ stroke: "var(--grey)", "stroke-width": "1" })],
    "light-bar": () => [box({ fill: "var(--paper)", stroke: "currentColor" })],
    "accent-bar": () => [box({ fill: "var(--accent)" })],
    hatch: () => [
      makeSvg("path", { d: "M1 13 13 1M7 13 19 1M13 13 25 1", stroke: "var(--soft)", "stroke-width": 1, fill: "none" }),
    ],
    dot: () => [makeSvg("circle", { cx: 14, cy: 7, r: 3.5, fill: "currentColor" })],
  };
  return makeSvg("svg", { viewBox: "0 0 28 14", width: 28, height: 14, "aria-hidden": "true" }, ...drawn[mark]());
}
