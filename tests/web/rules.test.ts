import { readFileSync } from "node:fs";
import type { Chart } from "chart.js";
import { describe, expect, it } from "vitest";
import { rules } from "../../web/charts/rules.ts";

const STYLE = readFileSync("web/style/page.css", "utf8");

/** The colours of a scheme as the stylesheet names them; the dark ones stand second. */
function colours(scheme: "light" | "dark"): (name: string) => string {
  return (name) => [...STYLE.matchAll(new RegExp(`--${name}: (#[0-9a-f]{6})`, "g"))][scheme === "light" ? 0 : 1]![1]!;
}

/** Source: W3C, Web Content Accessibility Guidelines 2.2, "relative luminance" and "contrast ratio". */
function contrast(one: string, other: string): number {
  const [low, high] = [one, other].map(luminance).sort((a, b) => a - b);
  return (high! + 0.05) / (low! + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

/** The colours in which a rule's line and its label are drawn. */
function drawn(line: string, words: string): { line: string; label: string } {
  const found = { line: "", label: "" };
  const pen: Record<string, unknown> = {
    stroke: () => Object.assign(found, { line: pen.strokeStyle }),
    fillText: () => Object.assign(found, { label: pen.fillStyle }),
    measureText: () => ({ width: 50 }),
  };
  for (const name of ["save", "restore", "setLineDash", "beginPath", "moveTo", "lineTo", "strokeText"])
    pen[name] = () => {};
  const scale = { getPixelForValue: (value: number) => value };
  const chartArea = { left: 0, right: 300, top: 0, bottom: 200, width: 300 };
  const chart = { ctx: pen, chartArea, scales: { x: scale, y: scale }, options: { color: words } };
  const list = [{ axis: "y" as const, at: 80, label: "end of life", colour: line }];
  rules.afterDatasetsDraw?.(chart as unknown as Chart, {}, { list, font: "serif", size: 12, paper: "#fff" }, false);
  return found;
}

describe("a rule across a chart", () => {
  for (const scheme of ["light", "dark"] as const) {
    it(`has a line and a label that stand out from the paper, ${scheme}`, () => {
      const of = colours(scheme);
      const { line, label } = drawn(of("accent"), of("soft"));
      // WCAG 2.2: 3 to 1 for graphics (1.4.11), 4.5 to 1 for small words (1.4.3).
      expect(contrast(line, of("paper"))).toBeGreaterThan(3);
      expect(contrast(label, of("paper"))).toBeGreaterThan(4.5);
    });
  }
});
