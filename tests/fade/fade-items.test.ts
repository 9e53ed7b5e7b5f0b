import { expect, it } from "vitest";
import { fadeItems } from "../../src/fade/fade-items.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { day, pack } from "../fleet/make-rows.ts";

const asOf = day("2026-11-01");

it("fadeItems keeps what was fitted to a fleet last, and no more of what was tried before than one other choice", () => {
  const fleet = { ...emptyFleet(), packs: [pack("A", { item: "p", made: day("2024-11-01") })] };
  const fitted = (activationEnergyEv: number) => fadeItems(fleet, { asOf, activationEnergyEv }, () => true);
  const usual = fitted(0.45);
  const other = fitted(0.6);
  expect(fitted(0.45)).toBe(usual);
  expect(fitted(0.6)).toBe(other);
  // a third choice takes the place of the one that was asked for longest ago
  fitted(0.3);
  expect(fitted(0.6)).toBe(other);
  const again = fitted(0.45);
  expect(again).not.toBe(usual);
  expect(again[0]!.fit.tables.map(({ curve }) => curve)).toEqual(usual[0]!.fit.tables.map(({ curve }) => curve));
});
