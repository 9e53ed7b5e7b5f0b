import { describe, expect, it } from "vitest";
import { unnamedCautions, withNamedItems } from "../../src/fleet/named-items.ts";
import { emptyFleet } from "../../src/fleet/rows.ts";
import { pack } from "./make-rows.ts";

const NONE = { ...emptyFleet(), packs: [pack("P1"), pack("P2"), pack("P3", { item: "pack-md" })] };

describe("packs without an item", () => {
  it("are one kind in all that follows, and the sheets' own rows stay as they are", () => {
    expect(withNamedItems(NONE).packs.map(({ item }) => item)).toEqual(["unnamed pack", "unnamed pack", "pack-md"]);
    expect(NONE.packs[0]!.item).toBeNull();
    expect(withNamedItems(NONE)).toBe(withNamedItems(NONE));
  });
  it("are told of by their count, and nothing is said where all are named", () => {
    expect(unnamedCautions(NONE)[0]).toMatch(/^2 packs have no item in the sheets/);
    expect(unnamedCautions(withNamedItems(NONE))[0]).toMatch(/^2 packs have no item/);
    const named = { ...emptyFleet(), packs: [pack("P3", { item: "pack-md" })] };
    expect(unnamedCautions(named)).toEqual([]);
    expect(withNamedItems(named)).toBe(named);
  });
});
