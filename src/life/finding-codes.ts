import type { FindingCode } from "../sheets/finding-codes.ts";

/** Every code that a finding about packs' forecasts can carry. */
export const LIFE_FINDING_CODES = {
  "pack-swapped": {
    severity: "warning",
    means: "A pack's cycle counter began anew and its capacity came back: a newer pack goes on under its serial.",
    example: "85 % at 140 cycles in January, 99 % at 5 cycles in July",
    fix: "Give the newer pack a serial of its own, or correct the count and the test if it is still the same pack.",
  },
  "reading-doubted": {
    severity: "warning",
    means: "A test lies so far from what a pack's other tests lead to expect that the forecast hardly heeds it.",
    example: "55 % in May, between 92 % in January and 90 % in September",
    fix: "Look up that test's load, charge and serial; correct or remove its row if it is wrong, test again if it is not.",
  },
  "test-not-comparable": {
    severity: "info",
    means: "A test was not from a full charge, or too cold or warm for its capacity to be compared with a rating.",
    example: "a test at 2 °C",
    fix: "Nothing, if it is right; a test from a full charge at 10 to 40 °C tells what the pack holds.",
  },
  "test-unrated": {
    severity: "warning",
    means: "A test measures what cannot be turned into a share of what a new pack holds.",
    example: "60 minutes, where the catalogue gives no rated minutes and no pack was tested when new",
    fix: "Rate the item in that measure in the catalogue, write the test in percent, or correct its figure.",
  },
} as const satisfies Record<string, FindingCode>;
