import type { FindingCode } from "../sheets/finding-codes.ts";

/** Every code that a finding about stock and use can carry, in the order in which they are looked for. */
export const STOCK_FINDING_CODES = {
  "more-than-carried": {
    severity: "warning",
    means: "A device holds more units of an item than the catalogue says that a device carries.",
    example: "3 pads at MD-01, where per_device is 1",
    fix: "Correct the quantities, say where spare units lie or when a pack was retired, or correct per_device.",
  },
  "fewer-than-carried": {
    severity: "warning",
    means:
      "A device holds some of an item, but fewer than the catalogue says that a device carries and most of them hold.",
    example: "1 pads at MD-02, where per_device is 2",
    fix: "Add the units it holds to the sheets, or correct per_device.",
  },
  "device-without": {
    severity: "warning",
    means: "A device that takes an item has none of it, where most of its like have it or where its packs have left.",
    example: "no pads at MD-03, where fits names its type and MD-01 and MD-02 have theirs",
    fix: "Add the units they hold to the sheets, or correct fits or carried_by in the catalogue.",
  },
  "bulk-issue": {
    severity: "warning",
    means: "One row of the use log is far larger than the item's usual use, and is taken as a restock.",
    example: "40 pads on one day, where a use takes 1 or 2",
    fix: "Write restock as its reason, or split it into the single uses.",
  },
  "stock-at-retired": {
    severity: "warning",
    means: "Dated stock or a pack stands at a device that has left service, and serves nothing.",
    example: "2 pads at MD-09, retired in January",
    fix: "Give the place where it lies now, or for a pack the day in retired.",
  },
  "place-read-as-store": {
    severity: "info",
    means: "A place of dated stock is neither a device nor a site, and is read as a store.",
    example: '12 pads at "Stroe"',
    fix: "Nothing to do if it is a store; else write the device's name as the devices sheet has it.",
  },
} as const satisfies Record<string, FindingCode>;

export type StockFindingCode = keyof typeof STOCK_FINDING_CODES;
