import { counted } from "../fleet/count-text.ts";
import { firstTold } from "../fleet/first-told.ts";
import type { PackLife } from "./types.ts";

/** Serials told before the rest is counted. */
const TOLD = 8;

/** A caution where packs have no forecast: a plan that leaves them out must not pass for one that counts them. */
export function noForecastCautions(
  lives: readonly { pack: Pick<PackLife["pack"], "serial">; replaceBy: Pick<PackLife["replaceBy"], "kind"> }[],
): string[] {
  const serials = lives.filter(({ replaceBy }) => replaceBy.kind === "no-forecast").map(({ pack }) => pack.serial);
  if (serials.length === 0) return [];
  return [
    `${counted(serials.length, "pack has", "packs have")} no forecast, as the sheets tell neither age nor end: ${firstTold(serials.sort(), TOLD)}. Needs, orders and devices short leave such packs out. Give the day made or in service; of a battery that does not recharge, its use-by date or service life.`,
  ];
}
