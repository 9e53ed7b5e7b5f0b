// How long sheets take beside a bare read, and how an archive bomb is refused: npm run bench -- sheets
import { Readable } from "node:stream";
import { readXlsx } from "hucre/xlsx";
import Papa from "papaparse";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { bigCsv, bigWorkbook } from "./big-sheets.ts";
import { lineOf, type Measure, ratio } from "./report.ts";
import { bombRefusal } from "./zip-bomb.ts";

const AS_OF = 20_758;
const TURNS = 7;

/** The bare read: streamed, with header and step, every row kept. */
function bareCsv(bytes: Uint8Array): Promise<number> {
  const rows: unknown[] = [];
  const piece = 1 << 16;
  const pieces = Array.from({ length: Math.ceil(bytes.length / piece) }, (_, at) =>
    Buffer.from(bytes.subarray(at * piece, (at + 1) * piece)),
  );
  return new Promise((resolve, reject) => {
    Papa.parse(Readable.from(pieces), {
      header: true,
      step: ({ data }) => rows.push(data),
      complete: () => resolve(rows.length),
      error: reject,
    });
  });
}

/** Ours: bytes to the fleet. A copy of the bytes, since what was opened before is kept. */
async function ours(name: string, bytes: Uint8Array, rows: number): Promise<void> {
  const files = [{ name, bytes: bytes.slice() }];
  await openWorkbooks(files);
  const used = readSheets(files, { asOf: AS_OF, dateOrder: null }).inputs[0]?.used;
  if (used !== rows) throw new Error(`${name}: ${used} of ${rows} rows used`);
}

async function measures(): Promise<Measure[]> {
  // first, while the process is small; the second states that it unpacks to nothing
  const bomb = await bombRefusal(1024, 2 ** 30);
  const liar = await bombRefusal(1024, 0);
  const csv = bigCsv(200_000);
  const text = await ratio(
    () => ours("tests.csv", csv, 200_000),
    () => bareCsv(csv),
    TURNS,
  );
  const xlsx = await bigWorkbook(50_000);
  const workbook = await ratio(
    () => ours("tests.xlsx", xlsx, 50_000),
    () => readXlsx(xlsx, { readStyles: true }),
    TURNS,
  );
  console.log(`CSV ${text.ours.toFixed(0)} ms against ${text.theirs.toFixed(0)} ms bare`);
  console.log(`XLSX ${workbook.ours.toFixed(0)} ms against ${workbook.theirs.toFixed(0)} ms bare`);
  console.log(`archives: ${bomb.code}, ${liar.code}`);
  return [
    { what: "200,000-row CSV against papaparse streaming", figure: text.ratio, unit: "times", bar: 2 },
    { what: "50,000-row XLSX against the reader alone", figure: workbook.ratio, unit: "times", bar: 1.5 },
    { what: "archive of 1 GB refused", figure: bomb.seconds, unit: "s", bar: 2 },
    { what: "archive of 1 GB that states 0 bytes refused", figure: liar.seconds, unit: "s", bar: 2 },
    { what: "peak memory of the process after both", figure: liar.peakMb, unit: "MB", bar: 300 },
  ];
}

measures().then((all) => {
  for (const measure of all) console.log(lineOf(measure));
  if (all.some(({ figure, bar }) => figure > bar)) process.exitCode = 1;
});
