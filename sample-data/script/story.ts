import { dayFromIso } from "../../src/calendar/day.ts";

/*
 * Tarnfell Ambulance, which does not exist: five stations, a central store and a training room.
 *
 * - In 2022 it bought 28 packs for its monitor-defibrillators at once; they are fading together now.
 * - The vehicle bay at Quarry Road stands over the boiler room: packs there age faster, and those of 2022 are gone.
 * - One large delivery of adult pads filled the store, the stations and half of the AEDs: a wall of expiries in the
 *   third quarter of 2027.
 * - Half of the packs bought in 2025 have never been tested.
 * - Eight AED batteries reach their service life in December 2026 and take twelve weeks to come: that order is late.
 * - The sheets were kept by hand: a copied row, an impossible date, a total under the stock list.
 */

/** A day of the story. */
export function day(iso: string): number {
  const found = dayFromIso(iso);
  if (found === null) throw new RangeError(`day: ${iso} is no date`);
  return found;
}

/** The day on which the sheets were handed over. */
export const AS_OF = day("2026-11-01");

/** Stations in the order in which vehicles were given to them. */
export const STATIONS = ["North Station", "Harbour", "Mill Lane", "Quarry Road", "Hilltop"] as const;
export const HOT_SITE = "Quarry Road";
export const STORE = "Central Store";

/** Usual temperature where a site's devices stand, in degrees Celsius. */
export function siteTemperatureC(site: string): number {
  return site === HOT_SITE ? 27 : 21;
}

/** Two digits with a leading zero. */
export const two = (number: number) => String(number).padStart(2, "0");
export const three = (number: number) => String(number).padStart(3, "0");
