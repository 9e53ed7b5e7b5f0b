// Whole fleets, packs and pads, over two years with every stage of the engine, beside the calendar rule (packs replaced
// at four years, reorder at two months' stock) and one who knows the future: npm run bench -- fleets
// FLEETS=20 FIRST=1 npm run bench -- fleets takes fewer; 200 take an hour or more
import { PlayedWholeFleets } from "../world/played-whole-fleets.ts";
import { lineOf } from "./report.ts";

const fleets = Number(process.env.FLEETS ?? "200");
const first = Number(process.env.FIRST ?? "1");
const MOST_ABOVE_ORACLE = 1.15;
const MOST_UNSERVED = 0.01;

const played = new PlayedWholeFleets(fleets, first);
const [replanned, calendar, oracle] = (["replanned", "calendar", "oracle"] as const).map((buyer) => played.of(buyer));
const unserved = ({ fill }: { fill: number }) => 1 - fill;
const measures = [
  { what: "needs not served at once", figure: 100 * unserved(replanned!), unit: "%", bar: 100 * MOST_UNSERVED },
  { what: "cost beside the oracle's", figure: replanned!.cost / oracle!.cost, unit: "times", bar: MOST_ABOVE_ORACLE },
  { what: "cost beside the calendar rule's", figure: replanned!.cost / calendar!.cost, unit: "times", bar: 1 },
  {
    what: "unserved beside the calendar rule's",
    figure: unserved(replanned!) / unserved(calendar!),
    unit: "times",
    bar: 1,
  },
];
console.log(`${fleets} fleets\n${played.table()}\n${measures.map(lineOf).join("\n")}`);
if (measures.some(({ figure, bar }) => figure > bar)) process.exitCode = 1;
