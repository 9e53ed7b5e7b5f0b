// Orders of simulated fleets over two years, beside a calendar rule and one who knows the future: npm run bench -- worlds
// FLEETS=60 npm run bench -- worlds takes fewer
import { PlayedFleets } from "../world/played-fleets.ts";
import { lineOf } from "./report.ts";

/** Fleets, each of which buys one item of each kind. */
const fleets = Number(process.env.FLEETS ?? "200");
const MOST_ABOVE_ORACLE = 1.15;
const MOST_UNSERVED = 0.01;

const played = new PlayedFleets(fleets);
const [replanned, calendar, oracle] = (["replanned", "calendar", "oracle"] as const).map((buyer) =>
  played.ofFleets(buyer),
);
const measures = [
  { what: "needs not served at once", figure: 100 * (1 - replanned!.fill), unit: "%", bar: 100 * MOST_UNSERVED },
  { what: "cost beside the oracle's", figure: replanned!.cost / oracle!.cost, unit: "times", bar: MOST_ABOVE_ORACLE },
  { what: "cost beside the calendar rule's", figure: replanned!.cost / calendar!.cost, unit: "times", bar: 1 },
  {
    what: "unserved beside the calendar rule's",
    figure: (1 - replanned!.fill) / (1 - calendar!.fill),
    unit: "times",
    bar: 1,
  },
];
console.log(`${fleets} fleets\n${played.table()}\n${measures.map(lineOf).join("\n")}`);
if (measures.some(({ figure, bar }) => figure > bar)) process.exitCode = 1;
