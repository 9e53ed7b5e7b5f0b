import { expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { servingPacks } from "../../src/life/serving-packs.ts";
import { catalogued, day, device, pack, runtimeTest } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));

it("counts as serving what has not left by as-of and is in no device that has, but for what lies on a shelf", () => {
  const inService = day("2024-01-01");
  const { packs, stock } = servingPacks(
    {
      ...emptyFleet(),
      catalogue: [catalogued("cell", "primary", { serviceMonths: 24 })],
      devices: [
        device("D1", { site: "North", retired: day("2027-03-01") }),
        device("D2", { retired: day("2026-11-01") }),
      ],
      packs: [
        pack("in-D1", { item: "cell", device: " d1", inService }),
        pack("in-D2", { item: "cell", device: "D2", inService }),
        pack("left", { item: "cell", device: "D1", inService, retired: day("2026-11-01") }),
        pack("leaves", { item: "cell", site: "South", inService, retired: day("2026-11-02") }),
        pack("shelf", { item: "cell", site: "Store", made: day("2024-05-10") }),
        pack("held", { item: "cell", site: "Store", held: "swollen" }),
        pack("tested", { item: "cell", site: "Store" }),
      ],
      runtimeTests: [runtimeTest("Tested", day("2026-05-01"), { percent: 90 })],
    },
    { ...policy, packMaxAgeMonths: 36 },
  );
  expect(packs.map(({ pack: { serial }, site, leaves }) => [serial, site, leaves && isoFromDay(leaves)])).toEqual([
    ["in-D1", "North", "2027-03-01"],
    ["leaves", "South", null],
    ["tested", "Store", null],
  ]);
  // by hand: its age counts from 10 May 2024, its service from when it is fitted; what is held is due now
  expect(stock.map(({ pack: { serial }, due }) => [serial, due && isoFromDay(due)])).toEqual([
    ["shelf", "2027-05-10"],
    ["held", "2026-11-01"],
  ]);
});

it("holds a failed test of a battery that does not recharge until one of a later day passes, in whatever order they stand", () => {
  const failedOn = (tests: [string, "pass" | "fail", boolean?][]) => {
    const fleet = {
      ...emptyFleet(),
      catalogue: [catalogued("cell", "primary")],
      packs: [pack("B", { item: "cell", device: "D", inService: day("2024-01-01") })],
      runtimeTests: tests.map(([iso, result, fullCharge = true]) => runtimeTest("b", day(iso), { result, fullCharge })),
    };
    const found = servingPacks(fleet, policy).packs[0]!.failedOn;
    return found && isoFromDay(found);
  };
  const both = (tests: [string, "pass" | "fail", boolean?][]) => [failedOn(tests), failedOn([...tests].reverse())];
  const twice = (iso: string | null) => [iso, iso];
  expect(
    both([
      ["2026-05-01", "fail"],
      ["2026-06-01", "pass"],
    ]),
  ).toEqual(twice(null));
  expect(
    both([
      ["2026-05-01", "pass"],
      ["2026-06-01", "fail"],
    ]),
  ).toEqual(twice("2026-06-01"));
  expect(
    both([
      ["2026-05-01", "fail"],
      ["2026-05-01", "pass"],
    ]),
  ).toEqual(twice("2026-05-01"));
  expect(
    both([
      ["2026-05-01", "fail"],
      ["2026-06-01", "pass", false],
    ]),
  ).toEqual(twice("2026-05-01"));
  expect(
    both([
      ["2026-05-01", "pass"],
      ["2026-06-01", "fail", false],
    ]),
  ).toEqual(twice(null));
});
