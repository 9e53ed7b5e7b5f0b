import { describe, expect, it } from "vitest";
import { signsTold } from "../../src/out/plan-signs.ts";

const signs = ["A", "B", "C"].map((says) => ({
  kind: "pack" as const,
  item: "pack-md",
  name: says,
  packs: 1,
  timesAsFast: { p10: 1.2, p50: 1.5, p90: 1.9 },
  atLeast: 1.25,
  chance: 0.9,
  inService: 1,
  dueWithinYear: 1,
  says,
}));

describe("signsTold", () => {
  it("tells the first, the fastest, and how many more there are", () => {
    expect(signsTold({ earlySigns: signs }, 2, "plan.json")).toEqual(["A", "B", "1 more in plan.json."]);
    expect(signsTold({ earlySigns: signs }, 1, "plan.json")).toEqual(["A", "2 more in plan.json."]);
  });
  it("tells all and nothing more where there is room for all", () => {
    expect(signsTold({ earlySigns: signs }, 3, "plan.json")).toEqual(["A", "B", "C"]);
  });
});
