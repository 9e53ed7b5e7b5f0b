import { describe, expect, it } from "vitest";
import { canonicalRows } from "../../src/sheets/canonical-rows.ts";
import { readScans } from "../../src/sheets/read-scans.ts";
import { AS_OF, textFile } from "./sheet-file.ts";

// The element strings are those of tests/sheets/labels/read-label.test.ts, with their sources there.
const SCANS = `]C1010950110153000310ABC123<GS>17250101

(01)09506000134352(17)270131(10)A1(30)12
0109506000134353
+A99912345/$$52001510X33
hello
`;

describe("readScans", () => {
  const options = { asOf: AS_OF, dateOrder: null };

  it("reads one label a line, with findings that name the line", () => {
    const { fleet, inputs, setAside, findings } = readScans(textFile("-", SCANS), options);
    expect(canonicalRows(fleet).dated_stock).toMatchObject([
      { item: "09501101530003", lot: "ABC123", expiry: "2025-01-01", quantity: 1 },
      { item: "09506000134352", lot: "A1", expiry: "2027-01-31", quantity: 12 },
      { item: "A9991234", lot: "10X3", expiry: "2020-01-15" },
    ]);
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([
      [4, "label-unreadable"],
      [6, "label-unreadable"],
    ]);
    expect(inputs).toMatchObject([{ file: "-", kinds: ["dated_stock"], rows: 5, used: 3, setAside: 2 }]);
    expect(findings.map(({ code, line, lines }) => [code, line, lines])).toEqual([["label-unreadable", 4, [6]]]);
  });

  it("takes items' names from a catalogue's GTINs, with or without leading zeros", () => {
    const catalogue = textFile("c.csv", "item,kind,gtin\nPADS-A,pads,9506000134352\n");
    const { fleet } = readScans(textFile("-", SCANS), options, [catalogue]);
    expect(fleet.datedStock.map(({ item }) => item)).toEqual(["09501101530003", "PADS-A", "A9991234"]);
    expect(fleet.catalogue).toEqual([]);
  });

  // By hand: the values of +A99912345/$$3270600L3 add up to 253 = 5 x 43 + 38, and 38 is the blank.
  it("keeps a blank that is a HIBC's check character, in the label as the underscore printed for it", () => {
    const { fleet, setAside } = readScans(
      textFile("-", "+A99912345/$$3270600L3 \n+A99912345/$$52001510X33 \n"),
      options,
    );
    expect(fleet.datedStock).toMatchObject([
      { lot: "L3", label: "+A99912345/$$3270600L3_" },
      { lot: "10X3", label: "+A99912345/$$52001510X33" },
    ]);
    expect(setAside).toEqual([]);
  });

  it("sets a label scanned twice aside once where it bears a serial", () => {
    const scan = "(01)09506000134352(17)270131(21)S1\n";
    const { fleet, setAside } = readScans(textFile("-", scan + scan), options);
    expect(fleet.datedStock).toHaveLength(1);
    expect(setAside.map(({ reason }) => reason)).toEqual(["repeat"]);
  });
});
