import { describe, expect, it } from "vitest";
import { sorted } from "../../web/table-order.ts";

const order = (keys: (string | number | null)[], direction: "ascending" | "descending") =>
  sorted(
    keys.map((key, at) => ({ key, at })),
    { value: ({ key }) => key },
    direction,
  ).map(({ key, at }) => `${key}#${at}`);

describe("sorted: the rows of a table by one column", () => {
  it("orders numbers by value and names as a reader does", () => {
    expect(order([10, 9, -1], "ascending")).toEqual(["-1#2", "9#1", "10#0"]);
    expect(order(["P10", "P2", "p3"], "ascending")).toEqual(["P2#1", "p3#2", "P10#0"]);
    expect(order(["P10", "P2", "p3"], "descending")).toEqual(["P10#0", "p3#2", "P2#1"]);
  });

  it("puts what is unknown last in both directions", () => {
    expect(order([null, 2, null, 1], "ascending")).toEqual(["1#3", "2#1", "null#0", "null#2"]);
    expect(order([null, "b", "a"], "descending")).toEqual(["b#1", "a#2", "null#0"]);
  });

  it("leaves rows that say the same in their order, also where the same letters are written in two ways", () => {
    // é as one character and as e with an accent: canonically equivalent (Unicode Standard Annex 15)
    const keys = ["b", "\u00e9", "e\u0301", "\u00e9"];
    expect(order(keys, "ascending")).toEqual(["b#0", "\u00e9#1", "e\u0301#2", "\u00e9#3"]);
    expect(order(keys, "descending")).toEqual(["\u00e9#1", "e\u0301#2", "\u00e9#3", "b#0"]);
  });
});
