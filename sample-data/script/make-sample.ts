import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { sampleSheets } from "./sample-sheets.ts";

// usage: npm run sample (writes the sheets into the folder given)
const folder = process.argv[2] ?? "sample-data";
for (const { name, text } of sampleSheets()) writeFileSync(join(folder, name), text);
