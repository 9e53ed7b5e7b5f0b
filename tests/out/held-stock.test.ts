import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { assembleDates } from "../../src/out/dates-report.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { heldRows, heldTold, notHeld } from "../../src/out/held-stock.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { catalogued, day, device, stock } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));
const fleet = {
  ...emptyFleet(),
  devices: [device("D1"), device("D2", { site: "North" })],
  catalogue: [catalogued("Pads", "pads", { perDevice: 2 })],
  datedStock: [
    stock("Pads", "2027-06-30", "D1", { quantity: 3 }),
    stock("Pads", "2027-06-30", "D2", { quantity: 2, held: "recalled" }),
    stock("Pads", "2027-06-30", "North", { quantity: 5, held: "box torn" }),
    stock("Pads", "2027-06-30", "North", { quantity: 5 }),
  ],
};
const reading = { inputs: [], setAside: [], findings: [], refused: [], fleet };
const report = assembleDates(reading, policy, forecastDatedStock(fleet, policy));
const text = datesText(report, { width: 80 });

describe("held stock in dates", () => {
  // By hand: D3 has left service, and so what is held in it is neither a gap nor on a shelf
  it("does not take a device that has left service for a shelf", () => {
    const left = {
      ...fleet,
      devices: [device("D3", { retired: policy.asOf })],
      datedStock: [stock("Pads", "2027-06-30", "D3", { held: "recalled" })],
    };
    expect(heldTold(heldRows(forecastDatedStock(left, policy).needing.stock))).toEqual([
      "1 held unit in no device in service, serving nothing: Pads at D3 (recalled).",
    ]);
  });

  it("is told by itself, with its reason", () => {
    expect(text).toContain(
      [
        "Held",
        "- 2 held units in devices, each counted as a gap: Pads at D2 (recalled).",
        "- 5 held units in no device in service, serving nothing: Pads at North (box",
        "  torn).",
      ].join("\n"),
    );
    expect(report.heldStock.map(({ place, quantity, held }) => [place, quantity, held])).toEqual([
      ["D2", 2, "recalled"],
      ["North", 5, "box torn"],
    ]);
  });

  it("is in no month, and does not lapse for want of use", () => {
    expect(notHeld(report).map(({ place, quantity }) => [place, quantity])).toEqual([
      ["D1", 3],
      ["North", 5],
    ]);
    expect(text).toContain("2027-06      8: Pads 8");
    expect(text).toMatch(/^Pads +8 /m);
  });

  it("stands beside what does not fit the fleet, with its fix", () => {
    expect(text).toContain(
      [
        "Stock and use that do not fit",
        "warning: made-up.csv, line 2: D1 holds 3 units of Pads, but a device carries 2.",
        "  [more-than-carried]",
        "  Fix: Correct the quantities, say where spare units lie or when a pack was",
        "    retired, or correct per_device.",
      ].join("\n"),
    );
  });
});
