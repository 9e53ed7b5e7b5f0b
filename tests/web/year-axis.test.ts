import { expect, it } from "vitest";
import type { CommonOptions } from "../../web/charts/chart-options.ts";
import { yearAxis, yearStarts } from "../../web/charts/year-axis.ts";
import { dayNumber } from "../../web/months.ts";

const between = (from: string, to: string) => yearStarts(dayNumber(from), dayNumber(to));

it("begins years on 1 January, both ends included", () => {
  expect(between("2026-11-30", "2028-01-01")).toEqual([dayNumber("2027-01-01"), dayNumber("2028-01-01")]);
  expect(between("2027-01-01", "2027-12-31")).toEqual([dayNumber("2027-01-01")]);
  expect(between("2027-01-02", "2027-12-31")).toEqual([]);
});

it("labels as many years as have 44 pixels each", () => {
  const axis = yearAxis({} as CommonOptions, dayNumber("2026-06-01"), dayNumber("2033-02-01"));
  const labelsAt = (width: number) => {
    const scale = { chart: { width }, ticks: [] } as unknown as Parameters<typeof axis.afterBuildTicks>[0];
    axis.afterBuildTicks(scale);
    return scale.ticks.map(({ value }) => axis.ticks.callback(value));
  };
  // seven years take 308 pixels
  expect(labelsAt(308)).toEqual(["2027", "2028", "2029", "2030", "2031", "2032", "2033"]);
  expect(labelsAt(300)).toEqual(["2027", "2029", "2031", "2033"]);
});
