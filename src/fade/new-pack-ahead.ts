import { DAYS_PER_YEAR } from "../calendar/mean-year.ts";
import { packEvidence } from "./evidence.ts";
import { wearAhead } from "./wear-ahead.ts";

/** The readings of a pack that was never tested: none. */
export const UNTESTED = packEvidence([], []);

/** Clocks of a new pack in typical use, from its first day. */
export const NEW_PACK_AHEAD = wearAhead(
  { momentAt: (day) => ({ years: day / DAYS_PER_YEAR, useYears: day / DAYS_PER_YEAR }) },
  0,
);
