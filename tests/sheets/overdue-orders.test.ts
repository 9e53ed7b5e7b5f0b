import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const overdue = (sheet: string) =>
  read(sheet).findings.flatMap(({ code, line, lines }) => (code === "order-overdue" ? [line, ...lines] : []));

// by hand, as of 1 November 2026
describe("an order whose day of arrival has passed", () => {
  it("is told, since it counts as still to come", () => {
    const sheet = "item,quantity,arrives\nA,10,2026-03-13\nB,5,2026-10-31\nC,5,2026-11-01\nD,5,2026-11-02\nE,5,\n";
    expect(overdue(sheet)).toEqual([2, 3]);
    expect(read(sheet).fleet.onOrder).toHaveLength(5);
  });

  it("is not told where it has come or was cancelled", () => {
    expect(overdue("item,quantity,arrives,status\nA,10,2026-03-13,received\nB,5,2026-03-14,cancelled\n")).toEqual([]);
  });
});
