import { describe, expect, it } from "vitest";
import { misreadColumns } from "../made-registers/misread-columns.ts";
import { read } from "../sheet-file.ts";
import { LISTS, type ListKind } from "./lists.ts";
import { madeList } from "./made-list.ts";

const LISTS_OF_A_KIND = 100;

/** What is read otherwise than its heading means, in words; empty where all is well. */
function misread(list: ListKind, seed: number): string[] {
  const { columns, headings, text } = madeList(list, seed);
  const reading = read({ "list.csv": text });
  const kinds = reading.inputs[0]?.kinds ?? [];
  const wrong = kinds.includes(list.kind) ? [] : [`the list is read as ${kinds.join(" and ") || "nothing"}`];
  return [...wrong, ...misreadColumns(columns, headings, reading)].map((what) => `${what}, in ${headings.join(" | ")}`);
}

describe("lists of one kind of thing", () => {
  it.each(Object.entries(LISTS))("are read as their headings mean: %s", (_, list) => {
    const wrong = Array.from({ length: LISTS_OF_A_KIND }, (_, seed) => misread(list, seed + 1)).flat();
    expect(wrong).toEqual([]);
  });
});
