import type { Plan } from "../../src/index.ts";
import { monthColumn } from "../columns.ts";
import { monthWords, percentWords, sentenceWords } from "../format.ts";
import { dayNumber, monthAfter, monthEnd } from "../months.ts";
import { packPath } from "../pack-path.ts";
import { readingsOf } from "../pack-readings.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import { thresholdPercent } from "../threshold.ts";
import { figure } from "./figure.ts";
import { packFadeChart } from "./pack-fade-chart.ts";

type Pack = Plan["packs"][number];

const MOST_SIBLINGS = 60;

/** One pack's forecast: its readings as dots, the likely path, the band around it, the threshold and its like in grey. */
export function packFade(pack: Pack, session: PlannedSession, choices: HTMLElement): HTMLElement {
  const words = say.batteries.fade;
  const { plan, reading } = session;
  const asOf = dayNumber(plan.asOf);
  const dots = readingsOf(pack.serial, session.readings);
  const path = packPath(pack, asOf);
  const siblings = plan.packs
    .filter((other) => other !== pack && other.item === pack.item && other.path.p50.length > 0)
    .slice(0, MOST_SIBLINGS);
  const months = pack.path.p50.map((_, index) => ({ month: monthAfter(pack.path.from, index), index }));
  const share = (key: "p10" | "p50" | "p90", index: number) => percentWords(pack.path[key][index] ?? 0);
  // days alone: the reason why a pack is held may name what looks like a month
  const says = pack.says.replace(/\bon \d{4}-\d\d-\d\d\b/g, sentenceWords);
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
    caption: path.length === 0 ? `${says} ${words.noPath}` : says,
    points: months.map(({ month, index }) => ({
      at: monthEnd(month),
      says: words.at(monthWords(month), share("p50", index), share("p10", index), share("p90", index)),
    })),
    firstPoint: Math.max(0, Math.min(11, months.length - 1)),
    draw: (colours) =>
      packFadeChart(colours, {
        asOf,
        threshold: thresholdPercent(pack.item, plan, reading),
        dots,
        path,
        siblings: siblings.map((sibling) => packPath(sibling, asOf)),
      }),
    table: () =>
      table<(typeof months)[number]>({
        caption: words.heading,
        rows: months,
        first: 60,
        sortable: false,
        columns: [
          monthColumn(words.heads[0]!, ({ month }) => month),
          ...(["p10", "p50", "p90"] as const).map((key, at) => ({
            title: words.heads[at + 1]!,
            value: ({ index }: { index: number }) => share(key, index),
            figures: true,
          })),
        ],
      }),
  });
}
