import { expect, it } from "vitest";
import { nearestWord } from "../../src/fleet/nearest-word.ts";

const KEYS = ["as_of", "horizon_months", "service_level", "pack_max_age_months", "pack_max_cycles"];

it.each([
  ["horizon", "horizon_months"],
  ["service_levl", "service_level"],
  ["sevrice_level", "service_level"],
  ["asof", "as_of"],
  ["pack_max_cycle", "pack_max_cycles"],
  // two letters changed, one by another each; three are too many
  ["sirvice_lavel", "service_level"],
  ["sirvice_lavil", null],
  // two keys begin so: neither was clearly meant
  ["pack_max", null],
  ["budget", null],
  ["x", null],
  ["", null],
])("%s is near %s", (typed, meant) => {
  expect(nearestWord(typed, KEYS)).toBe(meant);
});
