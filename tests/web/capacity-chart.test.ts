import { describe, expect, it } from "vitest";
import { capacityAxis } from "../../web/charts/capacity-chart.ts";

/** The ends of the axis of a chart with end of life at 80 %. */
function ends(readings: number[], path: number[]): [number, number] {
  const { min, max } = capacityAxis({}, 80, readings, path);
  return [min, max];
}

// By hand: whole tens below the lowest value less 2, whole twenties where the axis is longer than 50.
describe("capacityAxis: readings, the threshold and where a path begins have room", () => {
  it("ends below what is shown", () => expect(ends([98, 91], [90, 84])).toEqual([70, 100]));
  it("lets a path run off it at 40 %", () => expect(ends([98, 91], [90, 50, 10])).toEqual([40, 100]));
  it("goes lower for a reading", () => expect(ends([98, 31], [])).toEqual([20, 100]));
  it("goes lower for a path that begins there, yet not below nought", () => {
    expect(ends([60], [24, 9])).toEqual([20, 100]);
    expect(ends([60], [1, 0])).toEqual([0, 100]);
  });
});
