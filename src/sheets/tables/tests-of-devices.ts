import { type ColumnView, MOSTLY_DIFFERENT } from "./score-column.ts";
import type { Output } from "./table.ts";

/** What a test of a battery measures; a result that names no battery may be that of the device. */
const MEASURED = /^(minutes|wh|ah|percent)$/;

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
