import type { ChartConfiguration } from "chart.js";
import { dayWords } from "../format.ts";
import { dayText } from "../months.ts";
import type { PathPoint } from "../pack-path.ts";
import type { Dot } from "../pack-readings.ts";
import { say } from "../strings.ts";
import { bandEdges } from "./band.ts";
import { capacityAxis, thresholdRule } from "./capacity-chart.ts";
import { commonOptions } from "./chart-options.ts";
import type { Palette } from "./palette.ts";
import { yearAxis } from "./year-axis.ts";

/** What is drawn of one pack's forecast; days as numbers. */
export interface DrawnFade {
  asOf: number;
  /** In percent. */
  threshold: number;
  dots: readonly Dot[];
  path: readonly PathPoint[];
  siblings: readonly (readonly PathPoint[])[];
}

/** Readings as dots, the likely path, the band around it, the threshold, as-of, and its like in grey. */
export function packFadeChart(
  colours: Palette,
  { asOf, threshold, dots, path, siblings }: DrawnFade,
): ChartConfiguration {
  const words = say.batteries.fade;
  const options = commonOptions(colours, words.unit, [
    thresholdRule(colours, threshold),
    { axis: "x", at: asOf, label: words.asOf(dayWords(dayText(asOf))), colour: colours.soft, width: 1 },
  ]);
  const from = Math.min(asOf - 200, dots[0]?.day ?? asOf) - 30;
  const to = Math.max(path.at(-1)?.day ?? 0, asOf + 200, (dots.at(-1)?.day ?? 0) + 30);
  const line = (key: "p10" | "p50" | "p90", points = path) => points.map((point) => ({ x: point.day, y: point[key] }));
  return {
    type: "line",
    data: {
      datasets: [
        { data: line("p50"), borderColor: colours.ink, borderWidth: 2.5, pointRadius: 0 },
        ...bandEdges(colours, line("p90"), line("p10")),
        {
          data: dots.map((dot) => ({ x: dot.day, y: dot.percent })),
          showLine: false,
          clip: 8,
          pointRadius: 3.5,
          pointBackgroundColor: colours.ink,
          pointBorderColor: colours.paper,
          pointBorderWidth: 1,
        },
      ],
    },
    options: {
      ...options,
      plugins: {
        ...options.plugins,
        scatter: { lines: siblings.map((sibling) => line("p50", sibling)), lineColour: colours.grey },
      },
      scales: {
        x: yearAxis(options, from, to),
        y: capacityAxis(
          options,
          threshold,
          dots.map((dot) => dot.percent),
          path.map((point) => point.p10),
        ),
      },
    },
  } as unknown as ChartConfiguration;
}
