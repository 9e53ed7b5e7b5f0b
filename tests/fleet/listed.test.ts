import { expect, it } from "vitest";
import { listed } from "../../src/fleet/listed.ts";

it("listed joins names as a sentence does", () => {
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"])]).toEqual([
    "",
    "a",
    "a and b",
    "a, b and c",
  ]);
});
