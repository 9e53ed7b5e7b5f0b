import { cellAt, type GridRow } from "../grid.ts";
import { cellText } from "../values/cell-text.ts";
import { headerWords } from "./header-words.ts";
import { parseHeader } from "./parse-header.ts";
import { DATED_THINGS } from "./vocabulary.ts";

/** What a line of a list of all sorts is about: a device, a battery, or supplies that expire. */
export const ROW_THINGS = ["device", "battery", "supply"] as const;
export type RowThing = (typeof ROW_THINGS)[number];

/** What belongs to a device or battery and is neither. */
const BESIDES =
  /(?<!re)charg|caric|lade(ger|stat|r\b)|ka?bel|cable|cord\b|adapt|cabinet|schrank|kast\b|armoire|armario|wall|wand|mount|halter|holder|bracket|houder|cover|tasche|\bbag\b|train|ubung|simul|dummy|sign\b|schild|print/;
/** A device of these words is a set of things around one. */
const SET_AROUND = /\bkit\b|\bcase\b|koffer/;
/** Words by which a text speaks of two things at once. */
const TWO_THINGS = /\b(with|w|mit|avec|con|met|incl|inkl|including|and|und|et|en|och|og|plus)\b/;
/** The longest text that says what a line is about; longer ones are remarks. */
const LONGEST = 60;

const known = new Map<string, RowThing | null>();

/** What a cell's words say that its line is about; null where they name nothing known, or several things. */
export function rowThing(text: string): RowThing | null {
  let thing = known.get(text);
  if (thing === undefined) {
    thing = text.length > LONGEST || !/\p{L}{2}/u.test(text) ? null : thingNamed(text);
    if (known.size > 10_000) known.clear();
    known.set(text, thing);
  }
  return thing;
}

function thingNamed(text: string): RowThing | null {
  const words = headerWords(text);
  if (BESIDES.test(words)) return null;
  const { things, says } = parseHeader(text);
  const all = things.split(" ");
  const supplies = all.filter((thing) => DATED_THINGS.has(thing));
  if (supplies.length > 1 || all.includes("test") || /place|site/.test(says)) return null;
  if (supplies.length === 1 && all.includes("device") && TWO_THINGS.test(words)) return null;
  if (supplies.length === 1) return supplies[0] === "battery" ? "battery" : "supply";
  return all.includes("device") && !SET_AROUND.test(words) ? "device" : null;
}

/** What a line is about, by the first of some columns (0-based) whose words say it; null where none does. */
export function thingOfRow(columns: readonly number[], row: GridRow): RowThing | null {
  for (const column of columns) {
    const cell = cellAt(row, column);
    const thing = typeof cell === "string" ? rowThing(cellText(cell)) : null;
    if (thing !== null) return thing;
  }
  return null;
}
