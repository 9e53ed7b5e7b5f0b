import { foldAccents } from "../words/fold.ts";
import { parseHeader } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { type ColumnView, datedThing, namesSupply } from "./score-column.ts";
import type { Output, Unclear } from "./table.ts";

/** Words that say of a column that it counts things, and the ends of words for several of a device. */
const NUMBER_OF =
  /(\b(no|nr|num|number|nbr?|numero|count|liczba)\b\.?|#|n[.°º]) *(of|de|d|des|di|der|von)\b|^# ?[a-z ]+s$/;
const SEVERAL = /(s|gerate|geraete|apparaten|toestellen|monitore|monitory|monitorer|toren|dispositivi|apparecchi)$/;
/** Columns that say where counted things are; and those that show that the lines are of single things. */
const WHERE = /\b(site|place|unit)\b/;
const OF_SINGLE_THINGS = /serial|date|lot|cycles|capacity/;

/**
 * The columns with those that count things told apart from those that name them: "AEDs" over 3 and 2 names no device,
 * and "Adult pads" over 6 beside "Adult pads exp" is a quantity.
 */
export function withCounts(views: ColumnView[]): ColumnView[] {
  if (!views.some(({ profile }) => profile.fewEach)) return views;
  const ofPlaces =
    views.some(({ meaning, profile }) => WHERE.test(meaning.says) && (!profile.fewEach || profile.distinct === 1)) &&
    !views.some(({ meaning }) => OF_SINGLE_THINGS.test(meaning.says));
  const counts = views.filter((view) => countsThings(view, ofPlaces));
  const counted = counts.some(({ things }) => things.includes("device")) ? views.filter(isBareCount) : counts;
  const all = new Set([...counts, ...counted]);
  return views.map((view, at) => {
    if (
      (isBareCount(view) || view.meaning.says === "quantity") &&
      datedThing(view) !== "" &&
      hasExpiry(view, views, at)
    )
      return { ...view, joined: null, meaning: { ...view.meaning, says: "quantity" } };
    return all.has(view) && !namesSupply(view) ? asCount(view) : view;
  });
}

/** What is missing where a list only counts devices and names none; null elsewhere. */
export function unclearCounts(views: readonly ColumnView[], outputs: readonly Output[]): Unclear | null {
  const [name = quantityOfDevices(views)] = outputs.length === 0 ? countedDevices(views) : [];
  if (outputs.some(({ sheet }) => sheet.kind !== "devices")) return null;
  if (name === undefined) return null;
  return {
    message: `The column "${name}" counts devices and names none.`,
    fix: "List each device on a row of its own, with its name or serial number.",
  };
}

/** The name of a column of quantities in a list that names no device but by what it is ("AED"); undefined where there is none. */
function quantityOfDevices(views: readonly ColumnView[]): string | undefined {
  const named = (view: ColumnView) =>
    /^(|type|category|name)$/.test(view.meaning.says) && (view.things.includes("device") || view.profile.devices > 0);
  const sorted = views.some(
    (view) => named(view) && !view.profile.counts && view.profile.numbers === 0 && view.profile.devices >= 0.5,
  );
  const single = views.some(({ meaning }) => OF_SINGLE_THINGS.test(meaning.says));
  if (!sorted || single) return undefined;
  return views.find(
    ({ meaning, things, profile }) => meaning.says === "quantity" && !namesSupply({ things }) && profile.severalEach,
  )?.name;
}

/** The names of columns that count devices. */
export function countedDevices(views: readonly ColumnView[]): string[] {
  return views.flatMap(({ name, things, meaning }) =>
    things === COUNTED && meaning.things.includes("device") ? [name] : [],
  );
}

/** The thing of a column that counts; no field is read from it. */
const COUNTED = "counted";

function asCount(view: ColumnView): ColumnView {
  return { ...view, things: COUNTED, joined: null, meaning: { ...view.meaning, says: "aside" } };
}

/** A column of small whole numbers below the name of a thing alone. */
function isBareCount({ name, meaning, things, profile, index }: ColumnView): boolean {
  return (
    (meaning.says === "" || (meaning.says === "id" && isNumberOf(name))) &&
    index === null &&
    profile.fewEach &&
    (things.includes("device") || DATED_THINGS.has(things))
  );
}

/** True for a column that counts devices or batteries: by its words, by the plural, or since numbers come again. */
function countsThings(view: ColumnView, ofPlaces: boolean): boolean {
  const { name, things, meaning, profile } = view;
  if (!profile.fewEach || view.part !== null || !/device|battery/.test(things)) return false;
  if (meaning.says === "quantity" || (/^(id)?$/.test(meaning.says) && isNumberOf(name))) return true;
  if (!ofPlaces || !isBareCount(view)) return false;
  return profile.worded || SEVERAL.test(wordsOf(name)) || (things.includes("device") && profile.distinct < 1);
}

function isNumberOf(name: string): boolean {
  return NUMBER_OF.test(wordsOf(name));
}

function wordsOf(name: string): string {
  return foldAccents(name).toLowerCase().trim();
}

/** True where a column of the same supplies gives their expiry, or the next column one of nothing else. */
function hasExpiry({ things, variant }: ColumnView, views: readonly ColumnView[], at: number): boolean {
  const next = views[at + 1];
  return (
    views.some((other) => other.meaning.says === "expiry" && other.things === things && other.variant === variant) ||
    (next?.meaning.says === "expiry" && parseHeader(next.name).things === "")
  );
}
