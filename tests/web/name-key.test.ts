import fc from "fast-check";
import { expect, it } from "vitest";
import { nameKey as engineKey } from "../../src/fleet/name-key.ts";
import { nameKey } from "../../web/name-key.ts";

it("nameKey folds blanks and case as the engine does, so that a serial of a sheet finds its readings", () => {
  expect(nameKey("  LP \t 15\n")).toBe("lp 15");
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom("a", "Ä", "7", " ", "\t", "\u00a0", "-") }), (name) => {
      expect(nameKey(name)).toBe(engineKey(name));
    }),
    { seed: 5 },
  );
});
