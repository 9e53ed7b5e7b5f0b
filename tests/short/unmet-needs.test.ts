import { expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { type SupplyMonths, unmetNeeds } from "../../src/short/unmet-needs.ts";

// By hand: one unit serves the first month alone, the other both; the first must go first, or the second month lacks one
it("what lapses first serves first", () => {
  const supply = [
    { units: 1, from: 0, to: 1 },
    { units: 1, from: 0, to: 0 },
  ];
  expect([...unmetNeeds([Int32Array.of(1, 1)], supply)]).toEqual([0, 0]);
});

/** Unit by unit and month by month, as the rule says: what waits is served by the unit there that lapses first. */
function unmetUnitByUnit(needs: Int32Array, supply: readonly SupplyMonths[]): number[] {
  const units = supply.flatMap(({ units: count, from, to }) => Array.from({ length: count }, () => ({ from, to })));
  let waiting = 0;
  return Array.from(needs, (needed, month) => {
    waiting += needed;
    while (waiting > 0) {
      const there = units.filter(({ from, to }) => from <= month && month <= to);
      if (there.length === 0) break;
      const first = there.reduce((a, b) => (b.to < a.to ? b : a));
      units.splice(units.indexOf(first), 1);
      waiting--;
    }
    return waiting;
  });
}

it("serves as unit by unit would, whatever comes when and lapses when", () => {
  const random = seededRandom(11);
  const upTo = (n: number) => Math.floor(n * random.uniform());
  for (let world = 0; world < 200; world++) {
    const months = 1 + upTo(12);
    const supply = Array.from({ length: upTo(8) }, () => {
      const from = upTo(months);
      return { units: 1 + upTo(3), from, to: from + upTo(months - from) };
    });
    const paths = Array.from({ length: 3 }, () => Int32Array.from({ length: months }, () => upTo(3)));
    expect([...unmetNeeds(paths, supply)]).toEqual(paths.flatMap((needs) => unmetUnitByUnit(needs, supply)));
  }
});
