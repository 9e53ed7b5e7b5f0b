import { expect, it } from "vitest";
import { shareShort, shortOnPaths } from "../../src/short/short-on-paths.ts";

const oneClass = (count: number) => [{ items: [0], count }];

// By hand: each of two needs falls on the one device with chance 1/2, else on the pool: it is spared with chance 1/4
it("counts a device as short no more often than any is", () => {
  const short = shortOnPaths([{ share: 0.5, each: 1, unmet: () => 2 }], oneClass(1));
  expect(short).toEqual({ expected: 0.75, anyChance: 0.75 });
});

// By hand: two needs fall on different ones of four devices, each with chance 1/2: one is expected, none with chance 1/4
it("spreads needs over different devices", () => {
  const short = shortOnPaths([{ share: 0.5, each: 1, unmet: () => 2 }], oneClass(4));
  expect(short).toEqual({ expected: 1, anyChance: 0.75 });
});

// By hand: of two devices with two units each, two units can lack in six ways: in two both are of one device, so that
// (2 * 1 + 4 * 2) / 6 = 5/3 devices are short; three leave none whole
it.each([
  [1, 1],
  [2, 5 / 3],
  [3, 2],
  [9, 2],
])("spreads %i needs over all units of the devices", (needs, devices) => {
  expect(2 * shareShort(needs, 2, 2)).toBeCloseTo(devices, 12);
});
