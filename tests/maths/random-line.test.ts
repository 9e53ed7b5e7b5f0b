import { describe, expect, it } from "vitest";
import { fitRandomLine, lineSums, type RandomLine } from "../../src/maths/random-line.ts";

// Source: Belenky et al. (2003), sleepstudy as in Bates et al. (2015), J. Stat. Softw. 67(1): reaction by day 0 to 9
const REACTIONS = `
308: 249.56 258.7047 250.8006 321.4398 356.8519 414.6901 382.2038 290.1486 430.5853 466.3535
309: 222.7339 205.2658 202.9778 204.707 207.7161 215.9618 213.6303 217.7272 224.2957 237.3142
310: 199.0539 194.3322 234.32 232.8416 229.3074 220.4579 235.4208 255.7511 261.0125 247.5153
330: 321.5426 300.4002 283.8565 285.133 285.7973 297.5855 280.2396 318.2613 305.3495 354.0487
331: 287.6079 285 301.8206 320.1153 316.2773 293.3187 290.075 334.8177 293.7469 371.5811
332: 234.8606 242.8118 272.9613 309.7688 317.4629 309.9976 454.1619 346.8311 330.3003 253.8644
333: 283.8424 289.555 276.7693 299.8097 297.171 338.1665 332.0265 348.8399 333.36 362.0428
334: 265.4731 276.2012 243.3647 254.6723 279.0244 284.1912 305.5248 331.5229 335.7469 377.299
335: 241.6083 273.9472 254.4907 270.8021 251.4519 254.6362 245.4523 235.311 235.7541 237.2466
337: 312.3666 313.8058 291.6112 346.1222 365.7324 391.8385 404.2601 416.6923 455.8643 458.9167
349: 236.1032 230.3167 238.9256 254.922 250.7103 269.7744 281.5648 308.102 336.2806 351.6451
350: 256.2968 243.4543 256.2046 255.5271 268.9165 329.7247 379.4445 362.9184 394.4872 389.0527
351: 250.5265 300.0576 269.8939 280.5891 271.8274 304.6336 287.7466 266.5955 321.5418 347.5655
352: 221.6771 298.1939 326.8785 346.8555 348.7402 352.8287 354.4266 360.4326 375.6406 388.5417
369: 271.9235 268.4369 257.2424 277.6566 314.8222 317.2135 298.1353 348.1229 340.28 366.5131
370: 225.264 234.5235 238.9008 240.473 267.5373 344.1937 281.1481 347.5855 365.163 372.2288
371: 269.8804 272.4428 277.8989 281.7895 279.1705 284.512 259.2658 304.6306 350.7807 369.4692
372: 269.4117 273.474 297.5968 310.6316 287.1726 329.6076 334.4818 343.2199 369.1417 364.1236`;

const subjects = new Map(
  REACTIONS.trim()
    .split("\n")
    .map((line) => {
      const [name, ...values] = line.split(/:? /);
      return [name!, values.map((y, x) => ({ x, y: Number(y), weight: 1 }))] as const;
    }),
);
const blank = (): RandomLine => ({ start: 0, slope: 0, startVariance: 0, slopeVariance: 0, covariance: 0 });

describe("fitRandomLine", () => {
  // Source: the closed form for a balanced design, computed outside; lme4 agrees to its tolerance
  it("matches the exact lines of three subjects, and how sure they are", () => {
    const family: RandomLine = {
      start: 251.405104848485,
      slope: 10.467285959596,
      startVariance: 612.08993866252558,
      slopeVariance: 35.07166049831741,
      covariance: 9.60433331674397,
    };
    const lines = { 308: [253.663670398, 19.66625783911], 335: [251.071409035, -0.28487312731] } as const;
    for (const [name, [start, slope]] of Object.entries(lines)) {
      const line = blank();
      fitRandomLine(lineSums(subjects.get(name)!), family, 654.941027072299, line);
      expect(line.start).toBeCloseTo(start, 8);
      expect(line.slope).toBeCloseTo(slope, 9);
      expect(Math.sqrt(line.startVariance)).toBeCloseTo(12.070836908392, 10);
      expect(Math.sqrt(line.slopeVariance)).toBeCloseTo(2.304837015227, 10);
      expect(line.covariance).toBeCloseTo(-21.444426592119, 9);
    }
  });

  // Source: lme4, maximum likelihood fit of the same model, computed outside: -2 log L = 1751.9393444632
  it("adds up to the published likelihood", () => {
    const [a, b] = [23.78056498578, 5.71683457989];
    const family: RandomLine = {
      start: 251.405104848485,
      slope: 10.467285959596,
      startVariance: a * a,
      slopeVariance: b * b,
      covariance: 0.0813199745871 * a * b,
    };
    let sum = 0;
    for (const points of subjects.values()) sum += fitRandomLine(lineSums(points), family, 25.591815832 ** 2, blank());
    expect(-2 * sum).toBeCloseTo(1751.9393444632, 6);
  });

  // By definition of a weight: two equal points of weight 1 say of the line what one of weight 2 says
  it("takes a weight for a number of points, and no points for the family", () => {
    const family: RandomLine = { start: 1, slope: -0.2, startVariance: 0.01, slopeVariance: 0.02, covariance: 0.001 };
    const [twice, once] = [blank(), blank()];
    const point = { x: 2, y: 0.7, weight: 1 };
    fitRandomLine(lineSums([point, point]), family, 0.0009, twice);
    fitRandomLine(lineSums([{ ...point, weight: 2 }]), family, 0.0009, once);
    for (const key of ["start", "slope", "startVariance", "slopeVariance", "covariance"] as const) {
      expect(twice[key]).toBeCloseTo(once[key], 12);
    }
    const none = blank();
    expect(fitRandomLine(lineSums([]), family, 0.0009, none)).toBeCloseTo(0, 12);
    expect(none.slope).toBe(-0.2);
    expect(none.slopeVariance).toBeCloseTo(0.02, 14);
  });
});
