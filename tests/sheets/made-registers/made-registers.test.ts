import { describe, expect, it } from "vitest";
import { read } from "../sheet-file.ts";
import { ABROAD, type Language } from "./abroad.ts";
import { ABOUT } from "./headings.ts";
import { madeRegister } from "./made-register.ts";
import { misreadColumns } from "./misread-columns.ts";

const REGISTERS = 250;
const REGISTERS_ABROAD = 100;

/** What is read otherwise than its heading means, in words; empty where all is well. */
function misread(seed: number, language: Language | null = null): string[] {
  const { topics, headings, text } = madeRegister(seed, language);
  const columns = topics.map((topic) => ABOUT[topic]);
  const wrong = misreadColumns(columns, headings, read({ "register.csv": text }));
  return wrong.map((what) => `${what}, in ${headings.join(" | ")}`);
}

describe("registers of one line a device", () => {
  it("are read as their headings mean, whichever stand there and in which words", () => {
    const wrong = Array.from({ length: REGISTERS }, (_, seed) => misread(seed + 1)).flat();
    expect(wrong).toEqual([]);
  });

  it.each(Object.entries(ABROAD))("are read as their headings mean in %s", (_, language) => {
    const wrong = Array.from({ length: REGISTERS_ABROAD }, (_, seed) => misread(seed + 1, language)).flat();
    expect(wrong).toEqual([]);
  });
});
