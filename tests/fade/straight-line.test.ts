import { describe, expect, it } from "vitest";
import { crossingOf, straightLine } from "../../src/fade/straight-line.ts";

describe("straightLine: least squares", () => {
  // Source: NIST StRD "Norris" (linear, lower difficulty), NIST Standard Reference Database 140; y, x.
  const norris = [
    [0.1, 0.2],
    [338.8, 337.4],
    [118.1, 118.2],
    [888, 884.6],
    [9.2, 10.1],
    [228.1, 226.5],
    [668.5, 666.3],
    [998.5, 996.3],
    [449.1, 448.6],
    [778.9, 777],
    [559.2, 558.2],
    [0.3, 0.4],
    [0.1, 0.6],
    [778.1, 775.5],
    [668.8, 666.9],
    [339.3, 338],
    [448.9, 447.5],
    [10.8, 11.6],
    [557.7, 556],
    [228.3, 228.1],
    [998, 995.8],
    [888.8, 887.6],
    [119.6, 120.2],
    [0.3, 0.3],
    [0.6, 0.3],
    [557.6, 556.8],
    [339.3, 339.1],
    [888, 887.2],
    [998.5, 999],
    [778.9, 779],
    [10.2, 11.1],
    [117.6, 118.3],
    [228.9, 229.2],
    [668.4, 669.1],
    [449.2, 448.9],
    [0.2, 0.5],
  ] as const;

  it("matches the certified intercept and slope", () => {
    const line = straightLine(norris.map(([y, x]) => [x, y] as const))!;
    expect(Math.abs(line.slope / 1.00211681802045 - 1)).toBeLessThan(1e-9);
    expect(Math.abs(line.start / -0.262323073774029 - 1)).toBeLessThan(1e-9);
  });

  it("keeps its precision far from the origin, as day numbers are", () => {
    const line = straightLine(norris.map(([y, x]) => [x + 20000, y] as const))!;
    expect(Math.abs(line.slope / 1.00211681802045 - 1)).toBeLessThan(1e-9);
  });

  it("is null where one moment alone was measured", () => {
    expect(straightLine([])).toBeNull();
    expect(
      straightLine([
        [3, 1],
        [3, 2],
      ]),
    ).toBeNull();
  });
});

describe("crossingOf", () => {
  // Source: GaAs laser degradation, Meeker and Escobar (1998), Statistical Methods for Reliability Data, Table C.17;
  // rise of operating current in percent every 250 h from 0 to 4000 h; failure at 10 %. The published pseudo failure
  // times (from memory) are the least-squares lines' crossings.
  const lasers: [number, number[]][] = [
    [
      3702,
      [
        0, 0.4741, 0.9255, 2.1147, 2.7168, 3.511, 4.3415, 4.9076, 5.4782, 5.9925, 6.7224, 7.1303, 8.0006, 8.9193, 9.494,
        9.8675, 10.9446,
      ],
    ],
    [
      4194,
      [
        0, 0.7078, 1.2175, 1.8955, 2.2954, 2.865, 3.7454, 4.4192, 4.9894, 5.5148, 6.0668, 6.6385, 7.1615, 7.7778,
        8.4242, 8.9092, 9.2834,
      ],
    ],
    [
      5847,
      [
        0, 0.7074, 1.1651, 1.7253, 1.9888, 2.5325, 2.9695, 3.2977, 3.9354, 4.1613, 4.4459, 4.889, 5.2696, 5.6913,
        6.0216, 6.4485, 6.8849,
      ],
    ],
    [
      6172,
      [
        0, 0.3634, 0.6161, 1.3597, 1.9525, 2.2995, 2.9468, 3.3871, 3.7863, 4.1116, 4.5013, 4.7209, 4.9766, 5.2812,
        5.615, 5.9503, 6.1438,
      ],
    ],
    [
      5301,
      [
        0, 0.2707, 0.6144, 1.1093, 1.773, 2.0625, 2.5835, 2.9863, 3.3765, 4.0491, 4.626, 5.237, 5.6191, 6.0449, 6.3167,
        7.0952, 7.5941,
      ],
    ],
    [
      3592,
      [
        0, 0.3584, 1.3922, 1.9541, 2.8617, 3.4552, 3.8117, 4.533, 5.3541, 5.9217, 6.7078, 7.7027, 8.6053, 9.1477, 9.951,
        10.4857, 11.0096,
      ],
    ],
    [
      6051,
      [
        0, 0.3637, 0.9237, 1.2098, 1.4591, 1.9323, 2.3862, 2.6799, 2.9397, 3.4183, 4.0857, 4.5843, 4.8402, 5.1145,
        5.5691, 6.114, 7.1723,
      ],
    ],
    [
      6538,
      [
        0, 0.458, 1.0678, 1.4163, 1.7659, 2.1061, 2.3969, 2.78, 3.0187, 3.289, 3.7542, 4.1595, 4.7575, 5.1597, 5.4591,
        5.8085, 6.245,
      ],
    ],
    [
      5110,
      [
        0, 0.5098, 0.9308, 1.5713, 1.9576, 2.5871, 3.2892, 3.6075, 4.1148, 4.5964, 4.913, 5.3408, 5.8418, 6.3961,
        6.8441, 7.2037, 7.8848,
      ],
    ],
    [
      3306,
      [
        0, 0.4136, 1.488, 2.381, 2.995, 3.835, 4.501, 5.251, 6.256, 7.051, 7.803, 8.321, 8.93, 9.554, 10.45, 11.28,
        12.21,
      ],
    ],
    [
      5326,
      [
        0, 0.4435, 0.9978, 1.5738, 1.9584, 2.5093, 2.8436, 3.4682, 4.007, 4.5124, 4.8018, 5.2042, 5.6556, 6.1951,
        6.5405, 6.9626, 7.4238,
      ],
    ],
    [
      4995,
      [
        0, 0.3864, 0.7988, 1.3521, 1.741, 2.979, 3.5871, 4.0315, 4.4393, 4.7906, 5.2205, 5.4848, 5.9639, 6.2276, 6.9877,
        7.3671, 7.8841,
      ],
    ],
    [
      4721,
      [
        0, 0.3034, 0.7448, 1.5225, 1.8548, 2.3897, 2.9473, 3.5104, 3.9207, 5.0316, 5.4708, 5.8362, 6.4962, 6.9372,
        7.3883, 7.8472, 8.087,
      ],
    ],
    [
      5689,
      [
        0, 0.438, 0.6979, 1.0515, 1.3526, 1.7998, 2.5514, 2.8274, 3.3908, 3.7159, 4.0906, 4.8296, 5.4145, 5.759, 6.1419,
        6.5086, 6.8823,
      ],
    ],
    [
      6102,
      [
        0, 0.5056, 0.8349, 1.2864, 1.5191, 1.9148, 2.2697, 2.7763, 3.4153, 3.7814, 4.1053, 4.3754, 4.6295, 5.3831,
        5.8391, 6.1618, 6.6247,
      ],
    ],
  ];

  it.each(lasers)("gives the published pseudo failure time %i h", (published, rises) => {
    const line = straightLine(rises.map((rise, i) => [i * 250, rise] as const))!;
    expect(Math.round(crossingOf(line, 10, "rising")!)).toBe(published);
  });

  // Source: unit 103 of the same data, computed with R 4.2.2 lm.
  it("matches unit 103 to the digits", () => {
    const line = straightLine(lasers[2]![1].map((rise, i) => [i * 250, rise] as const))!;
    expect(line.start).toBeCloseTo(0.35600784313726, 12);
    expect(line.slope).toBeCloseTo(0.0016494607843137, 15);
    expect(crossingOf(line, 10, "rising")).toBeCloseTo(5846.754435496, 7);
  });

  it("is null where the line never gets there", () => {
    expect(crossingOf({ start: 100, slope: 0.1 }, 80, "falling")).toBeNull();
    expect(crossingOf({ start: 100, slope: 0 }, 80, "falling")).toBeNull();
    expect(crossingOf({ start: 100, slope: -0.5 }, 80, "falling")).toBe(40);
  });
});
