import { describe, expect, it } from "vitest";
import { columnChoices } from "../../src/sheets/mapping/column-choices.ts";
import { columnsFileOf } from "../../src/sheets/mapping/columns-as-read.ts";
import { textFile } from "./sheet-file.ts";

describe("columnChoices", () => {
  it("names each column as a columns file does, with the first three different values that it holds", () => {
    const text =
      "Serial No,Note,Note,,In service\n" +
      "A, swollen ,,x,2024-02-13\n" +
      "B,,,y,2024-02-13\n" +
      "C,swollen,late,z,2024-02-14\n" +
      "D,dropped,,,2024-02-15\n" +
      "E,lent,,,2024-02-16\n" +
      "F,lost,,,2024-02-17\n";
    expect(columnChoices([textFile("a.csv", text)], null)).toEqual([
      {
        file: "a.csv",
        sheet: null,
        table: 1,
        columns: [
          {
            column: 1,
            key: "Serial No",
            examples: ["A", "B", "C"],
            recognised: [{ kind: "packs", field: "serial", by: "header" }],
          },
          { column: 2, key: "Note", examples: ["swollen", "dropped", "lent"], recognised: [] },
          { column: 3, key: "Note #2", examples: ["late"], recognised: [] },
          // without a header no columns file can name it, but people can see what it holds
          { column: 4, key: null, examples: ["x", "y", "z"], recognised: [] },
          {
            column: 5,
            key: "In service",
            examples: ["2024-02-13", "2024-02-14", "2024-02-15"],
            recognised: [{ kind: "packs", field: "in_service", by: "header" }],
          },
        ],
      },
    ]);
  });

  it("tells a file's tables apart, and one file's from another's", () => {
    const two =
      "serial,in_service\nA,2024-02-13\nB,2024-02-14\n\nitem,expiry,quantity\npads,2027-02-28,2\ngel,2027-03-31,3\n";
    const choices = columnChoices([textFile("a.csv", two), textFile("b.csv", "supplier,order_fee\nAcre,5.00\n")], null);
    expect(choices.map(({ file, table, columns }) => [file, table, columns.map(({ key }) => key)])).toEqual([
      ["a.csv", 1, ["serial", "in_service"]],
      ["a.csv", 2, ["item", "expiry", "quantity"]],
      ["b.csv", 1, ["supplier", "order_fee"]],
    ]);
  });

  it("tells what a column is recognised as, whatever a columns file gives it to", () => {
    const files = [textFile("a.csv", "serial,in_service,zzz\nA,2024-02-13,Van 1\nB,2024-02-14,Van 2\n")];
    const read = columnsFileOf(files);
    read.tables[0]!.rows[0]!.columns.device = "zzz";
    const [choice] = columnChoices(files, read);
    expect(choice!.columns.map(({ recognised }) => recognised)).toEqual([
      [{ kind: "packs", field: "serial", by: "header" }],
      [{ kind: "packs", field: "in_service", by: "header" }],
      [],
    ]);
  });

  it("holds every column that the columns file of the same sheets names", () => {
    const text = "Asset No,Batt S/N,Pad 1 exp,Pad 1 lot,Remarks\nD1,B1,2027-01-31,L1,x\nD2,B2,2027-03-31,L2,y\n";
    const files = [textFile("a.csv", text)];
    const [choice] = columnChoices(files, null);
    const [table] = columnsFileOf(files).tables;
    const named = [...table!.rows.flatMap(({ columns }) => Object.values(columns)), ...table!.unread];
    expect(named.length).toBeGreaterThan(4);
    for (const key of named) expect(choice!.columns.map((column) => column.key)).toContain(key);
  });
});
