import { describe, expect, it } from "vitest";
import { read } from "../sheet-file.ts";
import { ABOUT, type About } from "./headings.ts";
import { madeRegister } from "./made-register.ts";

const REGISTERS = 250;

/** What is read otherwise than its heading means, in words; empty where all is well. */
function misread(seed: number): string[] {
  const { topics, headings, text } = madeRegister(seed);
  const reading = read({ "register.csv": text });
  const [table] = reading.inputs;
  const wrong = topics.flatMap((topic, at) => {
    const about: About = ABOUT[topic];
    const fields = (table?.columns ?? []).flatMap(({ column, kind, field }) =>
      column === at + 1 && kind !== null ? [`${kind}.${field}`] : [],
    );
    const lacks = fields.length === 0 && about.fields.length > 0 && about.spare !== true;
    return lacks || fields.some((field) => !about.fields.includes(field))
      ? [`${headings[at]} is read as ${fields.join(", ") || "nothing"}`]
      : [];
  });
  const aside = reading.setAside.map(({ line, message }) => `line ${line} is set aside: ${message}`);
  return [...wrong, ...aside].map((what) => `${what}, in ${headings.join(" | ")}`);
}

describe("registers of one line a device", () => {
  it("are read as their headings mean, whichever stand there and in which words", () => {
    const wrong = Array.from({ length: REGISTERS }, (_, seed) => misread(seed + 1)).flat();
    expect(wrong).toEqual([]);
  });
});
