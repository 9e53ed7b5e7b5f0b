import { describe, expect, it } from "vitest";
import { keptFor } from "../../src/life/kept-for.ts";

describe("keptFor", () => {
  it("works out once for a thing, and anew where what else it rests on has changed", () => {
    const kept = keptFor<object, number>();
    const [one, other] = [{}, {}];
    let runs = 0;
    const count = () => ++runs;
    expect(kept(one, [80, "a"], count)).toBe(1);
    expect(kept(one, [80, "a"], count)).toBe(1);
    expect(kept(other, [80, "a"], count)).toBe(2);
    expect(kept(one, [70, "a"], count)).toBe(3);
    expect(kept(one, [80, "a"], count)).toBe(4);
  });
});
