import type { GridRow } from "../grid.ts";
import { textsAt } from "../values/cell-text.ts";
import { type HeaderMeaning, parseHeader } from "../words/parse-header.ts";
import { rowThing } from "../words/row-thing.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";

/** Rows that are looked at, and the share of their cells that must say the same. */
const LOOKED_AT = 40;
const MOSTLY = 0.5;
/** Words before a date: "installed" in "installed 06/2022". */
const WORDS_BEFORE_DATE = /^(\p{L}[\p{L}. ]{2,20}?)[\s:.]+'?\d/u;
/** Times of day: from 6:00, which few batteries last, or with a.m. or p.m. */
const OF_DAY = /^(0?[6-9]|1\d|2[0-3]):|[ap]m$/i;
const SAID_OF_DATES = /^(install|expiry|made)$/;

/**
 * What a header that names a thing alone means, where its cells tell: "Battery" above "installed 06/2022" heads days of
 * fitting, and "Equipment", or "Matériel", above pads and paper heads items, not devices. "Test time" above times of day
 * is no runtime.
 */
export function toldByCells(meaning: HeaderMeaning, rows: readonly GridRow[], column: number): HeaderMeaning {
  const texts = () => textsAt(rows.slice(0, LOOKED_AT), column);
  if (meaning.words === "test time" && texts().every((text) => OF_DAY.test(text))) return { ...meaning, says: "aside" };
  if (meaning.says !== "") return meaning;
  if (meaning.things.split(" ").some((thing) => DATED_THINGS.has(thing))) {
    const says = saidOfDates(texts());
    return says === null ? meaning : { ...meaning, says };
  }
  if (meaning.things !== "device" || meaning.index !== null) return meaning;
  return namesSupplies(texts()) ? { ...meaning, things: "item" } : meaning;
}

function saidOfDates(texts: readonly string[]): string | null {
  const said = texts.flatMap((text) => {
    const words = WORDS_BEFORE_DATE.exec(text)?.[1];
    return words === undefined ? [] : parseHeader(words).says;
  });
  const [says = ""] = said;
  const alike = said.filter((each) => each === says).length;
  return SAID_OF_DATES.test(says) && alike > texts.length * MOSTLY ? says : null;
}

/** True where most texts name supplies, and none a device or a battery. */
function namesSupplies(texts: readonly string[]): boolean {
  const things = texts.map(rowThing);
  if (things.some((thing) => thing === "device" || thing === "battery")) return false;
  return things.filter((thing) => thing === "supply").length > texts.length * MOSTLY;
}
