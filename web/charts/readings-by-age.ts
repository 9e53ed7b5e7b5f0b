import type { ChartConfiguration } from "chart.js";
import type { Reading } from "../../src/index.ts";
import { countColumn } from "../columns.ts";
import { type AgePoint, dotsByAge, quantile } from "../fade-by-age.ts";
import { percentWords } from "../format.ts";
import { type PackReadings, readingsOf } from "../pack-readings.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { ageAxis, capacityAxis, readingDots } from "./capacity-chart.ts";
import { commonOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

const USUAL_END_PERCENT = 80;

/** Every reading by the age of its pack: the first chart, shown while the forecast is being made. */
export function readingsByAge(reading: Reading, readings: PackReadings): HTMLElement | null {
  const dots = dotsByAge(reading, readings).filter(({ x }) => x >= 0);
  if (dots.length === 0) return null;
  const words = say.firstLook;
  const years = byYear(dots);
  const tested = reading.fleet.packs.filter(
    ({ serial, made, inService }) => (made ?? inService) !== null && readingsOf(serial, readings).length > 0,
  ).length;
  return figure({
    question: words.chart,
    unit: say.batteries.fleet.unit,
    key: [{ mark: "dot", label: say.batteries.fleet.reading }],
    caption: words.caption(dots.length, tested),
    points: years.map((year) => ({
      at: year.age + 0.5,
      says: words.at(`${year.age}–${year.age + 1}`, year.count, percentWords(year.middle / 100)),
    })),
    firstPoint: 0,
    draw: (colours) => {
      const options = commonOptions(colours, say.batteries.fleet.unit);
      return {
        type: "line",
        data: { datasets: [] },
        options: {
          ...options,
          plugins: { ...options.plugins, scatter: readingDots(colours, dots) },
          scales: {
            x: ageAxis(options, years.at(-1)!.age + 1),
            y: capacityAxis(
              options,
              USUAL_END_PERCENT,
              dots.map((dot) => dot.y),
            ),
          },
        },
      } as unknown as ChartConfiguration;
    },
    table: () =>
      table<(typeof years)[number]>({
        caption: words.chart,
        rows: years,
        sortable: false,
        columns: [
          { title: words.heads[0]!, value: (row) => `${row.age}–${row.age + 1}` },
          countColumn(words.heads[1]!, (row) => row.count),
          { title: words.heads[2]!, value: (row) => percentWords(row.middle / 100), figures: true },
        ],
      }),
  });
}

function byYear(dots: readonly AgePoint[]): { age: number; count: number; middle: number }[] {
  const years: number[][] = [];
  for (const { x, y } of dots) {
    const year = Math.floor(x);
    years[year] ??= [];
    years[year].push(y);
  }
  // years without readings are holes, which are passed over
  return years.flatMap((values, age) => {
    values.sort((a, b) => a - b);
    return { age, count: values.length, middle: quantile(values, 0.5) };
  });
}
