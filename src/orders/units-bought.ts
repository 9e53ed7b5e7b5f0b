import type { Offer } from "./offers.ts";

/** Units that an order takes at least where some are lacking: whole boxes, and no less than the minimum order. */
export function unitsBought({ unitsPerBox, minimumUnits }: Offer, lacking: number): number {
  return Math.ceil(Math.max(lacking, minimumUnits) / unitsPerBox) * unitsPerBox;
}
