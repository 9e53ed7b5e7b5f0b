import { describe, expect, it } from "vitest";
import { read } from "./sheet-file.ts";

const again = (files: Record<string, string>) =>
  read(files)
    .findings.filter(({ code }) => code === "device-again")
    .map(({ file, line, value }) => [file, line, value]);

describe("devices called alike in two lists of the same columns", () => {
  it("are told, as each list may be of another place", () => {
    const north = "AED,Battery S/N,Pads exp\nAED 1,B1,2027-03-31\nAED 2,B2,2027-04-30\n";
    const south = "AED,Battery S/N,Pads exp\nAED 1,B3,2027-05-31\nAED 3,B4,2027-06-30\n";
    expect(again({ "north.csv": north, "south.csv": south })).toEqual([["south.csv", 2, "AED 1"]]);
  });

  it.each([
    [
      "the lists say where they are",
      "AED,Site,Pads exp\nAED 1,Hall,2027-03-31\n",
      "AED,Site,Pads exp\nAED 1,Hall,2027-05-31\n",
    ],
    ["the lists are of other things", "AED,Pads exp\nAED 1,2027-03-31\n", "AED,Battery S/N\nAED 1,B1\n"],
    ["one list names it on two lines", "AED,Battery S/N\nAED 1,B1\nAED 1,B2\n", "AED,Battery S/N\nAED 2,B3\n"],
  ])("are one where %s", (_, one, two) => {
    expect(again({ "a.csv": one, "b.csv": two })).toEqual([]);
  });
});
