import { expect, it } from "vitest";
import { sortBy } from "../../src/maths/sort-by.ts";

it("sortBy: null first, numbers by size, text by code unit and not by any locale", () => {
  const rows = [{ k: "b" }, { k: "é" }, { k: "B" }, { k: null }, { k: "a" }];
  expect(sortBy(rows, (row) => [row.k]).map((row) => row.k)).toEqual([null, "B", "a", "b", "é"]);
  expect(sortBy([10, 9, 100], (n) => [n])).toEqual([9, 10, 100]);
});

it("sortBy: leaves what it is given as it stands, and keeps the order of equals", () => {
  const rows = Object.freeze([
    { k: 1, n: "first" },
    { k: 1, n: "second" },
    { k: 0, n: "third" },
  ]);
  expect(sortBy(rows, (row) => [row.k]).map((row) => row.n)).toEqual(["third", "first", "second"]);
});

it("sortBy: many rows of few values come in the order of all parts, equals as they stood", () => {
  const rows = Array.from({ length: 500 }, (_, n) => ({
    a: (n * 7) % 3,
    b: (n * 5) % 4 === 0 ? null : `${(n * 5) % 4}`,
    n,
  }));
  const order = (x: (typeof rows)[number], y: (typeof rows)[number]) =>
    x.a - y.a || (x.b ?? "").localeCompare(y.b ?? "") || x.n - y.n;
  expect(sortBy(rows, (row) => [row.a, row.b])).toEqual([...rows].sort(order));
});
