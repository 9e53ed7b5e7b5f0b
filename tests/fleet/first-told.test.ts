import { expect, it } from "vitest";
import { firstTold } from "../../src/fleet/first-told.ts";

it("firstTold names the first few and counts the rest", () => {
  expect(firstTold(["a", "b"], 2)).toBe("a, b");
  const many = Array.from({ length: 1240 }, (_, n) => `D${n}`);
  expect(firstTold(many, 2)).toBe("D0, D1 and 1,238 more");
});
