import { describe, expect, it } from "vitest";
import { type OrderWorld, playOrders } from "./order-world.ts";

const WORLDS: [string, OrderWorld][] = [
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
const FUTURES = 5;

describe.each(WORLDS)("re-planned every month for two years: %s", (_, world) => {
  const played = Array.from({ length: FUTURES }, (_, seed) => playOrders(world, seed + 1));
  const sum = (of: (one: (typeof played)[number]) => number) => played.reduce((all, one) => all + of(one), 0);

  // the service level is 0.95 a cycle; a cycle is a month or longer
  it("leaves at least 95 of 100 months without a shortage, and serves 99 of 100 needs at once", () => {
    expect(sum((one) => one.monthsShort) / (24 * FUTURES)).toBeLessThanOrEqual(0.05);
    expect(sum((one) => one.servedAtOnce) / sum((one) => one.needed)).toBeGreaterThanOrEqual(0.99);
  });

  // buying again what is on order would cost far more
  it("spends no more than 15 % above one who knows the future", () => {
    expect(sum((one) => one.spent) / sum((one) => one.spentByOracle)).toBeLessThanOrEqual(1.15);
  });
});
