import { expect, it } from "vitest";
import { say } from "../../web/strings.ts";

it("says of a month in which one delivery lapses no more than that it is not crowded", () => {
  // 200 units of one lot in one store are no crowd (src/supplies/crowded-months.ts), and no even spread either
  expect(say.dates.caption(0, 14, "")).toContain("falls due 14 days before it expires");
  expect(say.dates.caption(0, 14, "")).toContain("No month is crowded; that takes at least five units of an item");
  expect(say.dates.caption(2, 1, "May 2027 (gel) and June 2027 (gel)")).toMatch(
    /falls due 1 day before .* Crowded are May 2027 \(gel\) and June 2027 \(gel\); that takes/,
  );
});

it("counts one of a thing in the singular", () => {
  expect(say.firstLook.caption(1, 1)).toMatch(/^1 capacity reading of 1 pack of all items/);
  expect(say.firstLook.at("0–1", 1, "98 %")).toBe("0–1 years: 1 reading, 98 % in the middle");
});

it("asks for no runtime test of packs among which may be some that a test would spend", () => {
  // a battery that does not recharge is used up by it: common practice, no source
  expect(say.ahead.uncertain.typical(2, 3)).toBe(
    "2 of 3 packs have no reading of their own: the forecast takes them for typical. One capacity reading each would tell most.",
  );
});
