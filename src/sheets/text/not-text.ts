import type { RefusedFile, SheetFile } from "../reading.ts";

const WORKBOOK_NAME = /\.(xlsx|xlsm|xls|ods)$/i;
const TEXT_NAME = /\.(csv|tsv|txt)$/i;
/** First bytes of a zip archive (APPNOTE 4.3.7) and of a compound file ([MS-CFB] 2.2), both from memory. */
const SIGNATURES = [
  [0x50, 0x4b, 0x03, 0x04],
  [0xd0, 0xcf, 0x11, 0xe0],
];

/**
 * Why a file that should be a sheet holds no text, or null where it may. A workbook is refused rather than passed
 * over, since a plan that misses a sheet buys wrongly; other files that are no sheets are left to be found wanting.
 */
export function refusedAsNoText({ name, bytes }: SheetFile): RefusedFile | null {
  const packed = SIGNATURES.some((signature) => signature.every((byte, index) => bytes[index] === byte));
  if (!WORKBOOK_NAME.test(name) && !(packed && TEXT_NAME.test(name))) return null;
  return {
    file: name,
    code: "workbook",
    message: "Workbooks and archives are not read; save each tab as CSV and give those files.",
  };
}
