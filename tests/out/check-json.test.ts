import { describe, expect, it } from "vitest";
import { checkJson } from "../../src/out/check-json.ts";
import { checkSchema } from "../../src/out/check-schema.ts";
import { checkText } from "../../src/out/check-text.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, textFile } from "../sheets/sheet-file.ts";

const reading = readSheets(
  [
    textFile("packs.csv", "Serial,Item,Cycles,Comment\n000817,pack-md,214,ok\n,pack-md,3,\n"),
    textFile("notes.txt", "nothing to see\n"),
  ],
  { asOf: AS_OF, dateOrder: null },
);

describe("checkJson", () => {
  const check = checkJson(reading, AS_OF);
  it("makes a check of the format", () => {
    expect(checkSchema.safeParse(check).error).toBeUndefined();
    expect(Object.keys(check)).toEqual(["format", "asOf", "inputs", "setAside", "findings", "refused", "fleet"]);
    expect(check.inputs[0]).toMatchObject({ file: "packs.csv", rows: 2, used: 1, setAside: 1, headerLines: [1] });
    expect(check.inputs[0]?.columns.map(({ header, field }) => [header, field])).toEqual([
      ["Serial", "serial"],
      ["Item", "item"],
      ["Cycles", "cycles"],
      ["Comment", null],
    ]);
  });
  it("keeps the leading zeros of a serial number and says where the row stood", () => {
    expect(check.fleet.packs).toEqual([
      expect.objectContaining({
        serial: "000817",
        cycles: 214,
        source: { file: "packs.csv", sheet: null, line: 2 },
      }),
    ]);
  });
});

describe("checkText", () => {
  const text = checkText(
    { ...reading, refused: [{ file: "x.csv", code: "not-found", message: "Gone." }] },
    "2026-11-01",
    {
      width: 80,
    },
  );
  it("tells each column, row and refusal once", () => {
    expect(text).toMatch(/packs\.csv +packs +1 +2 +1 +1\n/);
    expect(text).toMatch(/ 4 +Comment +not read +-\n/);
    expect(text.match(/missing-required/g)).toHaveLength(1);
    expect(text).toContain("packs.csv, line 3: ");
    expect(text).toContain("note: notes.txt: ");
    expect(text).toContain("Refused\n- x.csv: Gone. [not-found]\n");
  });
  it("tells errors before warnings before notes, a header's unread columns together, and rows of one reason together", () => {
    const sheet =
      "Serial,Item,Cycles,Installed,Colour,Comment\nA,p,many,2024-01-01,red,x\nB,p,4,03/04/2024,red,\n,p,4,,,\n,p,5,,,\n";
    const lines = checkText(readSheets([textFile("p.csv", sheet)], { asOf: AS_OF, dateOrder: null }), "2026-11-01", {
      width: 200,
    });
    expect(lines.match(/^(error|warning|note): /gm)).toEqual(["warning: ", "warning: ", "note: "]);
    expect(lines).toContain(
      'note: p.csv, line 1: Nothing is read from the columns "Colour" and "Comment". [column-unread]\n',
    );
    expect(lines).toContain(
      'p.csv, line 4: Nothing stands in column "Serial" (A). Also on line 5. [missing-required]\n',
    );
  });
  it("tells a table that is set aside whole once", () => {
    const unknown = readSheets([textFile("x.csv", "Quarx,Blorb,Fnord\nA,1,2\nB,3,4\nC,5,6\n")], {
      asOf: AS_OF,
      dateOrder: null,
    });
    const lines = checkText(unknown, "2026-11-01", { width: 200 });
    expect(lines.match(/unknown-table/g)).toHaveLength(1);
    expect(lines).toMatch(
      /x\.csv, line 2: The columns .* Also on lines 3, 4\. \[unknown-table\]\n {2}Fix: Rename its columns/,
    );
  });
  it("counts what repeats instead of telling it all", () => {
    const rows = Array.from({ length: 9 }, (_, index) => `M-${index},${2010 + index}-02-30,80\n`).join("");
    const many = readSheets([textFile("tests.csv", `serial,date,percent\n${rows}`)], { asOf: AS_OF, dateOrder: null });
    const lines = checkText(many, "2026-11-01", { width: 80 });
    expect(lines.match(/tests\.csv, line \d+: /g)).toHaveLength(5);
    expect(lines).toContain("tests.csv: 4 more like it [date-impossible]; --json gives all.");
  });
});
