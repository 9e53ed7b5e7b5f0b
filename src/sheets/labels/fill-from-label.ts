import type { Day } from "../../calendar/day.ts";
import { nameKey } from "../../fleet/name-key.ts";
import type { Source } from "../../fleet/rows.ts";
import { shortened } from "../../fleet/shortened.ts";
import type { FindingLog } from "../finding-log.ts";
import type { Filled } from "../rows/filled.ts";
import { BadLabel, type Label } from "./label.ts";
import { readLabel } from "./read-label.ts";

const FIELDS = ["lot", "serial", "expiry", "made", "quantity"] as const;

/**
 * Fills the blanks of a dated-stock row from its label scan. A cell that says otherwise than the label
 * becomes empty: neither can be trusted. A label that is of no use leaves a row that has its item and expiry without it.
 *
 * @returns the product number that is to become the item's name, or why the label is of no use
 */
export function fillFromLabel(
  values: Record<string, unknown> & { source: Source },
  scan: string,
  asOf: Day,
  log: FindingLog,
): Filled {
  const label = readLabel(scan, asOf);
  const { file, sheet, line } = values.source;
  const place = { file, sheet, line, column: null, value: scan };
  if (label instanceof BadLabel) {
    const message = `The label "${shortened(scan)}" ${label.because}.`;
    log.add("label-unreadable", place, () => ({ message }));
    values.label = null;
    const typed = values.item !== null && values.expiry !== null;
    return typed ? { code: null, product: null } : { code: "label-unreadable", message };
  }
  for (const field of FIELDS) {
    if (label[field] === null) continue;
    if (values[field] === null) values[field] = label[field];
    else if (!agrees(values[field], label, field)) {
      values[field] = null;
      log.add(
        "label-disagrees",
        place,
        () => ({ message: `The cell for ${field} and the label "${shortened(scan)}" differ.` }),
        field,
      );
    }
  }
  if (values.item !== null || label.product === null) return { code: null, product: null };
  values.item = label.product;
  return { code: null, product: label.product };
}

function agrees(value: unknown, label: Label, field: (typeof FIELDS)[number]): boolean {
  const said = label[field];
  return typeof value === "string" && typeof said === "string" ? nameKey(value) === nameKey(said) : value === said;
}
