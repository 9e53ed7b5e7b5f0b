import { describe, expect, it } from "vitest";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { FINDING_CODES } from "../../src/sheets/finding-codes.ts";
import { STOCK_FINDING_CODES, type StockFindingCode } from "../../src/supplies/finding-codes.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { AS_OF, read } from "../sheets/sheet-file.ts";

const DEVICES = "device,type,retired\nD1,A,\nD2,A,\nD3,A,\nD9,A,2026-01-01\n";
const FITTED = "item,expiry,place,quantity\nPads,2028-01-31,D1,1\nPads,2028-01-31,D2,1\n";
const USED = Array.from({ length: 9 }, (_, n) => `2026-0${n + 1}-10,Pads,1,D1\n`).join("");

/** For each code, the dated stock or use log that brings it about beside a fleet that fits. */
const SHEETS: Record<StockFindingCode, { stock?: string; used?: string; carries?: number; line: number }> = {
  "more-than-carried": { stock: `${FITTED}Pads,2028-02-29,D3,2\n`, line: 4 },
  "fewer-than-carried": {
    stock: `${FITTED}Pads,2028-02-29,D1,1\nPads,2028-02-29,D2,1\nPads,2028-01-31,D3,1\n`,
    carries: 2,
    line: 6,
  },
  "device-without": { stock: FITTED, line: 4 },
  "bulk-issue": { used: `${USED}2026-09-20,Pads,40,D1\n`, line: 11 },
  "stock-at-retired": { stock: `${FITTED}Pads,2028-01-31,D3,1\nPads,2028-01-31,D9,1\n`, line: 5 },
  "place-read-as-store": { stock: `${FITTED}Pads,2028-01-31,D3,1\nPads,2028-01-31,Stroe,1\n`, line: 5 },
};

describe("finding codes of stock and use", () => {
  it.each(Object.entries(SHEETS))("%s is found where its example stands, with its severity and fix", (code, given) => {
    const { fleet } = read({
      "catalogue.csv": `item,kind,per_device,fits\nPads,pads,${given.carries ?? 1},A\n`,
      "devices.csv": DEVICES,
      "stock.csv": given.stock ?? `${FITTED}Pads,2028-01-31,D3,1\n`,
      "use.csv": `date,item,quantity,place\n${given.used ?? ""}`,
    });
    const { findings } = forecastDatedStock(fleet, defaultPolicy(AS_OF));
    const { severity, fix } = STOCK_FINDING_CODES[code as StockFindingCode];
    expect(findings).toMatchObject([{ code, severity, fix, line: given.line }]);
  });

  it("are documented in whole sentences, under names that no code of a sheet has", () => {
    for (const [code, { means, example, fix }] of Object.entries(STOCK_FINDING_CODES)) {
      expect(means).toMatch(/^[A-Z].*\.$/);
      expect(fix).toMatch(/^[A-Z].*\.$/);
      expect(example).not.toBe("");
      expect(FINDING_CODES).not.toHaveProperty(code);
    }
  });
});
