import fc from "fast-check";
import { expect, it } from "vitest";
import { guardText, unguardText } from "../../../src/sheets/values/formula-guard.ts";

it("unguardText takes away what guardText adds, in any text of one cell", () => {
  const piece = fc.constantFrom("'", "=", "+", "-", "@", "\uff1d", ";", " ", "\n", "x", "1");
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 12 }), (pieces) => {
      // cells are trimmed as they are read
      const text = pieces.join("").trim();
      expect(unguardText(guardText(text))).toBe(text);
    }),
    { seed: 8 },
  );
});
it("unguardText leaves other apostrophes alone", () => {
  for (const text of ["'x", "don't", "x; 'y'", "' =1"]) expect(unguardText(text)).toBe(text);
});
