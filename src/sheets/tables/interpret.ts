import { SHEETS, type SheetSpec } from "../../fleet/columns.ts";
import { withAlikeDates } from "./alike-dates.ts";
import { assign } from "./assign.ts";
import { unclearCounts } from "./counted-things.ts";
import { withOneItem } from "./dated-batteries.ts";
import { datedOutputs } from "./dated-columns.ts";
import { devicesInALine } from "./devices-in-a-line.ts";
import { withDevicesOfPlaces } from "./devices-of-places.ts";
import { groupOutputs } from "./group-outputs.ts";
import type { Heading } from "./heading.ts";
import { impliedByPrice } from "./implied-by-price.ts";
import type { Interpretation, Interpreted } from "./interpretation.ts";
import { listBeside, orderBeside } from "./lists-beside.ts";
import { mainOutput, withForm } from "./main-output.ts";
import { withMoves } from "./moves.ts";
import { numberedLots } from "./numbered-lots.ts";
import { unclearTests } from "./numbered-tests.ts";
import { placedOutputs } from "./placed-columns.ts";
import { placedGroups } from "./placed-groups.ts";
import { replacedPacks } from "./replacements.ts";
import type { ColumnView } from "./score-column.ts";
import { isLone, speaksFor } from "./speaks-for.ts";
import { withLists } from "./supply-lists.ts";
import { isCanonical, type Output } from "./table.ts";
import { checksDevices, isOtherThanTests } from "./tests-of-devices.ts";
import { withUndatedResult } from "./undated-results.ts";
import { usesByColumn } from "./uses-by-column.ts";
import { withVehiclesAtSites } from "./vehicles-at-sites.ts";

/** What a log of replaced batteries or a matrix of places is worth as a header. */
const SPECIAL_POINTS = 20;

/** Two readings within this many points of each other are a tie, unless they yield the same kinds of rows. */
const TIE_MARGIN = 1.5;
/** The same where the lines start with a device, for a reading that finds all the other finds, and devices. */
const TIE_OF_DEVICES = 6;

/** What each kind of row beyond the first costs, so that one sheet is not read as two without need. */
const OUTPUT_COST = 3;

/** What it costs to read a column as of another thing than the one it stands behind. */
const FAR_COST = 4;

/** What settles the outputs of the best reading, in this order, where columns bear on each other. */
const SETTLED_BY: readonly ((outputs: Output[], views: readonly ColumnView[]) => Output[])[] = [
  withAlikeDates,
  withUndatedResult,
  withOneItem,
  withVehiclesAtSites,
  withDevicesOfPlaces,
  withMoves,
];

/** The best reading of a header's columns; the tied readings where two are as good; nothing where none fits. */
export function interpret(views: readonly ColumnView[], heading: Heading | null): Interpreted {
  const lists = views.filter(({ part }, at) => part === "listed item" && views[at + 1]?.column !== views[at]!.column);
  if (lists.length > 0) {
    const others = views.filter((view) => !lists.includes(view));
    return withLists(interpret(others, heading), lists, others, heading);
  }
  const interpreted = interpretAll(views, heading);
  const { best, unclear } = interpreted;
  const counted = unclear ?? unclearCounts(views, best?.outputs ?? []);
  if (best === null || counted !== null) return { best: null, tied: [], unclear: counted ?? unclearTests(views) };
  const outputs = SETTLED_BY.reduce((read, settle) => settle(read, views), best.outputs);
  return { ...interpreted, best: { ...best, outputs } };
}

function interpretAll(views: readonly ColumnView[], heading: Heading | null): Interpreted {
  const uses = usesByColumn(views, heading);
  const open = uses !== null && "message" in uses ? uses : null;
  const special =
    replacedPacks(views) ??
    devicesInALine(views, (some) => interpretPlain(some, heading).best?.outputs ?? []) ??
    placedOutputs(views) ??
    placedGroups(views) ??
    numberedLots(views) ??
    (open === null ? (uses as Output[] | null) : null);
  if (special)
    return withListBeside(
      { best: { outputs: special, points: SPECIAL_POINTS }, tied: [], unclear: null },
      views,
      heading,
    );
  const dated = datedOutputs(views, heading);
  if (dated !== null && "message" in dated) return { best: null, tied: [], unclear: dated };
  if (dated === null) {
    const plain = withListBeside(interpretPlain(views, heading), views, heading);
    return { ...plain, unclear: plain.best === null ? open : null };
  }
  const used = new Set(dated.flatMap(({ own }) => own));
  // Packs beside their tests are read too, where more is said of them than their serials.
  const { best } = interpretPlain(
    views.filter(({ column }) => !used.has(column)),
    heading,
  );
  const beside = best?.outputs.filter(({ sheet, fields }) => sheet.kind === "packs" && fields.length > 1) ?? [];
  return {
    best: { outputs: [...beside, ...dated], points: (best?.points ?? 0) + dated.length },
    tied: [],
    unclear: null,
  };
}

/** The best reading with what its columns hold of another list, which neither speaks for it nor against it. */
function withListBeside<T extends Pick<Interpreted, "best">>(
  interpreted: T,
  views: readonly ColumnView[],
  heading: Heading | null,
): T {
  const { best } = interpreted;
  const { outputs } = best ?? { outputs: [] };
  const beside = [listBeside(outputs, views, heading?.form ?? {}), orderBeside(outputs, views)].filter(
    (other) => other !== null,
  );
  if (best === null) return interpreted;
  for (const other of beside) if (other.beside) Object.assign(other.implied, impliedByPrice(other.fields, views));
  return { ...interpreted, best: { ...best, outputs: [...best.outputs, ...beside] } };
}

function interpretPlain(views: readonly ColumnView[], heading: Heading | null): Omit<Interpreted, "unclear"> {
  const readings: Interpretation[] = [];
  for (const sheet of [null, ...SHEETS]) {
    for (const near of [true, false]) {
      const reading = readAs(sheet, views, heading, near);
      if (reading) readings.push(reading);
    }
  }
  readings.sort((a, b) => b.points - a.points);
  const [first] = readings;
  if (!first) return { best: null, tied: [] };
  const ofDevices = startsWithDevices(views);
  const margin = (other: Interpretation) => (ofDevices && findsAll(other, first) ? TIE_OF_DEVICES : TIE_MARGIN);
  const close = readings.filter(
    (other) => first.points - other.points < margin(other) && kindsOf(other) !== kindsOf(first),
  );
  const best =
    close.find((other) => isPartOf(first, other)) ?? (ofDevices ? fullest([first, ...close]) : undefined) ?? first;
  const rivals = [first, ...close].filter(
    (other) => kindsOf(other) !== kindsOf(best) && !isPartOf(other, best) && !(ofDevices && findsAll(best, other)),
  );
  return { best, tied: rivals.length > 0 && !isCanonical(best.outputs) ? [best, ...rivals] : [] };
}

/** The reading that finds all kinds of rows that the others find: a register's line tells of its device too. */
function fullest(readings: readonly Interpretation[]): Interpretation | undefined {
  return readings.find((one) => readings.every((other) => findsAll(one, other)));
}

function findsAll({ outputs }: Interpretation, other: Interpretation): boolean {
  const kinds = new Set(outputs.map(({ sheet }) => sheet));
  return other.outputs.every(({ sheet }) => kinds.has(sheet));
}

/** True where a reading finds nothing but what the other finds too, in no more columns: the fuller one is meant. */
function isPartOf({ outputs }: Interpretation, whole: Interpretation): boolean {
  const columns = (read: readonly Output[]) =>
    new Set(read.flatMap(({ fields }) => fields.flatMap(({ columns }) => columns))).size;
  const kinds = new Set(whole.outputs.map(({ sheet }) => sheet));
  return outputs.every(({ sheet }) => kinds.has(sheet)) && columns(outputs) <= columns(whole.outputs);
}

/** The kinds of rows that a reading yields, as one text. */
export function kindsOf({ outputs }: Interpretation): string {
  return [...new Set(outputs.map(({ sheet }) => sheet.kind))].sort().join(" and ");
}

function readAs(
  sheet: SheetSpec | null,
  views: readonly ColumnView[],
  heading: Heading | null,
  near: boolean,
): Interpretation | null {
  const ofDevices = startsWithDevices(views);
  const once = mainViews(views);
  const apart = sheet === null ? [] : once.filter((view) => belongsLeft(view, sheet, ofDevices));
  // where no column stands behind another thing, both ways are one; what stands behind a sensor is no battery that nothing names
  const unnamed = sheet?.kind === "packs" && !views.some(({ things }) => things.includes("battery"));
  if (!near && (apart.length === 0 || unnamed)) return null;
  const main = sheet === null ? [] : assign(sheet, near ? once.filter((view) => !apart.includes(view)) : once);
  const output = sheet === null ? null : mainOutput(sheet, main, views, heading);
  if (sheet !== null && output === null) return null;
  const taken = new Set((output?.fields ?? []).flatMap(({ columns }) => columns));
  const groups = groupOutputs(views, taken, output, ofDevices).map((each) => withForm(each, heading));
  const outputs = [...(output ? [output] : []), ...groups].sort(
    (a, b) => SHEETS.indexOf(a.sheet) - SHEETS.indexOf(b.sheet),
  );
  if (outputs.length === 0 || (output !== null && onlyNamesPacks(output, groups))) return null;
  if (output !== null && (numbersOthers(output, groups, heading) || (groups.length === 0 && isLone(output, views))))
    return null;
  if ((output !== null && isOtherThanTests(output, views)) || checksDevices(outputs, views, heading)) return null;
  const far = near || !apart.some(({ column }) => output?.own.includes(column)) ? 0 : FAR_COST;
  const points = outputs.reduce(
    (sum, each) =>
      sum +
      each.fields.reduce(
        (own, field) =>
          own + (each.own.some((column) => field.columns.includes(column)) ? field.points * field.columns.length : 0),
        0,
      ),
    0,
  );
  return {
    outputs,
    points:
      points -
      OUTPUT_COST * (outputs.filter(({ fields }) => fields.some((field) => field.points > 0)).length - 1) +
      speaksFor(output, views, heading?.title ?? null) -
      far,
  };
}

/** What a test says of its pack too. */
const OF_A_TEST: ReadonlySet<string> = new Set(["serial", "temperatureC", "cycles"]);

/** True where packs would be listed beside their tests with nothing said of them that a test does not say: tests alone do. */
function onlyNamesPacks({ sheet, fields }: Output, groups: readonly Output[]): boolean {
  return (
    sheet.kind === "packs" &&
    fields.every(({ spec }) => OF_A_TEST.has(spec.field)) &&
    groups.filter((group) => group.sheet.kind === "runtime_tests").length === 1
  );
}

/** True where no more is said of what an "ID" or "Ref" numbers than a day, or in which device it is, of what type and where. */
function numbersOthers({ sheet, fields }: Output, groups: readonly Output[], heading: Heading | null): boolean {
  const typed = groups.some((group) => group.fields.some(({ spec }) => spec.field === "type"));
  return (
    sheet.kind === "packs" &&
    !heading?.title.things.includes("battery") &&
    fields[0]!.points <= 3 &&
    fields.every(({ spec, points }) => points <= 3 || (typed && /^(device|site)$/.test(spec.field)))
  );
}

/** Columns that stand once only: "Pad 1 exp" beside "Pad 2 exp" is for the groups. */
function mainViews(views: readonly ColumnView[]): ColumnView[] {
  const seen = new Map<string, Set<string>>();
  const sort = ({ meaning, things }: ColumnView) => `${things}/${meaning.says}`;
  const member = ({ variant, index }: ColumnView) => `${variant}/${index}`;
  for (const view of views) {
    const members = seen.get(sort(view)) ?? new Set();
    seen.set(sort(view), members.add(member(view)));
  }
  // how many there are stands beside how many of them are kept in reserve
  const isCount = (view: ColumnView) => sort(view) === "/quantity" && member(view) === "/null";
  return views.filter((view) => (seen.get(sort(view))?.size ?? 0) <= 1 || isCount(view));
}

/** Concepts that belong to the whole line wherever they stand. */
const OF_THE_LINE = /site|place|duty/;

/** True for a column without a thing of its own that stands behind another thing's: it says something of that thing. */
function belongsLeft({ things, after, meaning }: ColumnView, sheet: SheetSpec, ofDevices: boolean): boolean {
  if (things !== "" || after === "" || OF_THE_LINE.test(meaning.says)) return false;
  if (after === "device") return ofDevices && sheet.kind === "packs";
  return (
    sheet.kind === "devices" ||
    (after === "battery" ? sheet.kind !== "packs" && sheet.kind !== "runtime_tests" : sheet.kind === "packs")
  );
}

/** True where the columns start with a device and name its battery later: a list of devices, not of batteries. */
function startsWithDevices(views: readonly ColumnView[]): boolean {
  return (
    views.find(({ things }) => things !== "")?.things.includes("device") === true &&
    views.some(({ things }) => things === "battery")
  );
}
