import { catalogueRow, fleetWith, supplierRow } from "./made-up.ts";
import type { OrderCase } from "./random-cases.ts";

const major = (cents: number) => (cents / 100).toFixed(2);

/** The sheets of a small ordering problem: its items' offers and its supplier's terms. */
export function fleetOfCase({ items, fee, freeOver, everyMonths }: OrderCase) {
  return fleetWith({
    catalogue: items.map((item) =>
      catalogueRow({
        item: item.item,
        kind: "pads",
        price: major(item.price),
        unitsPerBox: item.box,
        minimumOrder: item.minimum,
        priceBreaks: item.breaks.map((step) => ({ from: step.from, price: major(step.price) })),
        leadDays: item.leadDays,
        arrivesWithMonths: item.lifeMonths,
      }),
    ),
    suppliers: [
      supplierRow({
        orderFee: major(fee),
        freeOver: freeOver === null ? null : major(freeOver),
        orderEveryMonths: everyMonths,
      }),
    ],
  });
}
