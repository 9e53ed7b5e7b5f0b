import type { Heading } from "./heading.ts";
import { type ColumnView, MOSTLY_DIFFERENT } from "./score-column.ts";
import { columnsOf, type Output } from "./table.ts";

/** What a test of a battery measures; a result that names no battery may be that of the device. */
const MEASURED = /^(minutes|wh|ah|percent)$/;

/**
 * True where serials behind devices that each stand once are theirs: their checks measure nothing, and no column or title speaks
 * of a battery, as in a list of calibrations.
 */
export function checksDevices(
  outputs: readonly Output[],
  views: readonly ColumnView[],
  heading: Heading | null,
): boolean {
  const tests = outputs.find(({ sheet }) => sheet.kind === "runtime_tests");
  if (tests === undefined || tests.fields.some(({ spec }) => MEASURED.test(spec.field))) return false;
  if ([heading?.title, ...views].some((said) => said?.things.includes("battery"))) return false;
  const [serial = -1] = columnsOf(tests, "serial");
  return views.some(
    ({ column, things, meaning, profile }) =>
      column < serial && things + meaning.says === "device" && profile.distinct > MOSTLY_DIFFERENT,
  );
}

/**
 * True for tests that name devices and no batteries, where the sheet is no log of battery tests: nothing is measured, no
 * column speaks of a test, or it lists each device once and tells other things of them.
 */
export function isOtherThanTests({ sheet, fields, own }: Output, views: readonly ColumnView[]): boolean {
  if (sheet.kind !== "runtime_tests") return false;
  const named = fields.find(({ spec }) => spec.field === "serial")?.columns[0];
  const device = views.find(({ column }) => column === named);
  if (device === undefined || !/device|unit/.test(`${device.things} ${device.meaning.says}`)) return false;
  const ofBattery = (column?: number) =>
    views.some((view) => view.column === column && view.things.includes("battery"));
  const measured = fields.some(
    ({ spec, columns: [column] }) => MEASURED.test(spec.field) || (spec.field === "result" && ofBattery(column)),
  );
  const tested = views.some(({ things, meaning }) => /test|result/.test(`${things} ${meaning.says}`));
  const others = views.some(({ column, things, meaning }) => !own.includes(column) && things + meaning.says !== "");
  return !measured || !tested || (others && device.profile.distinct > MOSTLY_DIFFERENT);
}
