import { isoFromDay } from "../calendar/day.ts";
import { countText, tenthsText } from "../fleet/count-text.ts";
import { listed } from "../fleet/listed.ts";
import type { Proof } from "../life/prove/prove.ts";
import type { ProveScore } from "../life/prove/score-item.ts";
import { STANDING_CAUTIONS } from "./cautions.ts";
import { bullets, joinLines, section, type TextSetting, titleLine } from "./text-section.ts";
import { textTable } from "./text-table.ts";
import { wrapText } from "./text-width.ts";

/** The proof for a terminal: lives that came to their end, then hidden readings, then what was learned. */
export function proveText(proof: Proof, setting: TextSetting): string {
  const { width } = setting;
  const cuts = `${proof.cuts.length > 1 ? "each of " : ""}${listed(proof.cuts.map(isoFromDay))}`;
  return joinLines([
    titleLine(`Forecasts proved on this fleet's own past, as of ${isoFromDay(proof.asOf)}`, setting),
    wrapText(`History was hidden after ${cuts}, forecast from what was known then, and compared.`, width),
    ...(hidesNothing(proof) ? ["", wrapText(NOTHING_HIDDEN, width)] : resultSections(proof, setting)),
    ...section("Cautions", bullets([...STANDING_CAUTIONS], setting), setting),
  ]);
}

const NOTHING_HIDDEN =
  "Nothing can be compared: no pack was tested, and none came to its end, after one of these days. Forecasts rest on what is usual for batteries. Give runtime tests (serial, date, percent or minutes) of a year or more, and packs retired as faded; then run this again.";

/** Whether no reading and no end of life came after a cut-off. */
const hidesNothing = ({ scores }: Proof) =>
  scores.every(({ lives, readings, ends }) => lives === 0 && readings === 0 && ends === 0);

function resultSections(proof: Proof, setting: TextSetting): string[] {
  const { width } = setting;
  const ended = proof.scores.some(({ lives }) => lives > 0);
  const learned = proof.ownSpread.some(({ completedLives }) => completedLives > 0);
  return [
    ...section(
      "Ends of life that were hidden: error as a share of the pack's life",
      ended ? [livesTable(proof, width)] : [],
      setting,
    ),
    ...section("Readings that were hidden, and ends counted", [readingsTable(proof, width)], setting),
    ...section("What the completed lives teach", learned ? [learnedTable(proof, width)] : [], setting),
    ...section("Reading this", bullets([INSIDE, ...(ended ? OF_ENDS : [])], setting), setting),
  ];
}

const INSIDE =
  "Inside: ends and readings that fell inside their 80 % interval; near 80 % is right, far less is overconfident, far more too wide.";
const OF_ENDS = [
  "Line: a straight line through the pack's own tests. Age: a rule that reads no test (the median life completed by then, else five years).",
  "Only packs that ended after a cut-off can be scored by date, so early ends weigh more; the count of ends expected against those that came does not lean that way.",
];

const percent = (value: number | null) => (value === null ? "-" : `${(100 * value).toFixed(0)} %`);
const pair = (value: ProveScore["error"]) =>
  value === null ? "-" : `${percent(value.mean)} / ${percent(value.median)}`;

function livesTable({ scores }: Proof, width: number): string {
  return textTable<ProveScore>(
    [
      { head: "item", cell: (score) => score.item, clipTo: 10 },
      { head: "ends", align: "right", cell: (score) => countText(score.lives) },
      { head: "mean / median", align: "right", cell: (score) => pair(score.error) },
      { head: "inside", align: "right", cell: (score) => percent(score.inside) },
      { head: "width", align: "right", cell: (score) => percent(score.width) },
      { head: "line", align: "right", cell: (score) => pair(score.line), dropRank: 2 },
      { head: "age", align: "right", cell: (score) => pair(score.age), dropRank: 1 },
    ],
    scores,
    width,
  );
}

function readingsTable({ scores }: Proof, width: number): string {
  return textTable<ProveScore>(
    [
      { head: "item", cell: (score) => score.item, clipTo: 10 },
      { head: "readings", align: "right", cell: (score) => countText(score.readings) },
      {
        head: "off by",
        align: "right",
        cell: ({ readingError }) => (readingError === null ? "-" : `${(100 * readingError).toFixed(1)} %`),
      },
      { head: "inside", align: "right", cell: (score) => percent(score.readingInside) },
      { head: "ends expected", align: "right", cell: (score) => tenthsText(score.expectedEnds) },
      { head: "came", align: "right", cell: (score) => countText(score.ends) },
    ],
    scores,
    width,
  );
}

function learnedTable({ ownSpread }: Proof, width: number): string {
  return textTable<Proof["ownSpread"][number]>(
    [
      { head: "item", cell: (one) => one.item, clipTo: 10 },
      { head: "lives completed", align: "right", cell: (one) => countText(one.completedLives) },
      { head: "spread of remaining life beyond the curve", align: "right", cell: (one) => percent(one.spread) },
    ],
    ownSpread,
    width,
  );
}
