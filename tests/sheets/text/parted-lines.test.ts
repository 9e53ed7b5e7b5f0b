import { writeXlsx } from "hucre/xlsx";
import { describe, expect, it } from "vitest";
import { openWorkbooks } from "../../../src/sheets/open-file.ts";
import { readSheets } from "../../../src/sheets/read-sheets.ts";
import type { Reading } from "../../../src/sheets/reading.ts";
import { AS_OF, read, textFile } from "../sheet-file.ts";

const OPTIONS = { asOf: AS_OF, dateOrder: null };

/** A workbook of one tab as a program leaves it that parts cells at another character: each line in its first cell. */
async function inFirstCells(text: string) {
  const rows = text.split("\n").map((line) => (line === "" ? [] : [line]));
  return { name: "fleet.xlsx", bytes: await writeXlsx({ sheets: [{ name: "fleet", rows }] }) };
}

/** What was read, but for where. */
const facts = ({ fleet }: Reading) =>
  JSON.parse(JSON.stringify(fleet, (key, value) => (key === "source" ? undefined : value)));

const REGISTER =
  "Device;Battery;In service;Pads expiry\nAED 1;B1;2023-03-14;2027-05-31\nAED 2;B2;2024-02-29;2028-01-31";

describe("lines that stand whole in their first cells", () => {
  it("are read as the text that they were, of a workbook", async () => {
    const file = await inFirstCells(REGISTER);
    await openWorkbooks([file]);
    expect(facts(readSheets([file], OPTIONS))).toEqual(facts(read({ "fleet.csv": REGISTER })));
  });

  it("are read so of a text, in which they are quoted", () => {
    const quoted = REGISTER.split("\n").map((line) => `"${line}"`);
    expect(facts(read({ "fleet.csv": quoted.join("\n") }))).toEqual(facts(read({ "fleet.csv": REGISTER })));
  });

  it("keep their line numbers below a title and a blank line, and decimal commas", async () => {
    const file = await inFirstCells("Tests of June\n\nSerial;Date;Minutes\nB1;2026-06-01;182,5\nB2;2026-06-31;170,5");
    await openWorkbooks([file]);
    const { fleet, setAside } = readSheets([file], OPTIONS);
    expect(fleet.runtimeTests).toMatchObject([{ serial: "B1", minutes: 182.5 }]);
    // 31 June is no day
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([[5, "date-impossible"]]);
  });

  it("may be corrected by the columns that are shown of them", async () => {
    const corrections = [{ sheet: "fleet", line: 3, column: 4, text: "2029-01-31" }];
    const file = { ...(await inFirstCells(REGISTER)), corrections };
    await openWorkbooks([file]);
    expect(readSheets([file], OPTIONS).fleet.datedStock.map(({ place, expiry }) => [place, expiry])).toEqual(
      read({ "fleet.csv": REGISTER.replace("2028-01-31", "2029-01-31") }).fleet.datedStock.map(({ place, expiry }) => [
        place,
        expiry,
      ]),
    );
  });

  it("are left where they are a list of single things, remarks or lines of several lengths", () => {
    const serials = "Serial\nB1\nB2\n";
    expect(read({ "packs.csv": serials }).fleet.packs.map(({ serial }) => serial)).toEqual(["B1", "B2"]);
    for (const text of ['"Pads, gel"\nSee the cupboard\n', '"a;b;c"\n"a;b"\n"a;b;c;d"\n']) {
      const [input] = read({ "notes.csv": text }).inputs;
      expect(input?.kinds ?? []).toEqual([]);
    }
  });
});

describe("a text that was read in the wrong code", () => {
  // "Péremption", "Quantité", "Électrodes", "Réserve" in UTF-8, each byte then taken for a character of Windows-1252
  const MISREAD = "Article;PÃ©remption;QuantitÃ©;Emplacement\nÃ‰lectrodes adulte;31/03/2027;4;RÃ©serve\n";
  const MEANT = "Article;Péremption;Quantité;Emplacement\nÉlectrodes adulte;31/03/2027;4;Réserve\n";

  it("is read as it was meant, of a text and of a workbook", async () => {
    expect(facts(read({ "stock.csv": MISREAD }))).toEqual(facts(read({ "stock.csv": MEANT })));
    const file = await inFirstCells(MISREAD.trimEnd());
    await openWorkbooks([file]);
    expect(facts(readSheets([file], OPTIONS))).toEqual(facts(read({ "stock.csv": MEANT })));
  });

  it("is left as it is where those characters are meant", () => {
    const names = ["Âge Élevé", "SÃO JOÃO", "Ângela’s bay", "Pâtisserie € 5"];
    const sheet = textFile("devices.csv", `device,type\n${names.map((name) => `${name},aed`).join("\n")}\n`);
    expect(readSheets([sheet], OPTIONS).fleet.devices.map(({ device }) => device)).toEqual(names);
  });
});
