import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** A small ordering problem on one supplier; money in whole cents. */
export interface OrderCase {
  name: string;
  asOf: string;
  months: number;
  orderBeforeNeedDays: number;
  minLifeDays: number;
  holdingRatePerYear: number;
  priceRisePerYear: number;
  fee: number;
  freeOver: number | null;
  everyMonths: number | null;
  items: CaseItem[];
}

export interface CaseItem {
  item: string;
  demand: number[];
  box: number;
  minimum: number;
  price: number;
  breaks: { from: number; price: number }[];
  leadDays: number;
  lifeMonths: number | null;
}

/** Seeded small cases with every feature of an order: one third each with 1, 2 and 3 items. */
export function randomCases(count: number, seed: number): OrderCase[] {
  const generator = xoroshiro128plus(seed);
  const below = (limit: number) => (generator.next() >>> 0) % limit;
  const chance = (percent: number) => below(100) < percent;
  const one = <Value>(...values: Value[]): Value => values[below(values.length)]!;
  return Array.from({ length: count }, (_, n) => {
    const months = chance(30) ? 15 : 12;
    const leads = chance(70) ? [one(0, 14, 30)] : [0, 10, 30, 45];
    const items = Array.from({ length: (n % 3) + 1 }, (_, index): CaseItem => {
      const price = 200 + below(4000);
      const busy = one(25, 60, 100);
      const breakAt = 4 + below(20);
      return {
        item: `Item ${index + 1}`,
        demand: Array.from({ length: months }, () => (chance(busy) ? below(7) : 0)),
        box: one(1, 1, 2, 3, 5),
        minimum: one(1, 1, 4, 6, 10),
        price,
        breaks: chance(50) ? [{ from: breakAt, price: Math.round(price * one(0.98, 0.95, 0.9)) }] : [],
        leadDays: one(...leads),
        lifeMonths: chance(50) ? 2 + below(11) : null,
      };
    });
    return {
      name: `case ${n + 1}`,
      asOf: one("2027-01-01", "2027-01-20"),
      months,
      orderBeforeNeedDays: one(0, 14),
      minLifeDays: one(0, 14),
      holdingRatePerYear: one(0.05, 0.1, 0.3),
      priceRisePerYear: chance(30) ? 0.04 : 0,
      fee: one(500, 1500, 4000, 9000),
      freeOver: chance(40) ? 5000 + below(40_000) : null,
      everyMonths: chance(25) ? one(2, 3) : null,
      items,
    };
  });
}
