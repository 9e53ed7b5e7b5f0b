import { expect, it } from "vitest";
import { shortOnPaths } from "../../src/short/short-on-paths.ts";

const oneClass = (count: number) => [{ items: [0], count }];

// By hand: each of two needs falls on the one device with chance 1/2, else on the pool: it is spared with chance 1/4
it("counts a device as short no more often than any is", () => {
  const short = shortOnPaths([{ share: 0.5, unmet: () => 2 }], oneClass(1));
  expect(short).toEqual({ expected: 0.75, anyChance: 0.75 });
});

// By hand: two needs fall on different ones of four devices, each with chance 1/2: one is expected, none with chance 1/4
it("spreads needs over different devices", () => {
  const short = shortOnPaths([{ share: 0.5, unmet: () => 2 }], oneClass(4));
  expect(short).toEqual({ expected: 1, anyChance: 0.75 });
});
