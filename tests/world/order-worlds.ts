import type { OrderWorld } from "./order-world.ts";

/** Kinds of item that a fleet buys. */
export const WORLDS: readonly [string, OrderWorld][] = [
  ["steady supplies", { meanPerMonth: 4, facts: { leadDays: 20 }, supplier: {} }],
  [
    "boxes that lapse",
    { meanPerMonth: 4, facts: { arrivesWithMonths: 12, unitsPerBox: 5, leadDays: 20 }, supplier: {} },
  ],
  ["a short life", { meanPerMonth: 6, facts: { arrivesWithMonths: 4, leadDays: 10 }, supplier: {} }],
  [
    "rare, dear packs",
    { meanPerMonth: 0.5, facts: { price: "300", kind: "pack", leadDays: 42 }, supplier: { orderFee: "60" } },
  ],
  [
    "large boxes, free over a total",
    { meanPerMonth: 8, facts: { unitsPerBox: 20, arrivesWithMonths: 24, leadDays: 30 }, supplier: { freeOver: "300" } },
  ],
];
