import { sheetSpec } from "../../fleet/columns.ts";
import { saysCheck } from "../words/says-check.ts";
import { sharedField } from "./field-source.ts";
import type { ColumnView } from "./score-column.ts";
import type { Output } from "./table.ts";

/** The share of different names from which each line stands for a device of its own. */
const MOSTLY_ONCE = 0.9;

/**
 * Outputs with the devices that a list names by where they are ("AED location") and by nothing else: what each line dates
 * is in its device, and no stock on a shelf.
 */
export function withDevicesOfPlaces(outputs: Output[], views: readonly ColumnView[]): Output[] {
  const [first] = outputs;
  const place = first?.fields.find(({ spec }) => spec.field === "place");
  const view = views.find(({ column }) => column === place?.columns[0]);
  const isRegister = outputs.every(
    ({ sheet, implied, fields }) =>
      sheet.kind === "dated_stock" &&
      implied.item !== undefined &&
      fields.some(({ spec, columns }) => spec.field === "place" && columns[0] === view?.column),
  );
  if (!place || !isRegister || !view?.things.includes("device")) return outputs;
  // a log has a line for each check of a device
  if (view.profile.distinct <= MOSTLY_ONCE && !views.some(({ meaning }) => saysCheck(meaning))) return outputs;
  const sheet = sheetSpec("devices");
  return [{ sheet, fields: [sharedField(place, sheet, "device")], implied: {}, own: [view.column] }, ...outputs];
}
