import type { Cell, GridRow } from "../grid.ts";
import { type CellPart, countAndDate, lotAndDate } from "../values/lot-and-date.ts";
import { resultAndPercent } from "../values/result-and-percent.ts";
import { type HeaderMeaning, parseHeader, tellsStatus } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { withBatteryDates } from "./battery-dates.ts";
import { asBought } from "./bought-columns.ts";
import { withCounts } from "./counted-things.ts";
import { asGoods } from "./goods-columns.ts";
import type { HeaderRows } from "./header-rows.ts";
import { withIssued } from "./ledgers.ts";
import { meaningInColumn } from "./meaning-in-column.ts";
import { withTestNumbers } from "./numbered-tests.ts";
import { profileColumn } from "./profile.ts";
import {
  type ColumnView,
  datedThing,
  isBatteryTested,
  MOSTLY_DIFFERENT,
  namesSupply,
  SOME_DATES,
} from "./score-column.ts";
import { withSlots } from "./slots.ts";
import { holdsLists, namedParts, saidOfItem } from "./supply-lists.ts";
import { withNewUnits } from "./swapped-units.ts";

/** Every named column of a header, with what its words and its cells say. */
export function columnViews({ header, groups }: HeaderRows, rows: readonly GridRow[]): ColumnView[] {
  const views = header.flatMap((name, column): ColumnView[] => {
    if (name === null) return [];
    const whole = profileColumn(rows, column);
    const meaning = meaningInColumn(name, header[column - 1], whole, rows, column);
    const group = groups[column] ?? null;
    const above = group === null ? null : parseHeader(group);
    const named = meaning.things || above?.things || "";
    // of "Monitor battery A" and "Monitor battery B" the batteries are lettered
    const things = named === "battery device" && meaning.index !== null ? "battery" : named;
    const view: ColumnView = {
      column,
      name,
      meaning,
      things,
      after: "",
      variant: meaning.variant || above?.variant || "",
      index: meaning.index ?? above?.index ?? null,
      groupSubject: group === null ? "" : group.replace(/\s+/g, " ").trim(),
      joined: group === null ? null : parseHeader(`${group} ${name}`),
      profile: whole,
      part: null,
    };
    const others = saidOfItem(meaning, header, column);
    if (!others && holdsLists(meaning, rows, column)) return [{ ...view, part: "listed item" }];
    const parts = (others && namedParts(others, rows, column)) ?? partsHeld(meaning, rows, column);
    if (parts === null) return [view];
    // what lies at a place that heads its column stands below it as in a group
    const lies = things === "" &&
      parts === COUNT_AND_EXPIRY && { groupSubject: view.groupSubject || name, index: null };
    return parts.map(([part, says]) => ({
      ...view,
      ...lies,
      meaning: { ...meaning, says, words: "", coverage: 1 },
      joined: null,
      profile: profileColumn(rows, column, part),
      part,
    }));
  });
  const numbered = withBatteryDates(
    withTestNumbers(withCounts(withIssued(withNewUnits(asGoods(asBought(withSlots(views.map(asBefore)))))))),
  );
  if (!isRegister(numbered) && !listsDevices(numbered)) return withNeighbours(numbered);
  const supplies = views.findIndex(({ things }) => things.split(" ").some((thing) => DATED_THINGS.has(thing)));
  const battery = numbered.findIndex(({ things }) => things === "battery");
  // several devices with numbers of their own in one unit are in a vehicle
  const vehicles =
    views.some(({ things, meaning }) => things === "" && OF_ONE.test(meaning.says)) && views.some(comesAgain);
  const units = !vehicles && !views.some(namesDevices);
  // days before a battery whose device is named behind it are the battery's, unless the line starts with a number
  const device = numbered.findIndex(({ things }) => things.includes("device"));
  if (device > battery && battery !== -1 && !NAMES_ONE.test(numbered[0]!.meaning.says)) return withNeighbours(numbered);
  return withNeighbours(
    numbered.map((view, at) => {
      if (supplies !== -1 && at >= supplies)
        return isOfWholeLine(view, numbered) ? { ...view, things: "device" } : view;
      // "Vehicle, ID, Monitor": the vehicle's
      const ofPlace = view.meaning.says === "id" && /unit|place/.test(numbered[at - 1]?.meaning.says ?? "");
      if (ofPlace && at < device) return { ...view, things: "device", meaning: { ...view.meaning, says: "aside" } };
      // what describes a line between its device and its battery describes the device
      const described = at > 0 && battery > at && view.things === "item" && view.meaning.says === "";
      if (described) return { ...view, things: "device item" };
      // what numbers the lines of a form's answers names no device beside "AED ID"
      if (view.profile.counts && numbered.some(({ things, meaning: { says } }) => things + says === "deviceid"))
        return view;
      return view.things + view.meaning.says === "name" ? asName(view, numbered) : asOfDevice(view, units);
    }),
  );
}

/** True for the one status of a line, where it stands behind several things that the line tells of. */
function isOfWholeLine(view: ColumnView, views: readonly ColumnView[]): boolean {
  if (!tellsStatus(view.meaning) || view.things + view.groupSubject !== "") return false;
  const before = new Set(views.slice(0, views.indexOf(view)).map(datedThing));
  before.delete("");
  return before.size > 1 && views.filter(({ meaning }) => tellsStatus(meaning)).length === 1;
}

/** True for a column that names devices one by one, and does not sort them ("Equipment" above monitors and AEDs). */
function namesDevices({ things, meaning, profile }: ColumnView): boolean {
  return things.includes("device") && (meaning.says !== "" || profile.distinct > MOSTLY_DIFFERENT);
}

/** The columns, each with the thing that those just before it are about. */
function withNeighbours(views: readonly ColumnView[]): ColumnView[] {
  let after = "";
  return views.map((view) => {
    const before = after;
    const named = view.things.split(" ");
    if (view.things !== "")
      after = named.find((thing) => DATED_THINGS.has(thing)) ?? (named.includes("device") ? "device" : "");
    return { ...view, after: before };
  });
}

/** Rows in which parts are looked for in one cell. */
const PARTED_ROWS = 40;

/** The parts of cells that say how many there are and when they expire: "2 (exp 05/27)". */
const COUNT_AND_EXPIRY: [CellPart, string][] = [
  ["lot", "quantity"],
  ["date", "expiry"],
];

/** What a cell holds beside the day on which it was measured: "92 % (03/2026)". */
const MEASURED = /^\d[\d.,:]* ?(%|min|h)$/;

/** The parts that a column's cells hold, each with what it says, where its header allows it and most cells come apart so. */
function partsHeld(
  { says, things }: HeaderMeaning,
  rows: readonly GridRow[],
  column: number,
): [CellPart, string][] | null {
  const cells = rows
    .slice(0, PARTED_ROWS)
    .flatMap(({ cells }) => cells[column] ?? [])
    .filter((cell) => cell !== "");
  const mostly = (comesApart: (cell: Cell) => unknown) =>
    cells.length > 0 && cells.filter((cell) => comesApart(cell) !== null).length * 2 > cells.length;
  const isCounted = (cell: Cell) => countAndDate(cell) !== null || /^\d{1,3}$/.test(`${cell}`);
  if (/^(expiry|place|site|unit|)$/.test(says) && cells.some(countAndDate) && cells.every(isCounted))
    return COUNT_AND_EXPIRY;
  if (/^expiry (lot|serial)$/.test(says))
    return mostly(lotAndDate)
      ? [
          ["lot", says.slice("expiry ".length)],
          ["date", "expiry"],
        ]
      : null;
  const measured = says || (/test$/.test(things) ? "capacity" : "");
  if (/^(capacity|minutes)$/.test(measured) && mostly((cell) => MEASURED.exec(lotAndDate(cell)?.lot ?? "")))
    return [
      ["lot", measured],
      ["date", "date test"],
    ];
  return /^(result|status|capacity|)$/.test(says) && mostly(resultAndPercent)
    ? [
        ["percent", "capacity"],
        ["result", "result"],
      ]
    : null;
}

/** What a battery gave before it was reconditioned, beside what it gave after, or what remains in it, beside what it holds when full. */
function asBefore(view: ColumnView, at: number, views: readonly ColumnView[]): ColumnView {
  const { says } = view.meaning;
  const isBefore = ({ name, groupSubject }: ColumnView) => BEFORE.test(`${groupSubject} ${name}`);
  const remains = /^remain/.test(view.meaning.words);
  const isAgain = (other: ColumnView, place: number) =>
    other.meaning.says === says && (remains ? /^full/.test(other.meaning.words) : place > at && !isBefore(other));
  return (remains || isBefore(view)) && /capacity|minutes|[aw]h/.test(says) && views.some(isAgain)
    ? { ...view, joined: null, meaning: { ...view.meaning, words: "", says: "aside" } }
    : view;
}

const MOSTLY_DATES = 0.5;
const BEFORE = /\b(before|pre|vor|avant|antes|prima|voor)\b/i;
const NAMES_ONE = /serial|\bid\b/;
/** What a register says of a battery beside its device. */
const OF_A_BATTERY = /expiry|install|arrives|made|serial|\bid\b/;
/** What a column before the first battery or pads says of the device itself, whatever it leaves out. */
const OF_THE_DEVICE = /^(serial|id|install|made|retired|type|category)$/;
/** A device called a unit: where another column names the device, the unit is its vehicle or ward. */
const UNIT = /^((id|name|serial) )?unit$/;
const OF_ONE = /^(serial|id)$/;

function comesAgain({ meaning, profile }: ColumnView): boolean {
  return UNIT.test(meaning.says) && profile.filled > 1 && profile.distinct < MOSTLY_DIFFERENT;
}

/** True where devices or pads stand in the line beside what else names its thing: a register, not one thing's list. */
function isRegister(views: readonly ColumnView[]): boolean {
  const said = views.filter(
    ({ meaning, groupSubject }) => meaning.says !== "" && (meaning.things || groupSubject) !== "",
  );
  const withPads = views.some((view) => {
    const { says } = view.meaning;
    return namesSupply(view) && (says.includes("expiry") || (says === "" && view.profile.dates > SOME_DATES));
  });
  // a device goes by a number of its own that stands before all else, whatever it is called
  const named = views.find(({ things, meaning: { says } }) => things !== "" || NAMES_ONE.test(says) || UNIT.test(says));
  const withDevice =
    views.some(({ things }) => things.includes("device")) ||
    (named?.things === "" && named.column === views[0]?.column && !named.profile.counts);
  const withBattery =
    (views.some(namesDevices) && isBatteryTested(views)) ||
    said.some(({ things, meaning }) => things === "battery" && OF_A_BATTERY.test(meaning.says)) ||
    views.some(
      ({ things, meaning, profile }) =>
        things === "battery" &&
        meaning.says === "" &&
        profile.dates < MOSTLY_DATES &&
        profile.distinct > MOSTLY_DIFFERENT,
    );
  return withPads || (withDevice && withBattery);
}

/** True where a device is the first thing named, by whatever name, and no word speaks of batteries. */
function listsDevices(views: readonly ColumnView[]): boolean {
  const named = views.find(
    ({ things, meaning }) => (things !== "" && things !== "item") || NAMES_ONE.test(meaning.says),
  );
  return (
    named?.things.includes("device") === true &&
    !views.some(({ things, meaning }) => /battery|test/.test(things) || /cycles|capacity|minutes/.test(meaning.says))
  );
}

/** "Name" before the first battery or pads heads devices, or whose they are, unless the line counts units or tells their lot. */
function asName(view: ColumnView, views: readonly ColumnView[]): ColumnView {
  if (views.some(({ things, meaning: { says } }) => things === "" && /lot|quantity/.test(says))) return view;
  const others = views.some(({ things }) => things.includes("device"));
  return { ...view, things: "device", meaning: others ? { ...view.meaning, says: "aside" } : view.meaning };
}

function asOfDevice(view: ColumnView, units: boolean): ColumnView {
  const { things, meaning } = view;
  if (things !== "") return view;
  if (units && UNIT.test(meaning.says))
    return { ...view, things: "device", meaning: { ...meaning, says: meaning.says.replace(/ ?unit$/, "") } };
  return OF_THE_DEVICE.test(meaning.says) ? { ...view, things: "device" } : view;
}
