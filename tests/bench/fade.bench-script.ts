// How long the fade of many packs takes beside the bare read of their sheets, and how it grows: npm run bench -- fade
import { Readable } from "node:stream";
import Papa from "papaparse";
import { capacityBands } from "../../src/fade/capacity-path.ts";
import { fadeItems } from "../../src/fade/fade-items.ts";
import { chancesBelow } from "../../src/fade/pack-outlook.ts";
import { wearAhead } from "../../src/fade/wear-ahead.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { averageChances, datesOfChance } from "../../src/life/chance-dates.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { fadingFleet } from "./fading-fleet.ts";
import { lineOf, median, msOf } from "./report.ts";

const AS_OF = 20_758;
const PACKS = [2_500, 25_000, 250_000];
const THRESHOLD = 0.8;
const MONTHS_AHEAD = Array.from({ length: 61 }, (_, m) => Math.round(m * 30.44));
const TURNS = 3;
/** Times the bare read that fade may take at 25,000 packs, and how steeply it may grow. */
const RATIO_BAR = 5;
const GROWTH_BAR = 1.1;

/** The bare read: streamed, with header and step, every row dropped. */
function bareRead(text: string): Promise<void> {
  const piece = 1 << 16;
  const pieces = Array.from({ length: Math.ceil(text.length / piece) }, (_, at) =>
    Buffer.from(text.slice(at * piece, (at + 1) * piece)),
  );
  return new Promise((resolve, reject) => {
    Papa.parse(Readable.from(pieces), { header: true, step: () => {}, complete: () => resolve(), error: reject });
  });
}

/** Fits every item, then gives each pack its chances, dates and bands over 60 months. */
function fadeOf(sheets: ReturnType<typeof fadingFleet>): number {
  const files = sheets.map(({ name, text }) => ({ name, bytes: new TextEncoder().encode(text) }));
  const { fleet } = readSheets(files, { asOf: AS_OF, dateOrder: null });
  const from = performance.now();
  let forecast = 0;
  for (const { packs, fit } of fadeItems(fleet, defaultPolicy(AS_OF), () => true)) {
    for (const { evidence, clock } of packs) {
      const ahead = wearAhead(clock, AS_OF);
      const chances = chancesBelow(evidence, ahead, fit, THRESHOLD, fit.stretch.own);
      const dates = datesOfChance(averageChances({ chances, common: fit.stretch.common }), AS_OF, AS_OF + 1826);
      const bands = capacityBands(evidence, ahead, fit, MONTHS_AHEAD);
      if (dates.kind !== "no-forecast" && bands.length > 0) forecast++;
    }
  }
  const ms = performance.now() - from;
  if (forecast !== fleet.packs.length) throw new Error(`${forecast} of ${fleet.packs.length} packs forecast`);
  return ms;
}

async function run(): Promise<void> {
  const took: number[] = [];
  for (const packs of PACKS) {
    const memoryBefore = process.memoryUsage().rss;
    const turns = packs > 25_000 ? 1 : TURNS;
    const ours: number[] = [];
    const theirs: number[] = [];
    for (let turn = 0; turn < turns; turn++) {
      // other packs every turn: fits of packs met before are kept
      const sheets = fadingFleet(packs, AS_OF, turn + 1);
      theirs.push(await msOf(async () => Promise.all(sheets.map(({ text }) => bareRead(text)))));
      ours.push(fadeOf(sheets));
    }
    const [our, their] = [median(ours), median(theirs)];
    took.push(our);
    const kb = (process.memoryUsage().rss - memoryBefore) / 1024 / packs;
    console.log(
      `${packs} packs: ${our.toFixed(0)} ms against ${their.toFixed(0)} ms bare, ${(our / their).toFixed(1)} times; ` +
        `${((1000 * our) / packs).toFixed(0)} microseconds and ${kb.toFixed(1)} KB a pack, sheets included`,
    );
    if (packs !== 25_000) continue;
    const measure = { what: "fade of 25,000 packs", figure: our / their, unit: "bare reads", bar: RATIO_BAR };
    console.log(lineOf(measure));
    if (measure.figure > measure.bar) process.exitCode = 1;
  }
  const growth = Math.log(took.at(-1)! / took[0]!) / Math.log(PACKS.at(-1)! / PACKS[0]!);
  console.log(lineOf({ what: "growth from 2,500 to 250,000", figure: growth, unit: "exponent", bar: GROWTH_BAR }));
  if (growth > GROWTH_BAR) process.exitCode = 1;
}

void run();
