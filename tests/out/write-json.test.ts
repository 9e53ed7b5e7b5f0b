import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonChunks } from "../../src/out/write-json.ts";
import { writePlanJson } from "../../src/out/write-plan-json.ts";
import { aPlan } from "./a-plan.ts";

const textOf = (document: object) => [...jsonChunks(document)].join("");

describe("jsonChunks", () => {
  it("says what JSON.stringify says, whatever the object", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (document) => {
        expect(JSON.parse(textOf(document))).toEqual(JSON.parse(JSON.stringify(document)));
      }),
      { seed: 5 },
    );
  });
  it("gives a line to a key, and a line to a row", () => {
    const text = textOf({
      format: "x",
      none: [],
      rows: [{ a: 1 }, { a: [2] }],
      numbers: [1, 2],
      nested: { r: [{ b: 3 }] },
    });
    expect(text).toBe(
      [
        "{",
        '  "format": "x",',
        '  "none": [],',
        '  "rows": [',
        '    {"a":1},',
        '    {"a":[2]}',
        "  ],",
        '  "numbers": [1,2],',
        '  "nested": {',
        '    "r": [',
        '      {"b":3}',
        "    ]",
        "  }",
        "}",
        "",
      ].join("\n"),
    );
  });
  it("hands on chunks before all is written", () => {
    const rows = Array.from({ length: 5000 }, (_, index) => ({ index, text: "some text that takes its room" }));
    expect([...jsonChunks({ rows })].length).toBeGreaterThan(3);
  });
});

describe("writePlanJson", () => {
  it("gives each pack and order its own line, and the same bytes every time", () => {
    const text = [...writePlanJson(aPlan())].join("");
    expect(text.split("\n").filter((line) => line.startsWith('    {"serial":"M2'))).toHaveLength(2);
    expect(text.split("\n").filter((line) => line.startsWith('    {"id":'))).toHaveLength(1);
    expect([...writePlanJson(aPlan())].join("")).toBe(text);
  });
});
