import { columnOfField, type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import { parseHeader } from "../words/parse-header.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { fieldSource, sharedField } from "./field-source.ts";
import { fieldsIn, type Group } from "./group-fields.ts";
import { type ColumnView, datedThing, isBatteryTested, MIN_POINTS, pointsFor } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";
import { testsBeside } from "./tests-beside.ts";

/** The name that the header of a group gives to an item that no cell names. */
export function impliedItem(views: readonly ColumnView[]): string {
  const named =
    views.find((view) => datedThing(view) !== "" && view.meaning.subject !== "") ??
    views.find(({ groupSubject }) => groupSubject !== "");
  if (!named) return "";
  const { groupSubject, meaning } = named;
  if (groupSubject === "" || meaning.things) return meaning.subject;
  // "Adult exp" and "Peds exp" below "Pads" are two items
  return meaning.variant === "" ? groupSubject : `${groupSubject} ${meaning.subject}`;
}

/**
 * The rows that a wide register yields beside its main ones: packs, tests and dated units, each with the
 * device, site and pack that the rest of the line names.
 *
 * @param taken  columns that the main rows use; they are shared, not left over
 * @param ofDevices  the lines are of devices, whatever else they say
 */
export function groupOutputs(
  views: readonly ColumnView[],
  taken: ReadonlySet<number>,
  main: Output | null,
  ofDevices: boolean,
): Output[] {
  const left = views.filter(({ column }) => !taken.has(column));
  const outputs: Output[] = [];
  for (const group of groupsOf(left)) {
    const before = [...(main ? [main] : []), ...outputs];
    const again = main?.sheet.kind === "packs" || main?.sheet.kind === "runtime_tests";
    let pack = again && group.views.every(({ index, variant }) => index === null && variant === "") ? main : null;
    if (group.thing === "battery" && pack === null) {
      pack = packOutput(group, views, before);
      if (pack) outputs.push(pack);
    }
    if (DATED_THINGS.has(group.thing)) {
      const dated = datedOutput(group, views, pack, before, left);
      if (dated) outputs.push(dated);
    }
  }
  const used = new Set(outputs.flatMap(({ own }) => own));
  const rest = left.filter(({ column }) => !used.has(column));
  const before = [...(main ? [main] : []), ...outputs];
  return [
    ...outputs,
    ...(testsOfDevicesBatteries(rest, views, before) ?? testsBeside(rest, views, before)),
    ...sideOutputs(rest, main, ofDevices || outputs.some(({ sheet }) => sheet.kind === "dated_stock")),
  ];
}

/** Batteries of which a list of devices tells nothing but a test, with their tests; null where it tells of none so. */
function testsOfDevicesBatteries(
  rest: readonly ColumnView[],
  views: readonly ColumnView[],
  before: readonly Output[],
): Output[] | null {
  const several = views.some(
    ({ things, index, variant }) => things.includes("battery") && (index !== null || variant !== ""),
  );
  if (several || before.some(({ sheet }) => sheet.kind === "packs")) return null;
  const pack = packOutput({ thing: "battery", views: [] }, views, before);
  if (pack === null) return null;
  const tests = testsBeside(rest, views, [...before, pack]);
  return tests.length > 0 ? [pack, ...tests] : null;
}

/** What is said of packs and of no test of theirs. */
const OF_A_PACK_ALONE = /install|made|retired/;

/**
 * Leftover columns by thing, variant and number; one that names no thing belongs to the thing on its left ("Spare expiry"
 * to spare pads), and one with the number of a battery to that battery ("Fitted 2").
 */
function groupsOf(left: readonly ColumnView[]): Group[] {
  const groups = new Map<string, Group>();
  let last = { key: null as string | null, variant: "" };
  for (const view of left) {
    const thing = datedThing(view);
    if (thing === "" && view.things !== "") continue;
    const { variant, index } = view;
    // supplies whose heading stands there again are others: the second pads of a device
    const before = left.filter(
      ({ name, column }) => thing !== "battery" && name === view.name && column < view.column,
    ).length;
    const named = `${thing}/${variant}/${index}/${before}`;
    const numbered = `battery/${variant}/${index}/0`;
    const key: string | null =
      thing !== ""
        ? named
        : index === null && (variant === "" || variant === last.variant)
          ? last.key
          : OF_A_PACK_ALONE.test(view.meaning.says) && groups.has(numbered)
            ? numbered
            : null;
    if (key === null || view.meaning.says + view.things === "") continue;
    const group = groups.get(key) ?? { thing, views: [] };
    groups.set(key, group);
    group.views.push(view);
    if (thing !== "") last = { key, variant };
  }
  const all = [...groups.values()];
  return all.map((group) => ({ ...group, views: group.views.filter((view) => !isOfAll(view, group, all)) }));
}

/** True for a column without a name of its own behind the last of several numbered things: whose it is stays open. */
function isOfAll({ things, meaning }: ColumnView, group: Group, all: readonly Group[]): boolean {
  const numbered = ({ views }: Group) => views.some(({ index }) => index !== null);
  const others = all.filter((other) => other !== group && other.thing === group.thing && numbered(other));
  return (
    things === "" &&
    numbered(group) &&
    others.length > 0 &&
    others.every(({ views }) => views.every((view) => view.meaning.says !== meaning.says))
  );
}

function packOutput(group: Group, views: readonly ColumnView[], before: readonly Output[]): Output | null {
  const fields = fieldsIn("packs", group);
  const unnamed = !fields.some(({ spec }) => spec.field === "serial");
  const device = unnamed ? deviceOfItsBattery(group, fields, views, before) : null;
  if (unnamed && device === null) return null;
  const own = (device !== null && fields.length === 0 ? [device] : fields).flatMap(({ columns }) => columns);
  const sheet = sheetSpec("packs");
  const all = withShared("packs", fields, { device: "device", site: "site" }, views, before);
  return {
    sheet,
    fields: device === null ? all : [sharedField(device, sheet, "serial"), ...all],
    implied: {},
    own,
    ...(device !== null && { presumed: "named-by-device" as const }),
  };
}

/** What says that a device has a battery, whose serial number no column gives, as a test of it does. */
const OF_A_PACK: ReadonlySet<string> = new Set(["inService", "made", "cycles"]);
/** Points of a header that may say something else, as "Battery date" may give its expiry. */
const VAGUE = 4;

/** The column that names the device of a list of devices, each with one battery that has no number of its own; else null. */
function deviceOfItsBattery(
  group: Group,
  fields: readonly FieldSource[],
  views: readonly ColumnView[],
  [main]: readonly Output[],
): FieldSource | null {
  const others = views.some((view) => {
    // as the heading has it, since a column that counts things says no more of them
    const { things, says } = parseHeader(view.name);
    const several = says === "quantity" || (/serial|\bid\b/.test(says) && !group.views.includes(view));
    return things === "battery" && several;
  });
  // one with an expiry is followed as dated stock
  const alone =
    group.views.every(({ index, variant }) => index === null && variant === "") &&
    !fieldsIn("dated_stock", group).some(({ spec }) => spec.field === "expiry") &&
    !others;
  if (
    !alone ||
    main?.sheet.kind !== "devices" ||
    !(isBatteryTested(views) || fields.some(({ spec, points }) => OF_A_PACK.has(spec.field) && points > VAGUE))
  )
    return null;
  return main.fields.find(({ spec }) => spec.field === "device") ?? null;
}

function datedOutput(
  group: Group,
  views: readonly ColumnView[],
  pack: Output | null,
  others: readonly Output[],
  left: readonly ColumnView[],
): Output | null {
  const before = pack ? [pack, ...others] : others;
  const fields = fieldsIn("dated_stock", group).filter(({ columns }) =>
    left.some(({ column }) => columns.includes(column)),
  );
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  if (!has("expiry") && !has("label")) return null;
  const usedBefore = new Set(before.filter(({ sheet }) => sheet.kind === "packs").flatMap(({ own }) => own));
  // a cell may hold a battery's serial and its expiry
  const fresh = fields.filter(
    ({ columns, part }) => part !== null || !columns.some((column) => usedBefore.has(column)),
  );
  if (!fresh.some(({ spec }) => spec.field === "expiry" || spec.field === "label")) return null;
  const own = fresh.flatMap(({ columns }) => columns);
  // "Pads x2 exp"
  const [, times] = /\bx ?(\d)\b/.exec(group.views.map(({ name }) => name).join()) ?? [];
  const shared: Record<string, string> =
    group.thing === "battery" && pack ? { place: "device", item: "item", serial: "serial" } : { place: "device" };
  const all = withShared("dated_stock", fresh, shared, views, before);
  return {
    sheet: sheetSpec("dated_stock"),
    fields: all,
    implied: {
      item:
        impliedItem(group.views.filter(({ meaning }) => !meaning.says.includes("aside"))).replace(/ x$/i, "") ||
        group.thing,
      ...(times !== undefined && !has("quantity") && { quantity: times }),
    },
    own,
  };
}

/** Adds columns of the line that say where the unit is, which device holds it or which pack it is. */
function withShared(
  kind: SheetKind,
  fields: FieldSource[],
  wanted: Record<string, string>,
  views: readonly ColumnView[],
  before: readonly Output[],
): FieldSource[] {
  const sheet = sheetSpec(kind);
  const result = [...fields];
  for (const [field, role] of Object.entries(wanted)) {
    if (result.some(({ spec }) => spec.field === field)) continue;
    const source = sharedSource(role, views, before);
    // What names the device is not its site too.
    if (source && !result.some(({ columns }) => columns[0] === source.columns[0]))
      result.push(sharedField(source, sheet, field));
  }
  return result;
}

/** The column of the line that names its device, site, pack or item. */
function sharedSource(role: string, views: readonly ColumnView[], before: readonly Output[]): FieldSource | null {
  for (const { sheet, fields } of before) {
    if (role === "item" || role === "serial" ? sheet.kind !== "packs" : sheet.kind === "catalogue") continue;
    const found = fields.find(({ spec }) => spec.field === role);
    if (found) return found;
  }
  if (role === "item" || role === "serial") return null;
  const devices = sheetSpec("devices");
  for (const name of role === "device" ? ["device", "site"] : ["site"]) {
    const spec = columnOfField(devices, name);
    const best = views
      .map((view) => ({ view, points: pointsFor(view, devices, spec) }))
      .filter(({ points, view }) => points >= MIN_POINTS && (name !== "device" || view.things.includes("device")))
      .sort((a, b) => b.points - a.points)[0];
    if (best) return fieldSource(spec, best.view, best.points);
  }
  return null;
}

/** What else a line says of the device or pack that its main rows only refer to. */
function sideOutputs(rest: readonly ColumnView[], main: Output | null, wide: boolean): Output[] {
  const [kind, keyField] =
    main?.sheet.kind === "runtime_tests" ? (["packs", "serial"] as const) : (["devices", "device"] as const);
  const key = main?.fields.find(({ spec }) => spec.field === keyField);
  if (!main || !key || main.sheet.kind === kind || (kind === "devices" && main.sheet.kind !== "packs")) return [];
  const sheet = sheetSpec(kind);
  const thing = kind === "packs" ? "battery" : "device";
  const views = rest.filter(
    ({ things, after }) => kind === "packs" || things.includes("device") || (things === "" && after === "device"),
  );
  const said = fieldsIn(kind, { thing, views }).filter(({ spec }) => spec.field !== keyField);
  // A register is a list of devices, even where it says no more of them than the site.
  if (said.length === 0 && !(wide && kind === "devices")) return [];
  const site =
    kind === "devices" && !said.some(({ spec }) => spec.field === "site")
      ? main.fields.find(({ spec }) => spec.field === "site")
      : undefined;
  const shared = [sharedField(key, sheet, keyField), ...(site ? [sharedField(site, sheet, "site")] : [])];
  const own = said.length > 0 ? said.flatMap(({ columns }) => columns) : key.columns;
  return [{ sheet, fields: [...shared, ...said], implied: {}, own }];
}
