import type { SheetKind } from "../../../src/fleet/columns.ts";

/** A sheet as somebody might hand it over, with what a careful person reads in it as of 1 November 2026. */
export interface AwkwardSheet {
  name: string;
  text: string;
  dateOrder?: "dmy" | "mdy" | "ymd";
  /** The rows by sheet, in canonical columns; those not named here are not looked at. */
  rows: Partial<Record<SheetKind, Record<string, string | number | null>[]>>;
  /** Lines set aside, with the reason. */
  aside?: [number, string][];
  /** Codes of findings that must be among those made. */
  findings?: string[];
  /** Headers that nothing should be read from. */
  unread?: string[];
}
