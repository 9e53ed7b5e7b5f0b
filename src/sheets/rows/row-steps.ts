import { type Day, isoFromDay } from "../../calendar/day.ts";
import type { ColumnSpec } from "../../fleet/columns.ts";
import { currencyCode } from "../../fleet/currency.ts";
import type { PackRow, Source } from "../../fleet/rows.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { GridRow } from "../grid.ts";
import { fillFromLabel } from "../labels/fill-from-label.ts";
import { currencyIn } from "../tables/implied-by-price.ts";
import { CAME_OUT } from "../tables/replacements.ts";
import { columnsOf, type Output, type Table } from "../tables/table.ts";
import { cellText, textAt } from "../values/cell-text.ts";
import { kindNamed } from "../values/choice-words.ts";
import { mayMean } from "../values/date-text.ts";
import { Gone, goneSince, standingOf } from "../values/status-words.ts";
import { isBoxWord, packIn } from "../values/units.ts";
import { parseHeader } from "../words/parse-header.ts";
import { saysUse } from "../words/says-use.ts";
import { columnName } from "./column-name.ts";
import { type CountingColumns, countedIn } from "./counting-columns.ts";
import type { FieldReader } from "./field-reader.ts";
import type { Filled } from "./filled.ts";
import { holdInQuarantine } from "./held-in-quarantine.ts";
import { kindFromName, namesNoKind } from "./kind-from-name.ts";
import { settleGone } from "./settle-gone.ts";
import { settleNoDevice } from "./settle-no-device.ts";
import { NothingLeftSettler } from "./settle-nothing-left.ts";
import { type SettledBy, settleOrder } from "./settled-orders.ts";

/** A row's values before it is known to be used, by field. */
export type RowValues = Record<string, unknown> & { source: Source };

/** Settles one thing about a row whose cells are read: null where it stands, else why not or what its label names. */
export type RowStep = (values: RowValues, record: GridRow) => Filled | null;

/** What the steps of one output of a table go by. */
interface About {
  table: Table;
  output: Output;
  readers: readonly FieldReader[];
  counting: CountingColumns;
  settled: SettledBy;
  asOf: Day;
  log: FindingLog;
}

/** Every step, in the order in which they are taken; null where it has no bearing on an output. */
const STEPS: readonly ((about: About) => RowStep | null)[] = [
  whatCameOut,
  whatIsGone,
  whatIsInNone,
  whatLiesInQuarantine,
  whatIsNoBattery,
  whatLeavesNothing,
  whatItIsFor,
  whatHasCome,
  unitsOfBoxes,
  whatItsLabelSays,
  kindByItsName,
  currencyByItsCode,
  whatItMustHold,
  whatItMeasures,
];

/** The steps that settle the rows of an output, in their order. */
export function rowSteps(about: About): RowStep[] {
  return STEPS.flatMap((stepOf) => stepOf(about) ?? []);
}

/** Of supplies, unlike batteries, what was used is gone. */
const USED_UP =
  /^(used|issued|consum(ed|id)|empty|out of stock|consomm|verbraucht|entnommen|utilis[eé]|utilizad|usad|gebruikt|verbruikt)/i;

/** Where a name ends and a remark in it begins: "B2 (scrapped 03/2025)", "B2 REMOVED". */
const REMARK = /[([]|\s\w+ed$/i;

function whatIsGone({ output, table: { header, outputs }, asOf, log }: About): RowStep | null {
  const { sheet, fields } = output;
  if (outputs.every((output) => output.beside || output.sheet.kind === "dated_stock")) {
    const goneOn = header.findIndex((name) => {
      const { says } = parseHeader(name ?? "");
      return says === "retired" || (says === "date" && saysUse(name ?? ""));
    });
    const [status = -1] = columnsOf(output, "held");
    return (values, record) => {
      const [since, standing] = [textAt(record, goneOn), textAt(record, status)];
      if (mayMean(since, (day) => day <= asOf)) return { code: "gone", message: `It is gone since ${since}.` };
      return USED_UP.test(standing)
        ? { code: "gone", message: `"${shortened(standing)}" says that it is gone.` }
        : settleGone(values, sheet, asOf, log);
    };
  }
  if (!sheet.columns.some(({ tellsGone }) => tellsGone)) return null;
  const onlyIfGone = fields.some(({ ifGone }) => ifGone);
  const [key = ""] = sheet.key;
  // "Reason" alone may tell why a pack was put in
  const [why = -1] = columnsOf(output, "retiredBecause").filter((at) => /retired/.test(parseHeader(header[at]!).says));
  return (values, record) => {
    if (onlyIfGone && !(values.held instanceof Gone)) values.retired = null;
    const name = String(values[key]);
    const at = name.search(REMARK);
    const said = name.slice(at + 1).replace(/[)\]]$/, "");
    if (at > 0 && standingOf(said) === "gone") {
      values[key] = name.slice(0, at).trim();
      values.retired ??= goneSince(said, null);
    }
    if (why !== -1 && values.retiredBecause !== null) values.retired ??= new Gone(textAt(record, why), null);
    return settleGone(values, sheet, asOf, log);
  };
}

/** Of a battery that went in on the day on which the one before it came out, the line's last day is that one's. */
function whatCameOut({ output: { sheet }, table: { header } }: About): RowStep | null {
  const old = header.findIndex((name) => CAME_OUT.test(name ?? "") && parseHeader(name!).says.includes("serial"));
  if (sheet.kind !== "packs" || old === -1) return null;
  return (values, record) => {
    const { inService, retired } = values as Partial<PackRow>;
    if (retired && inService && retired <= inService && textAt(record, old) !== "") values.retired = null;
    return null;
  };
}

function whatLiesInQuarantine({ output: { sheet } }: About): RowStep | null {
  return sheet.columns.some(({ field }) => field === "held") ? holdInQuarantine : null;
}

function whatIsInNone({ output: { sheet }, table: { outputs } }: About): RowStep | null {
  // a list of devices alone may call one what it likes
  const tells = /^(packs|devices)$/.test(sheet.kind) && outputs.some((other) => other.sheet.kind === "packs");
  return tells ? (values) => settleNoDevice(values, sheet) : null;
}

/** Gel is in batteries, too. */
const NO_BATTERY = /^(pads|paper|sensor)$/;

function whatIsNoBattery({ output: { sheet }, log }: About): RowStep | null {
  if (sheet.kind !== "packs") return null;
  return ({ item, source }) => {
    if (typeof item !== "string" || !NO_BATTERY.test(kindNamed(item) ?? "")) return null;
    const message = `"${shortened(item)}" stands in a list of batteries and is none.`;
    log.add("no-battery", { ...source, column: null, value: item }, () => ({ message }));
    return { code: "no-battery", message };
  };
}

function whatLeavesNothing({ output: { sheet }, readers, table, log }: About): RowStep | null {
  if (!sheet.columns.some(({ failsBelow }) => failsBelow)) return null;
  const nothingLeft = new NothingLeftSettler(readers, table, log);
  return (values, record) => nothingLeft.settle(values, record);
}

/** Below "Pad type" adult stands for adult pads. */
function whatItIsFor({ output, table: { header } }: About): RowStep | null {
  const [column = -1] = output.sheet.kind === "dated_stock" ? columnsOf(output, "item") : [];
  const { things } = parseHeader(header[column] ?? "");
  if (!/^(pads|sensor)$/.test(things)) return null;
  return (values) => {
    const { variant, says, things: named, coverage } = parseHeader(String(values.item ?? ""));
    if (/^(adult|child)$/.test(variant) && says + named === "" && coverage === 1) values.item += ` ${things}`;
    return null;
  };
}

function unitsOfBoxes({ counting }: About): RowStep | null {
  if (Object.values(counting).every((column) => column === -1)) return null;
  return (values, record) => {
    values.quantity = countedIn(values.quantity, record, counting);
    return null;
  };
}

function whatItsLabelSays({ output: { sheet }, asOf, log }: About): RowStep | null {
  if (!sheet.columns.some(({ field }) => field === "label")) return null;
  return (values) => (typeof values.label === "string" ? fillFromLabel(values, values.label, asOf, log) : null);
}

function kindByItsName({ table, output, log }: About): RowStep | null {
  if (output.sheet.kind !== "catalogue") return null;
  const description = descriptionColumn(table, output);
  const [kind = -1] = columnsOf(output, "kind");
  const [per = -1] = columnsOf(output, "pricePer");
  const [price = -1] = columnsOf(output, "price");
  // "Price per 10", "Price/100", "Price/box of 5"
  const many = /(?:\b(?:of|p[aeo]r|pro|je|de) |[a-z]\/)(\d{1,3})(?![\d./-])/i.exec(table.header[price] ?? "")?.[1];
  return (values, record) => {
    const sortsOnly = namesNoKind(textAt(record, kind));
    if (values.kind === null || sortsOnly) kindFromName(values, textAt(record, description), log);
    const perWhat = textAt(record, per);
    const size = packIn(perWhat)?.size ?? Number(perWhat || many);
    if (size > 1) {
      values.unitsPerBox ??= size;
      values.pricePer ??= "box";
    }
    const amount = textAt(record, price);
    values.currency ??= currencyIn(amount);
    // "12.50/box"
    if (
      amount
        .toLowerCase()
        .split(/[^\p{L}]+/u)
        .some(isBoxWord)
    )
      values.pricePer ??= "box";
    // what a list of other things says of an item stands by the item's name alone
    if (output.beside || sortsOnly) values.kind ??= "other";
    return null;
  };
}

function currencyByItsCode({ output: { sheet } }: About): RowStep | null {
  if (!sheet.columns.some(({ field }) => field === "currency")) return null;
  return (values) => {
    if (typeof values.currency === "string") values.currency = currencyCode(values.currency);
    return null;
  };
}

/** The column that describes the item beside its number; -1 where there is none. */
function descriptionColumn({ header }: Table, { fields }: Output): number {
  const read = new Set(fields.flatMap(({ columns }) => columns));
  return header.findIndex((name, column) => {
    if (name === null || read.has(column)) return false;
    const { things, says } = parseHeader(name);
    return things === "item" && says === "";
  });
}

function whatItMustHold(about: About): RowStep {
  const required = about.output.sheet.columns.filter((spec) => spec.required);
  return (values, record) => {
    for (const spec of required) if (values[spec.field] === null) return missing(spec, about, record);
    return null;
  };
}

function missing(
  spec: ColumnSpec,
  { table, output: { sheet }, readers, log }: About,
  { line, cells }: GridRow,
): Filled {
  const column = readers.find((reader) => reader.spec === spec)?.columns[0] ?? null;
  const blank = column === null || cellText(cells[column] ?? null) === "";
  const named = column === null ? spec.name : `column ${columnName(table, column)}`;
  const place = { file: table.grid.file, sheet: table.grid.sheet, line, value: null };
  log.add(
    "missing-required",
    { ...place, column: column === null ? null : column + 1 },
    () => ({
      ...(spec.field === "expiry" && !blank && { fix: "Nothing, if it does not expire; else write the date." }),
      message: `The row has nothing ${blank ? "" : "that is known "}in ${named}, without which ${sheet.kind.replaceAll("_", " ")} cannot be used.`,
    }),
    sheet.kind,
  );
  return { code: "missing-required", message: `${blank ? "Nothing" : "Nothing that is known"} stands in ${named}.` };
}

function whatHasCome({ output: { sheet }, settled, asOf, log }: About): RowStep | null {
  if (sheet.kind !== "on_order") return null;
  return (values, record) => {
    if (values.item === null || values.quantity === null) return null;
    const come = settleOrder(values, record, settled);
    if (come !== null && typeof come !== "string") return come;
    const { arrives, source } = values;
    const { file, sheet: tab, line } = source;
    const note = (code: "order-part" | "order-overdue", value: string | null, message: string) =>
      log.add(code, { file, sheet: tab, line, column: null, value }, () => ({ message }));
    if (come !== null)
      note("order-part", come, `"${shortened(come)}" does not say how many have come; all count as open.`);
    if (typeof arrives === "number" && arrives < asOf)
      note("order-overdue", null, `The order was to arrive by ${isoFromDay(arrives)}, and counts as still to come.`);
    return null;
  };
}

function whatItMeasures({ output: { sheet }, table: { grid }, log }: About): RowStep | null {
  if (sheet.oneOf.length === 0) return null;
  const message = "The runtime test measures nothing that can be used.";
  return (values, { line }) => {
    for (const field of sheet.oneOf) if (values[field] !== null) return null;
    log.add("no-measurement", { file: grid.file, sheet: grid.sheet, line, column: null, value: null }, () => ({
      message,
    }));
    return { code: "no-measurement", message };
  };
}
