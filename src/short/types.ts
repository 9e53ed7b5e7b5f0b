import type { Month } from "../calendar/month.ts";

/** Devices short of a good pack or of in-date supplies at a month's end. */
export interface ShortMonth {
  month: Month;
  devices: number;
  withoutBuying: { expected: number; anyChance: number };
  withSchedule: { expected: number; anyChance: number };
}
