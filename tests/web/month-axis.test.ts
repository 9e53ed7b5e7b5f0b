import { describe, expect, it } from "vitest";
import { monthAxisLabel } from "../../web/charts/month-axis.ts";
import { monthsBetween } from "../../web/months.ts";

const labels = (from: string, to: string, width: number) => {
  const months = monthsBetween(from, to);
  const label = monthAxisLabel(months);
  return months.map((_, at) => label.call({ chart: { width } } as never, undefined, at));
};

describe("labels of a month axis", () => {
  it("name the first month where it stands clear of the first quarter", () => {
    const wide = labels("2026-11", "2029-10", 1080);
    expect(wide.slice(0, 3).map((label) => [label].flat().join(" "))).toEqual(["Nov 2026", "", "Jan 2027"]);
    expect(labels("2026-12", "2029-11", 1080)[0]).toBeUndefined();
    expect(labels("2026-11", "2029-10", 600)[0]).toBeUndefined();
  });

  it("are years alone on a narrow chart", () => {
    const narrow = labels("2026-11", "2029-10", 300).filter((label) => label !== undefined);
    expect(narrow).toEqual(["2027", "2028", "2029"]);
  });
});
