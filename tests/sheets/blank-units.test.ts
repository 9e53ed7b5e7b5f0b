import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const blanks = (text: string) => read(text).findings.filter(({ code }) => code === "unit-blank");

describe("blank cells of units in a register", () => {
  it("are found by line where most lines fill them", () => {
    const sheet =
      "AED serial,Site,Pads expire,Battery expires\nA1,Pool,2027-09,2028-01\nA2,Hall,,2028-02\nA3,Gym,2027-08,\nA4,Park,2027-09,2028-04\nA5,Port,,2028-05\n";
    expect(blanks(sheet)).toMatchObject([
      { severity: "info", line: 3, lines: [6], column: 3 },
      { severity: "info", line: 4, lines: [], column: 4 },
    ]);
    expect(blanks(sheet)[1]!.message).toBe(
      'Nothing stands in column "Battery expires" (D): the plan knows of no such unit there.',
    );
  });

  it("are none where most lines do without: few carry child pads", () => {
    expect(
      blanks(
        "AED serial,Site,Pads expire,Child pads expire\nA1,Pool,2027-09,2028-01\nA2,Hall,2027-09,\nA3,Gym,2027-08,\nA4,Park,2027-09,\n",
      ),
    ).toEqual([]);
  });

  it("are none in a list of stock, where a row without its expiry is set aside", () => {
    const { setAside } = read("item,expiry,place\nPads,2027-09-30,A1\nPads,,A2\nPads,2027-09-30,A3\n");
    expect(setAside.map(({ line, reason }) => [line, reason])).toEqual([[3, "missing-required"]]);
    expect(blanks("item,expiry,place\nPads,2027-09-30,A1\nPads,,A2\nPads,2027-09-30,A3\n")).toEqual([]);
  });
});
