import { expect, it } from "vitest";
import { dueRangeText, dueText } from "../../src/out/due-text.ts";
import { aPlan } from "./a-plan.ts";

type ReplaceBy = ReturnType<typeof aPlan>["packs"][number]["replaceBy"];

const packWith = (replaceBy: Partial<ReplaceBy>) => {
  const [pack] = aPlan().packs;
  return { ...pack!, replaceBy: { ...pack!.replaceBy, ...replaceBy } };
};

it("dueText tells a date within the plan, and of a later one only that it is later", () => {
  const due = (kind: ReplaceBy["kind"], p50: string | null) => dueText(packWith({ kind, p50 }), "2029-10");
  expect(due("within-horizon", "2029-10-31")).toBe("2029-10-31");
  expect(due("beyond-horizon", "2031-05-01")).toBe("after 2029-10");
  expect(due("beyond-horizon", null)).toBe("after 2029-10");
  expect(due("already-due", "2026-11-01")).toBe("now");
  expect(due("no-forecast", null)).toBe("no forecast");
});

it("dueRangeText tells months, and a hyphen where there is nothing to doubt", () => {
  const range = (p10: string | null, p90: string | null) =>
    dueRangeText(packWith({ kind: "within-horizon", p10, p90 }));
  expect(range("2027-03-05", "2028-02-14")).toBe("2027-03 to 2028-02");
  expect(range("2027-03-05", null)).toBe("2027-03 to never");
  expect(range("2026-11-01", "2026-11-01")).toBe("-");
});
