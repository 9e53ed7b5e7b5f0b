import { expect, it } from "vitest";
import { placeText } from "../../src/fleet/place-text.ts";

it("placeText names file, tab and line, as far as there are any", () => {
  expect(placeText({ file: "packs.csv", sheet: null, line: 14 })).toBe("packs.csv, line 14");
  expect(placeText({ file: "fleet.xlsx", sheet: "Fleet", line: 17 })).toBe("fleet.xlsx, tab Fleet, line 17");
  expect(placeText({ file: "fleet.xlsx", sheet: "Fleet", line: null })).toBe("fleet.xlsx, tab Fleet");
  expect(placeText({ file: "-", sheet: null, line: 3 })).toBe("standard input, line 3");
});
