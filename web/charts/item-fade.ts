import type { ChartConfiguration } from "chart.js";
import { countColumn } from "../columns.ts";
import { type FadeByAge, fadeByAge } from "../fade-by-age.ts";
import { numberWords, percentWords } from "../format.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { thresholdPercent } from "../threshold.ts";
import { bandEdges } from "./band.ts";
import { ageAxis, capacityAxis, readingDots, thresholdRule } from "./capacity-chart.ts";
import { commonOptions } from "./chart-options.ts";
import { figure } from "./figure.ts";

/** Every reading of an item's packs and their likely paths, by age. */
export function itemFade(item: string, { plan, reading, readings }: PlannedSession, choices: HTMLElement): HTMLElement {
  const words = say.batteries.fleet;
  const { dots, paths, bands, oldest } = fadeByAge(item, plan, reading, readings);
  const threshold = thresholdPercent(item, plan, reading);
  const packs = plan.packs.filter((pack) => pack.item === item).length;
  const unknown = dots.length + paths.length === 0;
  const breaks = bands.some(({ anew }, at) => at > 0 && anew);
  const share = (percent: number) => percentWords(percent / 100);
  return figure({
    question: words.heading,
    unit: say.figure.unitOf(item, words.unit),
    choices,
    key: [
      ...(dots.length > 0 ? [{ mark: "dot" as const, label: words.reading }] : []),
      { mark: "faint-line", label: words.path },
      ...(bands.length > 0
        ? [
            { mark: "line" as const, label: words.middle },
            { mark: "hatch" as const, label: words.band },
          ]
        : []),
    ],
    empty: unknown,
    caption: unknown
      ? words.unknown(item)
      : dots.length === 0
        ? words.unread(item)
        : words.caption(item, packs, dots.length, breaks),
    points: bands.map((band) => ({
      at: band.age,
      says: words.at(numberWords(band.age, 2), share(band.p50), share(band.p10), share(band.p90)),
    })),
    firstPoint: Math.max(0, Math.floor(bands.length / 2)),
    draw: (colours) => {
      const options = commonOptions(colours, words.unit, [thresholdRule(colours, threshold)]);
      const bandLine = (key: "p10" | "p50" | "p90") =>
        bands.flatMap((band) => [
          ...(band.anew ? [{ x: band.age, y: Number.NaN }] : []),
          { x: band.age, y: band[key] },
        ]);
      return {
        type: "line",
        data: {
          datasets: [
            { data: bandLine("p50"), borderColor: colours.ink, borderWidth: 2, pointRadius: 0 },
            ...bandEdges(colours, bandLine("p90"), bandLine("p10")),
          ],
        },
        options: {
          ...options,
          scales: {
            x: ageAxis(options, Math.ceil(Math.max(1, oldest))),
            y: capacityAxis(
              options,
              threshold,
              dots.map((dot) => dot.y),
              bands.map((band) => band.p10),
            ),
          },
          plugins: {
            ...options.plugins,
            scatter: {
              ...readingDots(colours, dots),
              lines: paths,
              lineColour: colours.grey,
            },
          },
        },
      } as unknown as ChartConfiguration;
    },
    table: () =>
      table<FadeByAge["bands"][number]>({
        caption: words.heading,
        rows: bands,
        first: 80,
        sortable: false,
        columns: [
          countColumn(words.heads[0]!, (row) => row.age, 2),
          { title: words.heads[1]!, value: (row) => share(row.p10), figures: true },
          { title: words.heads[2]!, value: (row) => share(row.p50), figures: true },
          { title: words.heads[3]!, value: (row) => share(row.p90), figures: true },
          { title: words.heads[4]!, value: (row) => row.packs, figures: true },
        ],
      }),
  });
}
