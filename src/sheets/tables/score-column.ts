import type { ColumnSpec, SheetKind, SheetSpec } from "../../fleet/columns.ts";
import { remembered } from "../../fleet/remembered.ts";
import type { CellPart } from "../values/lot-and-date.ts";
import { standingOf } from "../values/status-words.ts";
import { headerWords } from "../words/header-words.ts";
import { HEADER_POINTS, POINTS, type Points } from "../words/meanings.ts";
import { type HeaderMeaning, parseHeader, tellsStatus } from "../words/parse-header.ts";
import { saysUse } from "../words/says-use.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import type { Profile } from "./profile.ts";

/** A header below this share of known letters names nothing. */
const MIN_COVERAGE = 0.55;

/** A header that names a thing and nothing of it must be understood to this share. */
const SURE_COVERAGE = 0.84;

/** The share of cells that are label scans from which a column is one of labels whatever it is called. */
const LABEL_SHARE = 0.6;
const LABEL_POINTS = 5;

/** Points taken where most of a column's cells cannot be of the type that its header suggests. */
const WRONG_CONTENTS = 3;

/** Points taken where a header has one word more than the column's own. */
const LESS_ONE_WORD = 1.5;

/** Points taken from a column that only counts the rows. */
const COUNTED_ROWS = 1;
/** Things whose dates, by whatever word, are their expiry; a battery has others. */
const SUPPLIES = /^(pads|gel|sensor)$/;
const MOSTLY_DATES = 0.6;
/** The share of dates below pads or gel from which words among them ("expired", "missing") stand for dates too. */
export const SOME_DATES = 0.3;
/** The share of dates from which a column holds no numbers, whatever its header. */
const ALL_DATES = 0.8;
const NUMERIC: ReadonlySet<string> = new Set(["number", "whole", "percent"]);
const CHECKED = /\bcheck(ed)?\b/;
const LESS_THAN_TESTED = 1.2;
/** The share of different texts from which they name things one by one. */
export const MOSTLY_DIFFERENT = 0.7;
const MOSTLY_YES_NO = 0.6;
/** The share of words for passed and failed from which a status is a test's result. */
export const MOSTLY_RESULTS = 0.8;
const RESULT_POINTS = 5;

/** The least points from which a column is read. */
export const MIN_POINTS = 2.5;

/** What a column's header says together with its group's, and what its cells look like. */
export interface ColumnView {
  column: number;
  /** The header as written. */
  name: string;
  meaning: HeaderMeaning;
  /** Things of the header, or of its group where it names none, sorted and joined by blanks. */
  things: string;
  /** The battery, pads or the like that the columns just before it are about; empty where none. */
  after: string;
  /** adult, child and the like, of the header or its group; empty where none. */
  variant: string;
  /** The number of a repeated group, of the header or its group. */
  index: number | null;
  /** What the group's header names, as written; empty where none. */
  groupSubject: string;
  /** Header and group read as one text; null where there is no group. */
  joined: HeaderMeaning | null;
  profile: Profile;
  /** The part of its cells that is looked at; null for all of them. */
  part: CellPart | null;
}

/** The pads, gel, battery or the like that a column is about; empty where it names none, or a test of it. */
export function datedThing({ things }: Pick<ColumnView, "things">): string {
  const named = things.split(" ");
  return named.includes("test") ? "" : (named.find((thing) => DATED_THINGS.has(thing)) ?? "");
}

/** True where a column is about a test of a battery: "Battery tested", or what a battery has left beside a day of testing. */
export function isBatteryTested(views: readonly ColumnView[]): boolean {
  return (
    views.some(({ things }) => things === "battery test") ||
    (views.some(isMeasureOfBattery) &&
      views.some(({ things, profile }) => things === "test" && profile.dates > SOME_DATES))
  );
}

const PERCENT = /%|\b(pct|per ?cent|prozent)\b/gi;

/** True for a battery's capacity or runtime; its percent alone may be how far it is charged. */
function isMeasureOfBattery({ things, meaning: { says }, name }: ColumnView): boolean {
  return (
    things === "battery" && /^(capacity|minutes)$/.test(says) && parseHeader(name.replace(PERCENT, "")).says === says
  );
}

/** True for a column that is about pads, gel, paper or a sensor, whatever else it names. */
export function namesSupply({ things }: Pick<ColumnView, "things">): boolean {
  return things.split(" ").some((thing) => thing !== "battery" && DATED_THINGS.has(thing));
}

/** Points of a column as one field of a sheet: by its words, less where its cells speak against them; 0 for none. */
export function pointsFor(view: ColumnView, sheet: SheetSpec, spec: ColumnSpec): number {
  const { meaning, things, joined, profile } = view;
  const odd = oddName(view, sheet, spec);
  if (meaning.words === headerWords(spec.name) && things === meaning.things)
    return odd === 0 ? POINTS.canonical : POINTS.odd;
  if (spec.name === "label" && sheet.kind === "dated_stock" && profile.filled > 0 && profile.labels >= LABEL_SHARE)
    return LABEL_POINTS;
  const table = HEADER_POINTS[sheet.kind][spec.name] as Points;
  if (spec.name === "result" && tellsStatus(meaning) && profile.results > MOSTLY_RESULTS) return RESULT_POINTS;
  // A thing alone names a column only where nothing else stands beside it that is not understood.
  if (meaning.says === "" && meaning.coverage < SURE_COVERAGE && !joined)
    return spec.name === "expiry" && SUPPLIES.test(things) && profile.dates > MOSTLY_DATES ? MIN_POINTS : 0;
  const own =
    meaning.coverage < MIN_COVERAGE ? 0 : wordPoints(table, things, meaning.says, sheet, spec) * meaning.coverage;
  const together =
    joined && joined.coverage >= MIN_COVERAGE
      ? wordPoints(table, joined.things, joined.says, sheet, spec) * joined.coverage
      : 0;
  const points = Math.max(own, together);
  if (points === 0) return 0;
  if (tellsStatus(meaning)) return points;
  if (NUMERIC.has(spec.type) && profile.filled > 1 && profile.dates > ALL_DATES) return 0;
  return points - (contentsFit(spec, profile) ? 0 : WRONG_CONTENTS) - odd;
}

/** What a header's words are worth for a column: as they stand, or less one word that adds nothing to them. */
function wordPoints(table: Points, things: string, says: string, sheet: SheetSpec, spec: ColumnSpec): number {
  const { words, key } = conceptsIn(`${things} ${says}`.trim());
  const whole = table.get(key);
  if (whole !== undefined || words.length < 2) return whole ?? 0;
  let best = 0;
  for (const word of words) {
    if (!addsNothing(word, sheet, spec)) continue;
    const rest = words.filter((each) => each !== word);
    best = Math.max(best, (table.get(rest.join(" ")) ?? 0) - LESS_ONE_WORD);
  }
  return best;
}

/** Things and attributes, sorted, and the key of the points table that they make. Each header is held against every column. */
const conceptsIn = remembered((named: string): { words: readonly string[]; key: string } => {
  const words = named.split(" ").sort();
  return { words, key: words.join(" ") };
});

/** Things that go without saying in a sheet of theirs. */
const OWN_THINGS: Partial<Record<SheetKind, string[]>> = {
  devices: ["device"],
  packs: ["battery"],
  runtime_tests: ["battery", "test"],
  dated_stock: ["item"],
  catalogue: ["item", "supplier"],
  use_log: ["item", "uses"],
  on_order: ["item", "order"],
  routine: ["task", "uses"],
  suppliers: ["supplier", "order"],
};

function addsNothing(word: string, { kind }: SheetSpec, { type, unit }: ColumnSpec): boolean {
  if (OWN_THINGS[kind]?.includes(word)) return true;
  if (type === "text") return word === "id" || word === "name";
  return type === "date" ? word === "date" : word === "quantity" && unit !== null;
}

/** Points taken from a column of names whose cells speak against it. */
function oddName(view: ColumnView, { kind }: SheetSpec, { name, type }: ColumnSpec): number {
  const { meaning, things, profile } = view;
  const { filled, distinct, counts, yesNo, results, numbers, unit } = profile;
  const few = filled > 1 && distinct < MOSTLY_DIFFERENT;
  const bare = things !== "" && meaning.says === "";
  // "Retired?" tells it though it dates nothing
  const asksGone = name === "retired" && standingOf(view.name) === "gone";
  if (type === "date" && !asksGone && (yesNo > MOSTLY_YES_NO || profile.fewEach)) return POINTS.byWords;
  // "91 %" and "180 min" name nothing, nor do how many spares there are, or how much is left in a battery
  if (name === "serial" && (unit !== "" || (view.variant === "spare" && profile.fewEach) || (bare && profile.levels)))
    return POINTS.byWords;
  if (type === "text" && (name === "serial" ? results : yesNo) > MOSTLY_YES_NO && name !== "held")
    return WRONG_CONTENTS;
  // "Reserved" heads how many are, and "Einsatz" the day of the first: neither says what the column would
  if (name === "held" ? profile.severalEach : /^(duty|type|site|label)$/.test(name) && profile.dates > ALL_DATES)
    return POINTS.byWords;
  // What names each row of a list differs from row to row; what sorts it comes again.
  if ((name === "device" && kind === "devices") || (name === "serial" && kind === "packs"))
    return few ? WRONG_CONTENTS : counts && things === "" ? COUNTED_ROWS : 0;
  if (name === "type" && kind === "devices" && bare && things === "device")
    return few || profile.devices > 0.5 ? 0 : WRONG_CONTENTS;
  if (name === "item" && kind === "dated_stock" && bare && things !== "item")
    return numbers > 0.5 || (SUPPLIES.test(things) && profile.dates > SOME_DATES) ? WRONG_CONTENTS : 0;
  // what was used of a lot, or ordered, is not what is left of it
  if (
    name === "quantity" &&
    kind === "dated_stock" &&
    (saysUse(view.name) || /order|bestel|command|pedid/i.test(view.name))
  )
    return POINTS.byWords;
  // "Number", which is "Nombre" in French, heads how many there are only where small numbers stand below it, and not those of lines.
  if (name === "quantity" && kind === "dated_stock" && /^(id|name)$/.test(meaning.says))
    return profile.fewEach && profile.severalEach && !counts ? 0 : POINTS.byWords;
  // what was used goes before what else is described
  if (name === "item" && kind === "use_log" && saysUse(view.name)) return -1;
  // What was checked need not have been measured: a test goes before.
  if (name === "date" && kind === "runtime_tests" && CHECKED.test(meaning.words)) return LESS_THAN_TESTED;
  // "Capacity test" heads the dates of tests only where dates stand below it.
  if (name === "date" && /capacity|minutes/.test(meaning.says) && !/date/.test(meaning.says))
    return filled > 0 && profile.dates < 0.5 ? WRONG_CONTENTS : 0;
  // A thing's name alone heads its expiry only where dates stand below it.
  if (name === "expiry" && bare) return profile.dates > (SUPPLIES.test(things) ? SOME_DATES : 0.5) ? 0 : WRONG_CONTENTS;
  return 0;
}

function contentsFit({ type, unit }: ColumnSpec, { filled, dates, numbers }: Profile): boolean {
  if (type === "text") return dates < 0.6;
  if (filled < 2) return true;
  if (type === "date") return dates + numbers > 0.4 && (dates > 0.2 || numbers > 0.6);
  if (type === "choice") return dates < 0.5 && numbers < 0.5;
  if (type === "list" || type === "breaks" || type === "yes-no") return dates < 0.5;
  return numbers > 0.3 || unit === "per year";
}
