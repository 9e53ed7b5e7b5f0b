import { describe, expect, it } from "vitest";
import { dateOrderIn } from "../../../src/sheets/words/parse-header.ts";

// Letters for day, month and year in the languages of headers; common practice, no source.
describe("dateOrderIn", () => {
  it.each([
    ["Expiry (DD/MM/YYYY)", "dmy"],
    ["Expiry mm/dd/yy", "mdy"],
    ["Use by (YYMMDD)", "ymd"],
    ["Verfall TT.MM.JJJJ", "dmy"],
    ["Péremption (JJ/MM/AAAA)", "dmy"],
    ["Scadenza gg/mm/aaaa", "dmy"],
    ["Vervaldatum (dd-mm-jjjj)", "dmy"],
  ])("reads the order of %s", (header, order) => expect(dateOrderIn(header)).toBe(order));

  it.each(["Expiry", "Expiry (MM/YYYY)", "Exp mm", "Day", "Data", "Gram", "Datum"])("reads none in %s", (header) =>
    expect(dateOrderIn(header)).toBeNull(),
  );
});
