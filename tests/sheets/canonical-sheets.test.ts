import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, read } from "./sheet-file.ts";

const SAMPLE = "sample-data";

it("reads each sheet of the sample as what its file's name says, whatever its items are called", () => {
  const files = readdirSync(SAMPLE)
    .filter((name) => name.endsWith(".csv"))
    .map((name) => ({ name, bytes: new Uint8Array(readFileSync(`${SAMPLE}/${name}`)) }));
  const { inputs } = readSheets(files, { asOf: AS_OF, dateOrder: null });
  expect(inputs.map(({ file, kinds }) => `${file} ${kinds.join(" ")}`)).toEqual(
    files.map(({ name }) => `${name} ${name.replace(".csv", "")}`).sort(),
  );
});

it("takes every line below battery numbers for a battery, though its item names a device or a pad", () => {
  const rows = ["AED battery", "AED trainer", "Monitor", "Pad printer pack"].map(
    (item, at) => `${item},B${at},2023-0${at + 1}-01`,
  );
  const { fleet, setAside } = read(`Model,Battery S/N,Install date\n${rows.join("\n")}\n`);
  expect(fleet.packs.map(({ serial }) => serial)).toEqual(["B0", "B1", "B2", "B3"]);
  expect([fleet.devices, setAside]).toEqual([[], []]);
});

it.each([["ECG electrodes 30, adult"], ["electrode set 10"], ["Pads, adult: multi-function electrode set 18"]])(
  'takes "%s" for the name of an item, and for no list of items or date',
  (item) => {
    const sheets = {
      "catalogue.csv": `item,kind,supplier,price\n"${item}",pads,North,20.00\n`,
      "dated_stock.csv": `item,expiry,quantity,place\n"${item}",2028-08-27,2,D1\n`,
      "on_order.csv": `item,quantity,arrives\n"${item}",2,2027-01-05\n`,
      "packs.csv": 'serial,item,device\nB1,"Battery 12, spare",D1\n',
      "use_log.csv": `date,item,quantity,place\n2026-08-27,"${item}",2,D1\n`,
    };
    const { fleet, inputs } = read(sheets);
    expect(inputs.map(({ file, kinds }) => `${kinds.join(" ")}.csv` === file)).toEqual([true, true, true, true, true]);
    const { catalogue, datedStock, onOrder, packs, useLog } = fleet;
    expect(packs[0]?.item).toBe("Battery 12, spare");
    for (const rows of [catalogue, datedStock, onOrder, useLog]) expect(rows.map((row) => row.item)).toEqual([item]);
    expect([datedStock[0]?.quantity, onOrder[0]?.quantity, onOrder[0]?.expiry, useLog[0]?.quantity]).toEqual([
      2,
      2,
      null,
      2,
    ]);
  },
);
