import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { decodeText } from "../../../src/sheets/text/decode-text.ts";
import { recordsOfFile, textRecords } from "../../../src/sheets/text/records.ts";

const cells = (text: string) =>
  textRecords(text, 1000)
    .rows.map((row) => row.cells)
    .filter((row) => row.join("") !== "");

describe("textRecords", () => {
  // Source: RFC 4180, section 2, rules 1 to 7 and their examples.
  it.each([
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      "aaa,bbb,ccc\r\nzzz,yyy,xxx",
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ["aaa", "b\nbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ],
    ],
    ['"aaa","b""bb","ccc"', [["aaa", 'b"bb', "ccc"]]],
    ["a, b ,c\r\n", [["a", " b ", "c"]]],
    [
      "a,,c\r\nb,,d",
      [
        ["a", "", "c"],
        ["b", "", "d"],
      ],
    ],
  ])("parts %j", (text, expected) => {
    expect(cells(text)).toEqual(expected);
  });

  // Common practice, no source.
  it("takes the separator from a sep= line, which is a physical line all the same", () => {
    const { rows, separator } = textRecords("sep=;\na;b\n1,5;2\n", 1000);
    expect(separator).toBe(";");
    expect(rows[0]).toEqual({ line: 2, cells: ["a", "b"] });
  });

  it.each([
    ["a;b\n1,5;2,5\n3,5;4\n", ";"],
    ["a\tb\n1,5\t2\n", "\t"],
    ["a|b\n1|2\n", "|"],
    ["title\n\na,b,c\n1,2,3\n4,5,6\n", ","],
  ])("tells the separator of %j", (text, separator) => {
    expect(textRecords(text, 1000).separator).toBe(separator);
  });

  it("gives each record the line on which it starts, also past a quote that never closes", () => {
    const { rows, openQuotes } = textRecords('a,b\n"x\ny",1\n12" tape,2\n"open,3\nz,4\n', 1000);
    expect(rows.slice(0, 5).map(({ line, cells: row }) => [line, row])).toEqual([
      [1, ["a", "b"]],
      [2, ["x\ny", "1"]],
      [4, ['12" tape', "2"]],
      [5, ['"open', "3"]],
      [6, ["z", "4"]],
    ]);
    expect(openQuotes).toEqual([5]);
  });
});

describe("decodeText", () => {
  const utf16 = (text: string, little: boolean) =>
    Uint8Array.from(
      text.split("").flatMap((letter) => (little ? [letter.charCodeAt(0), 0] : [0, letter.charCodeAt(0)])),
    );

  it.each([
    ["utf-8", new TextEncoder().encode("é,1")],
    ["utf-8", new TextEncoder().encode("\ufeffé,1")],
    ["windows-1252", Uint8Array.from([0xe9, 0x2c, 0x31])],
    ["utf-16le", Uint8Array.from([0xff, 0xfe, 0xe9, 0, 0x2c, 0, 0x31, 0])],
    ["utf-16be", Uint8Array.from([0xfe, 0xff, 0, 0xe9, 0, 0x2c, 0, 0x31])],
  ])("reads %s", (encoding, bytes) => {
    expect(decodeText(bytes)).toEqual({ text: "é,1", encoding });
  });

  // https://encoding.spec.whatwg.org/index-windows-1252.txt: 80 is U+20AC, 92 is U+2019, 96 is U+2013, 8C is U+0152
  it("knows the characters that Windows-1252 has and Latin-1 has not", () => {
    const bytes = Uint8Array.from([0x80, 0x20, 0x34, 0x2c, 0x35, 0x92, 0x96, 0x8c, 0xe9]);
    expect(decodeText(bytes)).toEqual({ text: "\u20ac 4,5\u2019\u2013\u0152é", encoding: "windows-1252" });
  });

  it("tells UTF-16 without a mark, and drops NUL characters", () => {
    expect(decodeText(utf16("serial,cycles", true))).toEqual({ text: "serial,cycles", encoding: "utf-16le" });
    expect(decodeText(utf16("serial,cycles", false))).toEqual({ text: "serial,cycles", encoding: "utf-16be" });
    expect(decodeText(new TextEncoder().encode("a\u0000b,c")).text).toBe("ab,c");
  });
});

// A text without quotes is its lines, each parted at every separator.
it("textRecords: cells that repeat by the thousand, and cells that never do, come as they stand", () => {
  const lines = Array.from(
    { length: 3000 },
    (_, n) => `S${n},2027-01-${10 + (n % 9)},${n % 4 === 0 ? "" : "van"},é${n % 2}`,
  );
  const text = ["serial,expiry,type,name", ...lines, "last"].join("\n");
  const { rows } = textRecords(text, 10_000);
  expect(rows.map((row) => row.cells)).toEqual(text.split("\n").map((line) => line.split(",")));
  expect(rows.map((row) => row.line)).toEqual(rows.map((_, at) => at + 1));
  // Source: RFC 4180, section 2, rule 2: the last record may or may not end in a line break.
  expect(textRecords(`${text}\n`, 10_000).rows.at(-1)!.cells).toEqual(["last"]);
  expect(textRecords(`${text}\n\n`, 10_000).rows.at(-1)!.cells).toEqual([""]);
  expect(textRecords(`"${text}"\n`, 10_000).rows).toHaveLength(1);
  expect(textRecords(text, 7).rows).toHaveLength(7);
});

// Bytes of ASCII are compared as they are, and other texts once they are decoded: both part them alike.
it("recordsOfFile finds in a file's bytes the records of its text", () => {
  const characters = fc.constantFrom("a", "b", "1", ",", ",", "\n", "\r\n", "\r", ";", "é", '"', " ");
  fc.assert(
    fc.property(fc.array(characters, { maxLength: 60 }), (parts) => {
      const text = parts.join("");
      const told = recordsOfFile("f.csv", new TextEncoder().encode(text), 1000);
      const plain = told.rows.map(({ line, cells: row }) => ({ line, cells: row }));
      expect({ ...told, rows: plain }).toEqual(textRecords(text, 1000));
    }),
    { seed: 1, numRuns: 500 },
  );
});

// Source: RFC 4180, section 2, rules 1 and 2; "-" for cells that stand once, so that parts are cut from the whole text.
it("recordsOfFile gives cells as they stand, few or many of them different", () => {
  const lines = Array.from({ length: 2000 }, (_, n) => [
    `S-${n}`,
    `a remark of more than forty characters, ${n}`.replace(",", " -"),
    "van",
  ]);
  const bytes = new TextEncoder().encode(lines.map((line) => line.join(";")).join("\r\n"));
  const { rows, separator } = recordsOfFile("f.csv", bytes, 10_000);
  expect(separator).toBe(";");
  expect(rows.map((row) => row.cells)).toEqual(lines);
});
