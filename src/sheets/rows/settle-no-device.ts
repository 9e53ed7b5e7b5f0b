import type { SheetSpec } from "../../fleet/columns.ts";
import type { Filled } from "./filled.ts";

/** What stands in the place of a device's name where a battery is in none. */
const NO_DEVICE =
  /^((in|on|as) )?(the )?(spares?|stores?|stock|storage|shelf|charg(er|ing|eur)|lager|voorraad|magasin|r[eé]serve|almac[eé]n|quarantine|quarantäne|sperrlager)$/i;

/**
 * Takes a spare for what it is where its line names no device but "spare" or "in charger": the battery is in no device,
 * and there is no device of that name.
 *
 * @returns why there is no device; null for every row that stands
 */
export function settleNoDevice(values: Record<string, unknown>, { kind }: SheetSpec): Filled | null {
  if (typeof values.device !== "string" || !NO_DEVICE.test(values.device)) return null;
  if (kind === "devices") return { code: "missing-required", message: "The line names a spare battery and no device." };
  values.site ??= values.device;
  values.device = null;
  return null;
}
