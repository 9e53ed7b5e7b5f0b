import type { ChartConfiguration, Scale } from "chart.js";
import type { Plan } from "../../src/index.ts";
import { dayWords, monthWords, percentWords } from "../format.ts";
import { dayNumber, dayText, monthAfter, monthEnd } from "../months.ts";
import { readingsOf } from "../pack-readings.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { thresholdPercent } from "../threshold.ts";
import { bandEdges } from "./band.ts";
import { capacityAxis, thresholdRule } from "./capacity-chart.ts";
import { commonOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

type Pack = Plan["packs"][number];

const MOST_SIBLINGS = 60;
// What a year's label takes on the axis, in pixels.
const YEAR_WIDTH = 44;

/** One pack's forecast: its readings as dots, the likely path, the band around it, the threshold and its like in grey. */
export function packFade(pack: Pack, session: PlannedSession, choices: HTMLElement): HTMLElement {
  const words = say.batteries.fade;
  const { plan, reading } = session;
  const asOf = dayNumber(plan.asOf);
  const threshold = thresholdPercent(pack.item, plan, reading);
  const dots = readingsOf(pack.serial, session.readings);
  const path = pathOf(pack, asOf);
  const siblings = plan.packs
    .filter((other) => other !== pack && other.item === pack.item && other.path.p50.length > 0)
    .slice(0, MOST_SIBLINGS);
  const months = pack.path.p50.map((_, index) => monthAfter(pack.path.from, index));
  return figure({
    question: words.heading,
    unit: say.figure.unitOf(pack.serial, words.unit),
    choices,
    key: [
      { mark: "line", label: words.likely },
      { mark: "hatch", label: words.band },
      ...(dots.length > 0 ? [{ mark: "dot" as const, label: words.reading }] : []),
      ...(siblings.length > 0 ? [{ mark: "faint-line" as const, label: words.sibling }] : []),
    ],
    empty: path.length + dots.length === 0,
    caption: path.length === 0 ? `${pack.says} ${words.noPath}` : pack.says,
    points: months.map((month, index) => ({
      at: monthEnd(month),
      says: words.at(
        monthWords(month),
        percentWords(pack.path.p50[index] ?? 0),
        percentWords(pack.path.p10[index] ?? 0),
        percentWords(pack.path.p90[index] ?? 0),
      ),
    })),
    firstPoint: Math.max(0, Math.min(11, months.length - 1)),
    draw: (colours) => {
      const options = commonOptions(colours, words.unit, [
        thresholdRule(colours, threshold),
        { axis: "x", at: asOf, label: words.asOf(dayWords(plan.asOf)), colour: colours.soft, width: 1 },
      ]);
      const from = Math.min(asOf - 200, dots[0]?.day ?? asOf) - 30;
      const to = Math.max(path.at(-1)?.day ?? 0, asOf + 200, (dots.at(-1)?.day ?? 0) + 30);
      const line = (key: "p10" | "p50" | "p90") => path.map((point) => ({ x: point.day, y: point[key] }));
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
            scatter: {
              lines: siblings.map((sibling) => pathOf(sibling, asOf).map(({ day, p50 }) => ({ x: day, y: p50 }))),
              lineColour: colours.grey,
            },
          },
          scales: {
            x: {
              ...options.scales?.x,
              type: "linear",
              min: from,
              max: to,
              afterBuildTicks: (axis: Scale) => {
                const years = yearStarts(from, to);
                const every = Math.ceil((years.length * YEAR_WIDTH) / axis.chart.width);
                axis.ticks = years.flatMap((value, at) => (at % every === 0 ? { value } : []));
              },
              ticks: {
                ...options.scales?.x?.ticks,
                callback: (value: string | number) => dayText(Number(value)).slice(0, 4),
              },
            },
            y: capacityAxis(
              options,
              threshold,
              dots.map((dot) => dot.percent),
              path.map((point) => point.p10),
            ),
          },
        },
      } as unknown as ChartConfiguration;
    },
    table: () =>
      table({
        caption: words.heading,
        rows: months.map((month, index) => ({ month, index })),
        first: 60,
        sortable: false,
        columns: [
          { title: words.heads[0]!, value: (row) => row.month, show: (row) => monthWords(row.month) },
          { title: words.heads[1]!, value: (row) => percentWords(pack.path.p10[row.index] ?? 0), figures: true },
          { title: words.heads[2]!, value: (row) => percentWords(pack.path.p50[row.index] ?? 0), figures: true },
          { title: words.heads[3]!, value: (row) => percentWords(pack.path.p90[row.index] ?? 0), figures: true },
        ],
      }),
  });
}

/** The path in percent from as-of on; it starts at today's capacity where that is known. */
function pathOf(pack: Pack, asOf: number): { day: number; p10: number; p50: number; p90: number }[] {
  if (pack.path.p50.length === 0) return [];
  const now = pack.capacityNow;
  const start = now ? [{ day: asOf, p10: now.p10 * 100, p50: now.p50 * 100, p90: now.p90 * 100 }] : [];
  const ends = pack.path.p50.map((p50, index) => ({
    day: monthEnd(monthAfter(pack.path.from, index)),
    p10: (pack.path.p10[index] ?? p50) * 100,
    p50: p50 * 100,
    p90: (pack.path.p90[index] ?? p50) * 100,
  }));
  return [...start, ...ends.filter((point) => point.day > asOf)];
}

function yearStarts(from: number, to: number): number[] {
  const starts: number[] = [];
  for (let year = Number(dayText(from).slice(0, 4)); year <= Number(dayText(to).slice(0, 4)) + 1; year += 1) {
    const day = dayNumber(`${year}-01-01`);
    if (day >= from && day <= to) starts.push(day);
  }
  return starts;
}
