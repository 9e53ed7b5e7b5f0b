import { isoFromDay } from "../calendar/day.ts";
import { type DoubtedReading, doubtedReadings } from "../fade/doubted-readings.ts";
import type { FadingItem } from "../fade/fade-items.ts";
import type { Finding } from "../fleet/finding.ts";
import { groupBy } from "../fleet/group-by.ts";
import { lifeFinding } from "./life-finding.ts";
import type { SwappedPack } from "./swapped-packs.ts";

/** Findings of one sheet from which they are told as one. */
const TOO_MANY = 12;

const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;

/** Findings for readings that the forecast hardly heeds: one each, or one a sheet where they are many. */
export function readingFindings(items: readonly FadingItem[]): Finding[] {
  const doubted = items.flatMap(doubtedReadings).sort((a, b) => a.source.line - b.source.line);
  const bySheet = groupBy(doubted, ({ source }) => `${source.file}\0${source.sheet ?? ""}`);
  return [...bySheet.values()].flatMap((list) => (list.length < TOO_MANY ? list.map(ofOne) : [ofMany(list)]));
}

function ofOne(reading: DoubtedReading): Finding {
  return finding(reading, [], `${toldOf(reading)}; it lies too far off to count for much in the forecast.`);
}

function finding({ source, capacity }: DoubtedReading, lines: number[], message: string): Finding {
  return lifeFinding("reading-doubted", source, percent(capacity), message, lines);
}

/** Led by the reading that lies farthest off. */
function ofMany(list: readonly DoubtedReading[]): Finding {
  const off = ({ capacity, expected }: DoubtedReading) => Math.abs(capacity - expected);
  const worst = list.reduce((a, b) => (off(b) > off(a) ? b : a));
  const lines = list.filter((reading) => reading !== worst).map(({ source }) => source.line);
  return finding(
    worst,
    lines,
    `${toldOf(worst)}; it and ${lines.length} more tests lie too far off to count for much in the forecast.`,
  );
}

function toldOf({ serial, day, capacity, expected }: DoubtedReading): string {
  return `"${serial}" read ${percent(capacity)} on ${isoFromDay(day)}, where its other tests lead to about ${percent(expected)}`;
}

/** Findings for serials under which a newer pack goes on, on the line of its first test. */
export function swapFindings(swaps: readonly SwappedPack[]): Finding[] {
  return swaps.map((swap) => {
    const { serial, before, after, since } = swap;
    const message = `"${serial}" had ${before.cycles} cycles on ${isoFromDay(before.date)} and ${after.cycles} on ${isoFromDay(after.date)}, and its capacity came back: it is taken for a newer pack, in service since ${isoFromDay(since)}.`;
    return lifeFinding("pack-swapped", after.source, String(after.cycles), message);
  });
}
