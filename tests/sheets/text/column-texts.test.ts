import { expect, it } from "vitest";
import { ColumnTexts } from "../../../src/sheets/text/column-texts.ts";

// By hand: what is asked for comes back, whatever texts have their hash in common.
it.each([
  ["one hash for all", () => 7],
  ["a hash for each", (at: number) => Math.imul(at, 0x9e3779b1)],
  ["hashes of few low digits", (at: number) => at << 20],
])("ColumnTexts tells texts apart under %s", (_, hashOf) => {
  const column = new ColumnTexts();
  const texts = Array.from({ length: 500 }, (_, at) => `L${at}`);
  for (let round = 0; round < 4; round++) {
    texts.forEach((text, at) => {
      const number = column.numberOf(`..${text}..`, 2, 2 + text.length, hashOf(at));
      expect(column.texts[number]).toBe(text);
    });
  }
});

it("ColumnTexts keeps one copy of a text that comes again, and lets a column of serials be", () => {
  const lots = new ColumnTexts();
  for (let at = 0; at < 3000; at++) lots.numberOf(`L${at % 3}`, 0, 2, at % 3);
  expect(lots.texts).toEqual(["L0", "L1", "L2"]);
  const serials = new ColumnTexts();
  for (let at = 0; at < 10_000; at++) serials.numberOf(`S${at}`, 0, 1 + String(at).length, at);
  serials.numberOf("S0", 0, 2, 0);
  expect([serials.texts.length, serials.texts.at(-1)]).toEqual([10_001, "S0"]);
});
