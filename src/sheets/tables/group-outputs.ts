import { type ColumnSpec, type SheetKind, sheetSpec } from "../../fleet/columns.ts";
import { DATED_THINGS } from "../words/vocabulary.ts";
import { fieldSource, sharedField } from "./field-source.ts";
import { type ColumnView, datedThing, MIN_POINTS, pointsFor } from "./score-column.ts";
import type { FieldSource, Output } from "./table.ts";

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

/** Columns of one thing that stand together: the second pads, the child's pads, the battery. */
interface Group {
  thing: string;
  views: ColumnView[];
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
    if (
      group.thing === "battery" &&
      !(again && group.views.every(({ index, variant }) => index === null && variant === ""))
    ) {
      const pack = packOutput(group, views, before);
      if (pack) outputs.push(pack);
    }
    if (DATED_THINGS.has(group.thing)) {
      const dated = datedOutput(group, views, [...before, ...outputs.slice(-1)], left);
      if (dated) outputs.push(dated);
    }
  }
  const used = new Set(outputs.flatMap(({ own }) => own));
  const rest = left.filter(({ column }) => !used.has(column));
  for (const output of [
    ...testOutputs(rest, views, [...(main ? [main] : []), ...outputs]),
    ...sideOutputs(rest, main, ofDevices || outputs.some(({ sheet }) => sheet.kind === "dated_stock")),
  ])
    outputs.push(output);
  return outputs;
}

/** Leftover columns by thing, variant and number; one that names no thing belongs to the thing on its left. */
function groupsOf(left: readonly ColumnView[]): Group[] {
  const groups = new Map<string, Group>();
  let last = null as string | null;
  for (const view of left) {
    const thing = datedThing(view);
    if (thing === "" && view.things !== "") continue;
    const { variant, index } = view;
    const named = `${thing}/${variant}/${index}`;
    const key: string | null = thing === "" ? (index === null && variant === "" ? last : null) : named;
    if (key === null || view.meaning.says + view.things === "") continue;
    const group = groups.get(key) ?? { thing, views: [] };
    groups.set(key, group);
    group.views.push(view);
    if (thing !== "") last = key;
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

/** The fields of a sheet that the group's columns name, whether or not they repeat the thing's own name. */
function fieldsIn(kind: SheetKind, { thing, views }: Group): FieldSource[] {
  const sheet = sheetSpec(kind);
  const fields: FieldSource[] = [];
  const pairs = views.flatMap((view) =>
    sheet.columns.map((spec) => ({
      spec,
      view,
      points: Math.max(
        pointsFor(view, sheet, spec),
        isOfThing(view, thing) ? pointsFor({ ...view, things: thing }, sheet, spec) : 0,
      ),
    })),
  );
  pairs.sort((a, b) => b.points - a.points || a.view.column - b.view.column);
  const taken = new Set<ColumnView>();
  for (const { spec, view, points } of pairs) {
    if (points < MIN_POINTS || taken.has(view) || fields.some((field) => field.spec === spec)) continue;
    fields.push(fieldSource(spec, view, points));
    taken.add(view);
  }
  return fields;
}

/** True for a column that names the thing, or none. */
function isOfThing({ things }: ColumnView, thing: string): boolean {
  return things === "" || things.split(" ").includes(thing);
}

function packOutput(group: Group, views: readonly ColumnView[], before: readonly Output[]): Output | null {
  const fields = fieldsIn("packs", group);
  if (!fields.some(({ spec }) => spec.field === "serial")) return null;
  const own = fields.flatMap(({ columns }) => columns);
  return {
    sheet: sheetSpec("packs"),
    fields: withShared("packs", fields, { device: "device", site: "site" }, views, before),
    implied: {},
    own,
  };
}

function datedOutput(
  group: Group,
  views: readonly ColumnView[],
  before: readonly Output[],
  left: readonly ColumnView[],
): Output | null {
  const fields = fieldsIn("dated_stock", group).filter(({ columns }) =>
    left.some(({ column }) => columns.includes(column)),
  );
  const has = (field: string) => fields.some(({ spec }) => spec.field === field);
  if (!has("expiry") && !has("label")) return null;
  const usedBefore = new Set(before.filter(({ sheet }) => sheet.kind === "packs").flatMap(({ own }) => own));
  const fresh = fields.filter(({ columns }) => !columns.some((column) => usedBefore.has(column)));
  if (!fresh.some(({ spec }) => spec.field === "expiry" || spec.field === "label")) return null;
  const own = fresh.flatMap(({ columns }) => columns);
  const shared: Record<string, string> =
    group.thing === "battery" ? { place: "device", item: "item", serial: "serial" } : { place: "device" };
  const all = withShared("dated_stock", fresh, shared, views, before);
  return {
    sheet: sheetSpec("dated_stock"),
    fields: all,
    implied: { item: impliedItem(group.views) || group.thing },
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
    const spec = devices.columns.find((column) => column.field === name) as ColumnSpec;
    const best = views
      .map((view) => ({ view, points: pointsFor(view, devices, spec) }))
      .filter(({ points, view }) => points >= MIN_POINTS && (name !== "device" || view.things.includes("device")))
      .sort((a, b) => b.points - a.points)[0];
    if (best) return fieldSource(spec, best.view, best.points);
  }
  return null;
}

/** Test columns beside the packs they measure, one output for each numbered test. */
function testOutputs(rest: readonly ColumnView[], views: readonly ColumnView[], before: readonly Output[]): Output[] {
  const pack = before.find(({ sheet }) => sheet.kind === "packs");
  const serial = pack?.fields.find(({ spec }) => spec.field === "serial");
  if (!serial) return [];
  const sheet = sheetSpec("runtime_tests");
  const outputs: Output[] = [];
  for (const index of new Set(rest.map(({ index }) => index))) {
    const group: Group = { thing: "test", views: rest.filter((view) => view.index === index && mayTellOfTest(view)) };
    const fields = fieldsIn("runtime_tests", group).filter(({ spec }) => spec.field !== "serial");
    const has = (field: string) => fields.some(({ spec }) => spec.field === field);
    if (!has("date") || !sheet.oneOf.some(has)) continue;
    const own = fields.flatMap(({ columns }) => columns);
    outputs.push({ sheet, fields: [sharedField(serial, sheet, "serial"), ...fields], implied: {}, own });
  }
  return views.length === 0 ? [] : outputs;
}

/** True for a column that names no other thing, and says something. */
function mayTellOfTest({ things, meaning }: ColumnView): boolean {
  return things === ""
    ? meaning.says !== ""
    : things.split(" ").every((thing) => thing === "test" || thing === "battery");
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
