import { expect, it } from "vitest";
import type { Plan } from "../../src/index.ts";
import { dayNumber } from "../../web/months.ts";
import { packPath } from "../../web/pack-path.ts";

const pack = (capacityNow: { p10: number; p50: number; p90: number } | null) =>
  ({
    capacityNow,
    path: { from: "2026-11", p10: [0.75, 0.5], p50: [0.875, 0.75], p90: [1, 0.875] },
  }) as Plan["packs"][number];
const on = (day: string, p10: number, p50: number, p90: number) => ({ day: dayNumber(day), p10, p50, p90 });

it("goes from today's capacity over the ends of months, in percent", () => {
  expect(packPath(pack({ p10: 0.75, p50: 0.9375, p90: 1 }), dayNumber("2026-11-10"))).toEqual([
    on("2026-11-10", 75, 93.75, 100),
    on("2026-11-30", 75, 87.5, 100),
    on("2026-12-31", 50, 75, 87.5),
  ]);
});

it("begins after as-of where today's capacity is not known, and is empty without a path", () => {
  expect(packPath(pack(null), dayNumber("2026-11-30"))).toEqual([on("2026-12-31", 50, 75, 87.5)]);
  const none = { ...pack(null), path: { from: "2026-11", p10: [], p50: [], p90: [] } };
  expect(packPath(none, dayNumber("2026-11-30"))).toEqual([]);
});
