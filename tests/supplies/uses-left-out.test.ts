import { expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock, use } from "../fleet/make-rows.ts";

const fleet = {
  ...emptyFleet(),
  catalogue: [catalogued("Pads", "pads", { shelfMonths: 24 })],
  devices: [device("D1")],
  datedStock: [stock("Pads", "2028-01-31", "D1")],
  useLog: [use("2026-03-10", "Pads", "D1"), use("2026-10-01", "Pads", "D1", { reason: "restock" })],
};
const cautionsFrom = (from: string | null) => {
  const policy = { ...defaultPolicy(day("2026-11-01")), useLogFrom: from === null ? null : day(from) };
  return forecastDatedStock(fleet, policy).cautions;
};

it("says that no use is planned for where the log counts only after its last use", () => {
  expect(cautionsFrom("2026-03-11")).toEqual([
    "No use is planned for: use_log_from is 2026-03-11, and all uses in the log are earlier. Set it to the day on which the log starts to be complete.",
  ]);
  expect(cautionsFrom("2040-01-01")).toHaveLength(1);
});

it("says nothing while a use counts, or where the log holds none", () => {
  expect(cautionsFrom("2026-03-10")).toEqual([]);
  expect(cautionsFrom(null)).toEqual([]);
});
