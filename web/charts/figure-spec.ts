import type { ChartConfiguration } from "chart.js";
import type { KeyEntry } from "./key.ts";
import type { Palette } from "./palette.ts";

/** A chart with the words around it, on the page and in a saved picture alike. */
export interface FigureSpec {
  /** The question that the figure answers. */
  question: string;
  unit: string;
  key: KeyEntry[];
  /** What the figure shows, in words. */
  caption: string;
  /** There is nothing to draw: question, choices and caption stand alone. */
  empty?: boolean;
  draw: (colours: Palette) => ChartConfiguration;
  /** One a step of the chart: where on the x scale, and what stands there, read out. */
  points: { at: number; says: string }[];
  /** The step that is read out first. */
  firstPoint?: number;
  /** The figures as a table, made when it is asked for. */
  table: () => HTMLElement;
  /** Choices that belong to the figure, above the plot. */
  choices?: HTMLElement | null;
}
