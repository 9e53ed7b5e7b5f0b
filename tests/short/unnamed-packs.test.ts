import { expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { makePlan } from "../../src/plan.ts";
import { AS_OF, read } from "../sheets/sheet-file.ts";

// Two devices whose only packs failed their last test lack a good pack until others come, whatever the packs are called.
const TESTS = "serial,date,result\nB-1,2026-10-01,fail\nB-2,2026-10-01,fail\nB-3,2026-10-01,pass\n";
const ROWS = [
  ["B-1", "E-1"],
  ["B-2", "E-2"],
  ["B-3", "E-3"],
];

const shortNow = (header: string, item: string) => {
  const packs = ROWS.map(([serial, device]) => `${serial},${device},2025-01-01${item}`).join("\n");
  const plan = makePlan(read({ "packs.csv": `${header}\n${packs}\n`, "tests.csv": TESTS }), defaultPolicy(AS_OF));
  return plan.short[0]!;
};

it("counts devices whose packs have no item as short, like those whose packs have one", () => {
  const unnamed = shortNow("serial,device,in_service", "");
  const named = shortNow("serial,device,in_service,item", ",pack-x");
  expect(unnamed.devices).toBe(3);
  expect(unnamed.withoutBuying.expected).toBeGreaterThanOrEqual(2);
  expect(unnamed.withoutBuying.expected).toBeLessThan(2.5);
  expect(unnamed.withoutBuying.expected).toBeCloseTo(named.withoutBuying.expected, 1);
});
