import { expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { type DatedStockRow, emptyFleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { day, device, stock, use } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");
const policy = { ...defaultPolicy(asOf), useLogFrom: day("2024-11-01") };
const PLACES = Array.from({ length: 8 }, (_, at) => at);

const usesAt = (places: readonly { device: string }[], times: number) =>
  places.flatMap((place) => Array.from({ length: times }, () => use("2026-05-01", "Gel", place.device)));

/**
 * Moves of a fleet of quiet places, whose units lapse soon, and busy ones, whose units last. By hand: in two years 3 uses
 * are one in eight months, so that a unit is used within 40 days with a chance of 0.15 and within 25 months with 0.95;
 * of 40 uses, 0.9 and 1.
 */
function movesWhere(soon: Partial<DatedStockRow>) {
  const quiet = PLACES.map((at) => device(`Q${at}`));
  const busy = PLACES.map((at) => device(`B${at}`));
  return forecastDatedStock(
    {
      ...emptyFleet(),
      devices: [...quiet, ...busy],
      datedStock: [
        // 54 days to expiry, 40 to the swap day
        ...quiet.map((place) => stock("Gel", "2026-12-25", place.device, { lot: "soon", ...soon })),
        ...busy.map((place) => stock("Gel", "2028-12-31", place.device, { lot: "late" })),
      ],
      useLog: [...usesAt(quiet, 3), ...usesAt(busy, 40)],
    },
    policy,
  ).moves;
}

it("proposeMoves carries short-dated units to where they are used, half their time ahead or in the next round of 30 days", () => {
  const moves = movesWhere({});
  expect(moves.length).toBeGreaterThan(0);
  for (const { lot, from, to, by } of moves) {
    expect([from[0], to[0], by - asOf]).toEqual(lot === "soon" ? ["Q", "B", 20] : ["B", "Q", 30]);
  }
});

it.each<[string, Partial<DatedStockRow>]>([
  ["opened", { opened: day("2026-10-01") }],
  ["held", { held: "recalled" }],
  ["too short-dated to be fitted elsewhere", { expiry: asOf + policy.minLifeDays - 1 }],
])("proposeMoves leaves units where they are that are %s", (_, soon) => {
  expect(movesWhere(soon)).toEqual([]);
});
