import type { GridRow } from "../grid.ts";
import { isUnitWord } from "../values/units.ts";
import { parseHeader } from "../words/parse-header.ts";
import { VOCABULARY } from "../words/vocabulary.ts";
import { nameIn } from "./header-rows.ts";
import { namesPlace, openPlace, placedAt } from "./named-places.ts";
import type { Output } from "./table.ts";

/** Words by which a title names a list, not a place: "Station overview". */
const OF_A_LIST =
  /^(list\w*|lijst\w*|overview|ubersicht|report|sheet|log|stock|inventor\w*|bestand\w*|register|check\w*|kontroll\w*|expir\w*|status|summary|plan|schedule|export|all|alle|tous|todos|each|my|our|and|und|et|y)$/i;
/** The longest name of a place, in words. */
const MOST_WORDS = 5;

/** The place that a line above a table names ("Ambulance 7", "Station North - defib stock", "Station: North"); null where none. */
export function placeAbove({ cells }: GridRow): string | null {
  const texts = cells.flatMap((cell) => nameIn(cell) ?? []);
  return labelledPlace(texts) ?? (texts.length === 1 ? placeIn(texts[0] as string) : null);
}

/** The place behind a word for one: "Vehicle:" beside "M2", or "Vehicle: M2". */
function labelledPlace(texts: readonly string[]): string | null {
  const parts = texts.length === 1 ? (texts[0] as string).split(/:\s+/) : texts;
  if (parts.length % 2 === 0)
    for (let at = 0; at < parts.length; at += 2) {
      const labelled = isLabel(parts[at] as string) ? placeBehind(parts[at] as string, parts[at + 1] as string) : null;
      if (labelled !== null) return labelled;
    }
  return null;
}

/** True for a bare word for a place, such as "Station" or "Vehicle:". */
function isLabel(text: string): boolean {
  const words = text.replace(/[\s:.]+$/, "").toLowerCase();
  return !/\d/.test(words) && /^(site|place|unit)$/.test(VOCABULARY.get(words) ?? "");
}

function placeBehind(label: string, text: string): string | null {
  if (!/[\p{L}\d]/u.test(text) || isLabel(text) || isUnitWord(text.trim().toLowerCase())) return null;
  return /\p{L}/u.test(text) ? text.trim() : `${label.replace(/[\s:.]+$/, "")} ${text.trim()}`;
}

/** The place that a line above a group of rows names; null where it names something else. */
export function placeOfSection(text: string): string | null {
  return labelledPlace([text]) ?? (namesPlace(text) ? text : placeIn(text));
}

/** The words of a title that name a place by its sort and its own name or number. */
function placeIn(title: string): string | null {
  for (const part of title.split(/\s+[-–—|/]\s+|[,;:()]\s*/)) {
    const words = part.split(/\s+/).filter((word) => word !== "");
    const spans = words.flatMap((_, cut) => [words.slice(0, words.length - cut), words.slice(cut)]);
    const named = spans.find((span) => span.length > 1 && span.length <= MOST_WORDS && isPlace(span));
    if (named) return named.join(" ");
  }
  return null;
}

function isPlace(words: readonly string[]): boolean {
  const own = words.filter(
    (word) => /^(\d{1,3}|[A-Z])$/.test(word) || (/^\p{Lu}/u.test(word) && !VOCABULARY.has(word.toLowerCase())),
  );
  const text = words.join(" ");
  return (
    own.length > 0 &&
    VOCABULARY.get(words[0] as string) !== "filler" &&
    !words.some((word) => OF_A_LIST.test(word)) &&
    parseHeader(text).things === "" &&
    namesPlace(text)
  );
}

/** Outputs with the place that stands above the table, where no column says it, nor a line above names the device. */
export function withTitledPlace(
  outputs: readonly Output[],
  place: string | null,
  device: string | undefined,
): Output[] {
  if (place === null) return [...outputs];
  return outputs.map((output) => {
    const where = openPlace(output);
    const isTold = where === null || (device !== undefined && output.implied[where] === device);
    return isTold ? output : placedAt(output, where, place);
  });
}
