import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fleetRegister } from "./register/fleet-register.ts";
import { sampleTables, sheetTexts } from "./sample-sheets.ts";

// usage: npm run sample (writes the sheets into the folder given, and the messy workbook into a folder of its own)
const folder = process.argv[2] ?? "sample-data";
const tables = sampleTables();
for (const { name, text } of sheetTexts(tables)) writeFileSync(join(folder, name), text);
mkdirSync(join(folder, "messy"), { recursive: true });
fleetRegister(tables).then((bytes) => writeFileSync(join(folder, "messy", "fleet-register.xlsx"), bytes));
