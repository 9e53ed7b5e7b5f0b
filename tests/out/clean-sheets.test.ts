import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ITEM_KINDS } from "../../src/fleet/rows.ts";
import { cleanSheets, cleanWorkbook } from "../../src/out/clean-sheets.ts";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { AS_OF, textFile } from "../sheets/sheet-file.ts";

const name = fc.oneof(
  fc.constantFrom(
    "000817",
    "=1+1",
    "'=1+1",
    "''+x",
    "-5",
    "@home",
    'a "b", c',
    "line\nend",
    "Ünit é",
    "1e5",
    "-",
    "Total",
    "3/4",
  ),
  fc.string({ minLength: 1, maxLength: 8 }),
);
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const date = fc.integer({ min: 8000, max: 20_000 }).map((day) => new Date(day * 86_400_000).toISOString().slice(0, 10));

const cell = (value: unknown) => (value === null ? "" : `"${String(value).replaceAll('"', '""')}"`);
const sheet = (header: string, rows: readonly unknown[][]) =>
  `${header}\n${rows.map((row) => row.map(cell).join(",")).join("\n")}\n`;

const sheets = fc.record({
  "p.csv": fc
    .array(fc.tuple(name, maybe(name), maybe(date), maybe(fc.nat(20_000)), maybe(fc.integer({ min: -40, max: 85 }))))
    .map((rows) => sheet("serial,item,in_service,cycles,temperature_c", rows)),
  "d.csv": fc
    .array(fc.tuple(name, date, maybe(name), maybe(fc.nat(99)), maybe(name)))
    .map((rows) => sheet("item,expiry,lot,quantity,place", rows)),
  "c.csv": fc
    .array(
      fc.tuple(
        name,
        fc.constantFrom(...ITEM_KINDS),
        maybe(fc.nat(99_999).map((cents) => (cents / 100).toFixed(2))),
        maybe(name),
        maybe(name),
      ),
    )
    .map((rows) => sheet("item,kind,price,fits,supplier", rows)),
});

const withoutSources = (fleet: object) =>
  JSON.parse(JSON.stringify(fleet, (key, value) => (key === "source" ? undefined : value)));

describe("cleanSheets and cleanWorkbook", () => {
  it("write sheets that read back as the same fleet", async () => {
    await fc.assert(
      fc.asyncProperty(sheets, async (texts) => {
        const options = { asOf: AS_OF, dateOrder: null };
        const files = Object.entries(texts).map(([file, text]) => textFile(file, text));
        const { fleet } = readSheets(files, options);
        const csv = cleanSheets(fleet).map(({ name: file, text }) => textFile(file, text));
        expect(withoutSources(readSheets(csv, options).fleet)).toEqual(withoutSources(fleet));
        if (csv.length === 0) return;
        const workbook = [{ name: "clean.xlsx", bytes: await cleanWorkbook(fleet) }];
        await openWorkbooks(workbook);
        expect(withoutSources(readSheets(workbook, options).fleet)).toEqual(withoutSources(fleet));
      }),
      { seed: 5, numRuns: 60 },
    );
  });
});
