import { describe, expect, it } from "vitest";
import { speaksOfFault } from "../../src/sheets/values/fault-words.ts";
import { read } from "./sheet-file.ts";

const faults = (text: string) => read(text).findings.filter(({ code }) => code === "fault-unread");

// how people write of faults: common practice, no source
describe("remarks that speak of a fault", () => {
  it.each([
    "swollen",
    "Case cracked, replace",
    "FAIL",
    "Failed - replace",
    "won't hold charge",
    "Low battery",
    "defekt",
    "aufgebläht – tauschen!",
    "nicht in Ordnung",
    "gonflée, à remplacer",
    "hors service",
    "hinchada",
    "averiado",
    "opgezwollen",
    "kapot",
    "guasta",
    "uszkodzony",
    "trasig",
    "subject to recall",
  ])("%s does", (text) => {
    expect(speaksOfFault(text)).toBe(true);
  });

  it.each([
    "OK",
    "no defects",
    "not damaged",
    "keine Schäden, nicht defekt",
    "ohne Beschädigung",
    "pas de fuite",
    "sin averías",
    "geen schade, niet kapot",
    "replaced 2024",
    "replacement due 2028",
    "repaired after fault",
    "Failed once, retest OK",
    "spare for van 3",
    "Default site",
    "",
  ])("%s does not", (text) => {
    expect(speaksOfFault(text)).toBe(false);
  });

  it("are found where their column is not read, in the rows of what serves", () => {
    const sheet =
      "Battery S/N,In service,Retired,Remarks\nA,2023-03-01,,\nB,2023-03-01,,swollen\nC,2020-03-01,2024-01-05,swollen\nD,2022-03-01,,Cracked case\n";
    expect(faults(sheet)).toMatchObject([{ severity: "warning", line: 3, lines: [5], column: 4, value: "swollen" }]);
    expect(faults(sheet)[0]!.message).toBe(
      '"swollen" in column "Remarks" (D) speaks of a fault, and the column is not read; and 1 more row.',
    );
  });

  it("are found in an answer of no to whether a thing is ready", () => {
    const sheet = (header: string) =>
      `AED serial,Pads expire,${header}\nAED-1,2027-09,yes\nAED-2,2027-02,no\nAED-3,2027-03,no - beeping\nAED-4,2027-03,nominal\n`;
    for (const header of ["Ready?", "Operational", "Einsatzbereit"])
      expect(faults(sheet(header)), header).toMatchObject([{ line: 3, lines: [4] }]);
    expect(faults(sheet("Cabinet heated"))).toEqual([]);
  });

  it("are found in a red light, not in the colour of a case", () => {
    const sheet = (header: string) => `AED serial,Pads expire,${header}\nAED-1,2027-09,Green\nAED-2,2027-02,RED X\n`;
    for (const header of ["Status light", "Readiness indicator", "Statusindikator"])
      expect(faults(sheet(header)), header).toMatchObject([{ line: 3 }]);
    expect(faults(sheet("Lid colour"))).toEqual([]);
  });

  it("tell of packs that are gone too, not of a device whose parts were replaced", () => {
    const gone = (text: string) => read(text).findings.filter(({ code }) => code === "gone-unread");
    expect(
      gone("Serial,In use since,Note\nP1,2021-04-01,\nP2,2021-04-01,getauscht 10/26\nP3,2023-04-01,Scrapped\n"),
    ).toMatchObject([{ line: 3, lines: [4], severity: "warning" }]);
    expect(gone("AED,Site,Notes\nAED-1,Pool,replaced 2024\nAED-2,Hall,\n")).toEqual([]);
  });

  it("are none in a log, which tells of what was", () => {
    expect(faults("date,item,quantity,place,remarks\n2026-03-01,pads,1,Van 1,electrode damaged\n")).toEqual([]);
    expect(faults("serial,date,percent,remarks\nA,2026-03-01,91,failed first\n")).toEqual([]);
  });

  it("are read, not only found, where the column says why a thing is held", () => {
    const { fleet, findings } = read("serial,in_service,held\nA,2023-03-01,swollen\n");
    expect(fleet.packs[0]!.held).toBe("swollen");
    expect(findings.map(({ code }) => code)).not.toContain("fault-unread");
  });

  it("are told of where a yes says what its header asks", () => {
    const { findings } = read(
      "Club,Pads expire,Replaced?,Battery expire,Faulty\nDowntown,2026-09-30,Y,2027-06-01,\nHarbor,2028-03-31,N,2029-09-30,x\n",
    );
    const said = findings.filter(({ code }) => code.endsWith("-unread") && code !== "column-unread");
    expect(said).toMatchObject([
      { code: "gone-unread", line: 2, column: 3, value: "Y" },
      { code: "fault-unread", line: 3, column: 5, value: "x" },
    ]);
  });

  it("are told of where a device did not pass its check, or left the service", () => {
    const text = `AED,Pads exp,Pass Y/N,Comment
A1,2027-03-31,Y,
A2,2027-04-30,N,
A3,2027-05-31,Y,removed from service
`;
    const said = faults(text).map(({ line, column, value }) => [line, column, value]);
    expect(said).toEqual([
      [3, 3, "N"],
      [4, 4, "removed from service"],
    ]);
  });
});
