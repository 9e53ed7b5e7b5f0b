import { describe, expect, it } from "vitest";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { primaryEndInForce, thresholdInForce } from "../../src/fleet/threshold-in-force.ts";

const source = { file: "policy.csv", sheet: null, line: 2 };
const fleetWith = (key: string, value: string) => ({ ...emptyFleet(), policy: [{ key, value, source }] });

describe("thresholdInForce", () => {
  it("is the policy sheet's, else 80 %", () => {
    expect(thresholdInForce(emptyFleet())).toBe(0.8);
    expect(thresholdInForce(fleetWith("End_of_life_percent ", "70"))).toBe(0.7);
  });
  it("is 80 % where the sheet's value is one that a plan refuses", () => {
    expect(thresholdInForce(fleetWith("end_of_life_percent", "3"))).toBe(0.8);
    expect(thresholdInForce(fleetWith("end_of_life_percent", "low"))).toBe(0.8);
  });
});

describe("primaryEndInForce", () => {
  it("is the policy sheet's, down to an empty battery, else 10 %", () => {
    expect(primaryEndInForce(emptyFleet())).toBe(0.1);
    expect(primaryEndInForce(fleetWith("primary_end_percent", "20"))).toBe(0.2);
    expect(primaryEndInForce(fleetWith("primary_end_percent", "0"))).toBe(0);
  });
});
