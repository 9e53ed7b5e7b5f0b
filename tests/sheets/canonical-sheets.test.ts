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
