import type { ChartConfiguration } from "chart.js";
import { fadeByAge } from "../fade-by-age.ts";
import { numberWords, percentWords } from "../format.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { thresholdPercent } from "../threshold.ts";
import { capacityAxis, commonOptions } from "./chart-kit.ts";
import { figure } from "./figure.ts";
import { hatch } from "./hatch.ts";

// More lines than this are a grey smear that says no more.
const MOST_PATHS = 150;

/** Every reading of an item's packs and their likely paths, by age. */
export function itemFade(item: string, { plan, reading, readings }: PlannedSession, choices: HTMLElement): HTMLElement {
  const words = say.batteries.fleet;
  const { dots, paths, bands } = fadeByAge(item, plan, reading, readings);
  const threshold = thresholdPercent(item, plan, reading);
  const packs = plan.packs.filter((pack) => pack.item === item).length;
  const share = (percent: number) => percentWords(percent / 100);
  return figure({
    question: words.heading,
    unit: say.figure.unitOf(item, words.unit),
    choices,
    key: [
      { mark: "dot", label: words.reading },
      { mark: "faint-line", label: words.path },
      ...(bands.length > 0
        ? [
            { mark: "line" as const, label: words.middle },
            { mark: "hatch" as const, label: words.band },
          ]
        : []),
    ],
    caption: words.caption(item, packs, dots.length, bands.length > 0),
    points: bands.map((band) => ({
      at: band.age,
      says: words.at(numberWords(band.age, 2), share(band.p50), share(band.p10), share(band.p90)),
    })),
    firstPoint: Math.max(0, Math.floor(bands.length / 2)),
    draw: (colours) => {
      const options = commonOptions(colours, words.unit);
      const ages = [...dots, ...paths.flat()].map((point) => point.age);
      const oldest = ages.reduce((most, age) => Math.max(most, age), 1);
      const edge = { borderColor: colours.soft, borderWidth: 0.75, pointRadius: 0 };
      const bandLine = (key: "p10" | "p50" | "p90") => bands.map((band) => ({ x: band.age, y: band[key] }));
      return {
        type: "line",
        data: {
          datasets: [
            { data: bandLine("p50"), borderColor: colours.ink, borderWidth: 2, pointRadius: 0 },
            { data: bandLine("p90"), ...edge },
            { data: bandLine("p10"), ...edge, fill: "-1", backgroundColor: hatch(colours.soft) },
          ],
        },
        options: {
          ...options,
          scales: {
            x: {
              ...options.scales?.x,
              type: "linear",
              min: 0,
              max: Math.ceil(oldest),
              ticks: { ...options.scales?.x?.ticks, stepSize: 1 },
            },
            y: capacityAxis(options, threshold, [...bands.map((band) => band.p10), ...dots.map((dot) => dot.percent)]),
          },
          plugins: {
            scatter: {
              dots: dots.map((dot) => ({ x: dot.age, y: dot.percent })),
              radius: dots.length > 400 ? 1.5 : 2.25,
              dotColour: colours.ink,
              lines: paths.slice(0, MOST_PATHS).map((path) => path.map(({ age, percent }) => ({ x: age, y: percent }))),
              lineColour: colours.grey,
            },
            rules: {
              list: [
                {
                  axis: "y",
                  at: threshold,
                  label: say.batteries.fade.threshold(share(threshold)),
                  colour: colours.accent,
                  dash: [8, 4],
                },
              ],
              font: colours.font,
              size: colours.size,
              paper: colours.paper,
            },
          },
        },
      } as unknown as ChartConfiguration;
    },
    table: () =>
      table({
        caption: words.heading,
        rows: bands,
        first: 80,
        sortable: false,
        columns: [
          { title: words.heads[0]!, value: (row) => numberWords(row.age, 2), figures: true },
          { title: words.heads[1]!, value: (row) => share(row.p10), figures: true },
          { title: words.heads[2]!, value: (row) => share(row.p50), figures: true },
          { title: words.heads[3]!, value: (row) => share(row.p90), figures: true },
          { title: words.heads[4]!, value: (row) => row.packs, figures: true },
        ],
      }),
  });
}
