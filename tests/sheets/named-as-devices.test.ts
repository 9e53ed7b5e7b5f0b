import { describe, expect, it } from "vitest";
import { columnsFileOf } from "../../src/sheets/mapping/columns-as-read.ts";
import { read, textFile } from "./sheet-file.ts";

// common practice, no source: an equipment list has serial, model and place, whatever the thing
const EQUIPMENT =
  "Serial,Model,Site,In service,Retired\nD1,MON,North,2021-01-05,2026-06-30\nD2,MON,South,2021-01-05,\n";
const PACKS = "Battery serial,Device,In service\nP1,D1,2021-01-05\nP2,d2,2021-01-05\n";
const kinds = (texts: Record<string, string>) => read(texts).inputs.map((input) => input.kinds.join());

describe("a list of serials that other sheets name as devices", () => {
  it("is a list of devices, all its columns with it", () => {
    const { fleet, inputs } = read({ "equipment.csv": EQUIPMENT, "packs.csv": PACKS });
    expect(fleet.devices).toMatchObject([
      { device: "D1", type: "MON", site: "North" },
      { device: "D2", type: "MON", site: "South", retired: null },
    ]);
    expect(fleet.devices[0]!.retired).not.toBeNull();
    expect(fleet.packs.map(({ serial }) => serial)).toEqual(["P1", "P2"]);
    expect(inputs[0]!.columns.map(({ kind, field }) => `${kind}.${field}`)).toEqual([
      "devices.device",
      "devices.type",
      "devices.site",
      "devices.in_service",
      "devices.retired",
    ]);
  });

  it("is one wherever the others stand, and where they are supplies", () => {
    expect(kinds({ "a.csv": PACKS, "b.csv": EQUIPMENT })).toEqual(["packs", "devices"]);
    expect(kinds({ "a.csv": EQUIPMENT, "b.csv": "Device,Adult pads expiry\nD1,2027-03-31\nD2,2027-05-31\n" })[0]).toBe(
      "devices",
    );
  });

  it("stays one in the columns file that tells how all is read", () => {
    const files = [textFile("equipment.csv", EQUIPMENT), textFile("packs.csv", PACKS)];
    expect(columnsFileOf(files).tables[0]!.rows).toMatchObject([{ kind: "devices", columns: { device: "Serial" } }]);
  });
});

describe("a list of packs", () => {
  it("stays one where few of its serials are named so, or none", () => {
    expect(kinds({ "a.csv": EQUIPMENT, "b.csv": PACKS.replaceAll(/D1|d2/g, "X9") })[0]).toBe("packs");
    expect(kinds({ "a.csv": `${EQUIPMENT}D3,MON,North,,\nD4,MON,North,,\nD5,MON,North,,\n`, "b.csv": PACKS })[0]).toBe(
      "packs",
    );
  });

  it("stays one where it speaks of batteries, counts cycles or has the canonical names", () => {
    for (const header of ["Battery serial,Model", "Serial,Cycles", "serial,item"]) {
      expect(kinds({ "a.csv": `${header}\nD1,40\nD2,60\n`, "b.csv": PACKS })[0]).toBe("packs");
    }
  });
});

describe("a list of serials that nothing says are of batteries", () => {
  const LIST = "Serial,Model,Ward\nS1,X1,ICU\nS2,X1,ED\n";
  const presumed = (texts: Record<string, string>) =>
    read(texts).findings.some(({ code }) => code === "packs-presumed");

  it("is taken for packs with a warning", () => {
    expect(presumed({ "a.csv": LIST })).toBe(true);
  });

  it("is without one where capacity tests, the file's name or its items say that they are", () => {
    expect(presumed({ "a.csv": LIST, "b.csv": "Serial,Date,Capacity %\nS1,2026-05-01,90\nS2,2026-05-01,91\n" })).toBe(
      false,
    );
    expect(presumed({ "batteries.csv": LIST })).toBe(false);
    expect(presumed({ "a.csv": LIST.replaceAll("X1", "Battery X1") })).toBe(false);
  });
});
