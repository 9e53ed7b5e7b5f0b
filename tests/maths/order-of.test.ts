import fc from "fast-check";
import { expect, it } from "vitest";
import { orderOf } from "../../src/maths/order-of.ts";

// By the meaning of an order: numbers ascend along it, and of equal ones the first comes first.
it("orderOf puts the smallest number first, and equal ones in the order in which they stand", () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: -4, max: 4 }), { maxLength: 60 }), (numbers) => {
      const order = orderOf(numbers);
      expect([...order].sort((a, b) => a - b)).toEqual([...numbers.keys()]);
      for (let at = 1; at < order.length; at++) {
        const [before, now] = [order[at - 1]!, order[at]!];
        expect(numbers[before]! < numbers[now]! || (numbers[before] === numbers[now] && before < now)).toBe(true);
      }
    }),
    { seed: 1 },
  );
});
