import fc from "fast-check";
import { SHEETS } from "../../src/fleet/columns.ts";

const HEADERS = [
  ...SHEETS.flatMap(({ columns }) => columns.map(({ name }) => name)),
  ..."Batt S/N|Pad 1 exp|Pad 2 exp|Install Dt|Akku-Seriennummer|Verfallsdatum|Fecha de caducidad|N° série|Comment|Total|__proto__|constructor|toString|Expiry|Qty|Lot|Device|Battery|Test 1 date|Capacity %|Runtime (h)".split(
    "|",
  ),
];

const CELLS = [
  "",
  " ",
  "A1",
  "000817",
  "2026-01-02",
  "03/04/2026",
  "25/12/2026",
  "12/25/2026",
  "03/2027",
  "Mar-27",
  "46351",
  "87",
  "0,9",
  "1.234,5",
  "1,234.5",
  "87 %",
  "870 %",
  "-5",
  "n/a",
  "Total",
  "Subtotal",
  "=1+1",
  "'=1+1",
  '"',
  '""',
  '"x',
  "x10",
  "2 boxes",
  "yes",
  "#REF!",
  "1.2E+11",
  "__proto__",
  "constructor",
  "(01)09506000134352(17)270131",
  "+A123BJC5D6E71G",
  "KW 14/2027",
  "31.02.2027",
  "é",
  "\u0000",
  "\u2028",
  "🔋",
  "10:38.50; 50:35",
  "10:30",
  "AED",
  "Akku",
  "Adult pads",
];

const cell = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...CELLS) },
  { weight: 1, arbitrary: fc.string({ maxLength: 20 }) },
  { weight: 1, arbitrary: fc.string({ unit: "grapheme", maxLength: 6 }) },
);
const line = (width: number) =>
  fc.array(fc.oneof({ weight: 9, arbitrary: cell }, { weight: 1, arbitrary: fc.constantFrom(...HEADERS) }), {
    maxLength: width,
  });
const separator = fc.constantFrom(",", ";", "\t", "|");
const lineEnd = fc.constantFrom("\n", "\r\n", "\r");

/** Texts that look like sheets: titles, headers of known words, records of troublesome cells, any separator and line end. */
const sheetText = fc
  .tuple(
    fc.array(line(3), { maxLength: 3 }),
    fc.array(fc.constantFrom(...HEADERS), { minLength: 1, maxLength: 12 }),
    fc.array(line(14), { maxLength: 12 }),
    separator,
    lineEnd,
  )
  .map(([titles, header, rows, between, end]) =>
    [...titles, header, ...rows].map((cells) => cells.join(between)).join(end),
  );

/** Bytes of such texts in one encoding or another, with a few bytes changed, cut or doubled. */
export const sheetBytes: fc.Arbitrary<Uint8Array> = fc
  .tuple(
    sheetText,
    fc.constantFrom("utf-8", "utf-16le", "latin1", "bom"),
    fc.array(fc.tuple(fc.nat(), fc.nat(255)), { maxLength: 4 }),
    fc.option(fc.nat(), { nil: null, freq: 3 }),
  )
  .map(([text, encoding, changes, cut]) => {
    let bytes = encoded(text, encoding);
    for (const [at, byte] of changes) if (bytes.length > 0) bytes[at % bytes.length] = byte;
    if (cut !== null && bytes.length > 0) bytes = bytes.slice(0, cut % bytes.length);
    return bytes;
  });

function encoded(text: string, encoding: string): Uint8Array {
  if (encoding === "utf-8") return new TextEncoder().encode(text);
  if (encoding === "bom") return new TextEncoder().encode(`\ufeff${text}`);
  if (encoding === "latin1") return Uint8Array.from(text, (letter) => letter.charCodeAt(0) & 255);
  return Uint8Array.from(
    `\ufeff${text}`.split("").flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8]),
  );
}
