import { expect, it } from "vitest";
import { cautionsTold } from "../../src/orders/item-cautions.ts";

const lacks = (item: string) => ({ item, one: "has no price.", many: "have no price." });

it("says what was assumed once, with every item of which it was", () => {
  expect(cautionsTold([lacks("Gel")])).toEqual(["Gel has no price."]);
  expect(cautionsTold([lacks("Gel"), { item: "Gel", one: "is odd.", many: "are odd." }, lacks("Pads")])).toEqual([
    "Gel and Pads have no price.",
    "Gel is odd.",
  ]);
  const many = Array.from({ length: 11 }, (_, at) => lacks(`I${at}`));
  expect(cautionsTold(many)).toEqual(["I0, I1, I2, I3, I4, I5, I6, I7 and 3 more have no price."]);
});
