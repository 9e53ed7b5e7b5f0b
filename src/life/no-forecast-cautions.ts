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
  const [has, its, it] = serials.length === 1 ? ["pack has", "its", "it"] : ["packs have", "their", "them"];
  return [
    `${counted(serials.length, has, has)} no forecast, as the sheets tell neither ${its} age nor ${its} end: ${firstTold(serials.sort(), TOLD)}. Needs, orders and devices short leave ${it} out. Give the day made or in service; of a battery that does not recharge, its use-by date or service life.`,
  ];
}
