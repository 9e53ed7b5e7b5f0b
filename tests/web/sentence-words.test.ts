import { afterEach, describe, expect, it } from "vitest";
import { dayWords, moneyWords, monthWords, sentenceWords, setIsoDates } from "../../web/format.ts";

afterEach(() => setIsoDates(false));

describe("sentenceWords: a sentence of the engine as the reader writes dates and money", () => {
  it.each([
    ["It arrives on 2026-11-22 at the earliest.", `It arrives on ${dayWords("2026-11-22")} at the earliest.`],
    ["7 fall due in 2026-12, 9 by 2027-04.", `7 fall due in ${monthWords("2026-12")}, 9 by ${monthWords("2027-04")}.`],
    ["2 packs fewer, EUR 253.00 less.", `2 packs fewer, ${moneyWords(25300, "EUR")} less.`],
    ["Replacing costs 29.40 EUR.", `Replacing costs ${moneyWords(2940, "EUR")}.`],
    ["Replacing costs 1,253.00 EUR.", `Replacing costs ${moneyWords(125300, "EUR")}.`],
    ["2 packs fewer, EUR 1,234,567.80 less.", `2 packs fewer, ${moneyWords(123456780, "EUR")} less.`],
    ["2 packs fewer, KWD 1,253.500 less.", `2 packs fewer, ${moneyWords(1253500, "KWD")} less.`],
  ])("rewrites %j", (sentence, expected) => {
    expect(sentenceWords(sentence)).toBe(expected);
  });

  it.each([
    "Lot 2027-13 and lot A2027-03B stay.",
    "Lots B-2022-03, 2022-03-A and C_2022-03-15 stay.",
    "JPY 1200 has no minor unit.",
    "95 % of 12.50 Wh",
    "0.12.50 EUR",
  ])("leaves %j as it is", (sentence) => expect(sentenceWords(sentence)).toBe(sentence));

  it("keeps ISO dates where the reader switched to them", () => {
    setIsoDates(true);
    expect(sentenceWords("Late: 2026-11-22.")).toBe("Late: 2026-11-22.");
  });
});
