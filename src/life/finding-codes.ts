import type { FindingCode } from "../sheets/finding-codes.ts";

/** Every code that a finding about packs' forecasts can carry. */
export const LIFE_FINDING_CODES = {
  "reading-doubted": {
    severity: "warning",
    means: "A test lies so far from what a pack's other tests lead to expect that the forecast hardly heeds it.",
    example: "55 % in May, between 92 % in January and 90 % in September",
    fix: "Look up that test's load, charge and serial; correct or remove its row if it is wrong, test again if it is not.",
  },
} as const satisfies Record<string, FindingCode>;
