import type { SheetKind } from "../../fleet/columns.ts";
import { Gone } from "../values/status-words.ts";

/** A kept entry's values as the fleet's row, with the defaults of blank cells filled in. */
export function fleetRow(kind: SheetKind, values: Record<string, unknown>): Record<string, unknown> {
  if (values.retired instanceof Gone) values.retired = values.retired.since;
  if (kind === "dated_stock") values.quantity ??= 1;
  else if (kind === "use_log") values.reason ??= "use";
  else if (kind === "catalogue") {
    for (const list of ["priceBreaks", "fits", "carriedBy", "alternatives"]) values[list] ??= [];
  }
  return values;
}
