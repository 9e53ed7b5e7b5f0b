import { expect, it } from "vitest";
import type { Offer } from "../../src/orders/offers.ts";
import { KeptOrder } from "../../src/short/kept-order.ts";

// By hand: lines of 40 and 60 reach 100 and are free; 40 less they pay 25, and with nothing left nothing
it("KeptOrder costs its lines and the fee until its last line is gone", () => {
  const order = new KeptOrder({ fee: 25, freeOver: 100 } as Offer);
  expect(order.cost).toBe(0);
  order.add(40, 1);
  expect(order.cost).toBe(65);
  order.add(60, 1);
  expect([order.cost, order.costWith(-1, 0), order.costWith(-40, -1), order.costWith(-100, -2)]).toEqual([
    100, 124, 85, 0,
  ]);
  // what it would cost changes nothing
  expect(order.cost).toBe(100);
  order.add(-40, -1);
  expect(order.cost).toBe(85);
});

it("KeptOrder pays the fee for a line that costs nothing", () => {
  const order = new KeptOrder({ fee: 25, freeOver: null } as Offer);
  order.add(0, 1);
  expect(order.cost).toBe(25);
});
