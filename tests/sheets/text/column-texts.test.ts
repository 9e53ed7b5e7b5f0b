import { expect, it } from "vitest";
import { CodedText } from "../../../src/sheets/text/coded-text.ts";
import { ColumnTexts } from "../../../src/sheets/text/column-texts.ts";

/** A column of a text of some cells, and what looks one of them up under a hash. */
function columnOf(cells: readonly string[]) {
  const column = new ColumnTexts(CodedText.of(cells.join(",")));
  let end = -1;
  const spans = cells.map((cell) => {
    const from = end + 1;
    end = from + cell.length;
    return [from, end] as const;
  });
  return { column, find: (at: number, hash: number) => column.numberOf(...spans[at]!, hash) };
}

// By hand: what is asked for comes back, whatever texts have their hash in common.
it.each([
  ["one hash for all", () => 7],
  ["a hash for each", (at: number) => Math.imul(at, 0x9e3779b1)],
  ["hashes of few low digits", (at: number) => at << 20],
])("ColumnTexts tells texts apart under %s", (_, hashOf) => {
  const texts = Array.from({ length: 500 }, (_, at) => `L${at}`);
  const { column, find } = columnOf(texts);
  for (let round = 0; round < 4; round++) {
    texts.forEach((text, at) => {
      expect(column.texts[find(at, hashOf(at))]).toBe(text);
    });
  }
});

it("ColumnTexts keeps one copy of a text that comes again, and lets a column of serials be", () => {
  const lots = columnOf(["L0", "L1", "L2"]);
  for (let at = 0; at < 3000; at++) lots.find(at % 3, at % 3);
  expect(lots.column.texts).toEqual(["L0", "L1", "L2"]);
  const serials = columnOf(Array.from({ length: 10_000 }, (_, at) => `S${at}`));
  for (let at = 0; at < 10_000; at++) serials.find(at, at);
  serials.find(0, 0);
  expect([serials.column.texts.length, serials.column.texts.at(-1)]).toEqual([10_001, "S0"]);
});
