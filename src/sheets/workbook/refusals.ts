import { LIMITS } from "../limits.ts";
import type { RefusedFile, SheetFile } from "../reading.ts";
import { type FileNature, natureOf } from "./file-nature.ts";
import { zipDirectory } from "./zip-directory.ts";

/** Why files are refused, each with the way out. */
const WORDS = {
  "too-large": "The file is over 256 MB; split it by year or site.",
  "too-many-rows": "The sheet has over 2,000,000 rows; split it by year or site.",
  "too-many-columns": "The sheet has over 1,000 columns; delete those that are not needed.",
  xls: "The file is a workbook of the old .xls kind; open it in a spreadsheet and save it as .xlsx or CSV.",
  ods: "The file is an OpenDocument sheet; save it as .xlsx or CSV.",
  xlsb: "The file is a binary workbook (.xlsb); save it as .xlsx or CSV.",
  encrypted: "The workbook is protected by a password; save a copy without one.",
  truncated: "The workbook is cut off or damaged; copy or save it again.",
  damaged: "The workbook cannot be read; open it in a spreadsheet and save it again as .xlsx.",
  unopened: "The workbook was not unpacked; save each tab as CSV and give those files.",
  "not-a-workbook": "The file is an archive but no workbook; give the sheets in it.",
  "unpacks-too-large":
    "The workbook unpacks to more than 512 MB, or to over 200 times its size; save it again with its data only.",
  image: "The file is a picture; type its rows into a sheet or export them as CSV.",
  pdf: "The file is a PDF; export the rows as CSV or .xlsx.",
  archive: "The file is an archive; unpack it and give the sheets in it.",
  html: "The file is a web page under another name; open it in a spreadsheet and save it as .xlsx or CSV.",
  xml: "The file is XML; open it in a spreadsheet and save it as .xlsx or CSV.",
  json: "The file is JSON, such as a saved plan or a columns file; give the sheets themselves.",
  calendar: "The file is a calendar; give the sheets that it was made from.",
  binary: "The file holds no text; save the sheet as CSV or .xlsx.",
} as const;

export type RefusalCode = keyof typeof WORDS;

/** A refusal in the words of its code. */
export function refusal(file: string, code: RefusalCode): RefusedFile {
  return { file, code, message: WORDS[code] };
}

/** Names under which a sheet may be expected; other files of a folder are passed over instead of refused. */
const SHEET_NAME = /(\.(csv|tsv|tab|txt|xlsx|xlsm|xls|xlsb|ods|numbers)|^-)$/i;

/** What a file is for the reading: text, a workbook, refused, or no sheet at all. */
export type Verdict =
  | { kind: "text" }
  | { kind: "workbook" }
  | { kind: "refused"; refused: RefusedFile }
  | { kind: "passed-over"; why: RefusalCode };

/** Judges a file by its bytes before anything of it is unpacked. */
export function judgeFile({ name, bytes, fromFolder }: SheetFile): Verdict {
  if (bytes.length > LIMITS.fileBytes) return { kind: "refused", refused: refusal(name, "too-large") };
  const nature = natureOf(bytes);
  if (nature === "text") return { kind: "text" };
  const code = nature === "zip" ? zipProblem(bytes) : oleOr(nature, bytes);
  if (code === null) return { kind: "workbook" };
  return fromFolder && !SHEET_NAME.test(name)
    ? { kind: "passed-over", why: code }
    : { kind: "refused", refused: refusal(name, code) };
}

function oleOr(nature: Exclude<FileNature, "text" | "zip">, bytes: Uint8Array): RefusalCode {
  if (nature !== "ole") return nature;
  return holdsUtf16(bytes, "EncryptedPackage") ? "encrypted" : "xls";
}

/** Why a zip archive is no workbook that can be read; null where it is one. */
function zipProblem(bytes: Uint8Array): RefusalCode | null {
  const entries = zipDirectory(bytes);
  if (entries === null) return "truncated";
  const names = new Set(entries.map(({ name }) => name));
  if (names.has("xl/workbook.bin")) return "xlsb";
  if (names.has("content.xml") && names.has("mimetype")) return "ods";
  if (![...names].some((name) => /^xl\/workbook\w*\.xml$/i.test(name))) return "not-a-workbook";
  const unpacked = entries.reduce((sum, entry) => sum + entry.unpacked, 0);
  // A deflated entry that states no size would be unpacked without a cap.
  const unsized = entries.some(
    ({ method, compressed, unpacked: size }) => method !== 0 && size === 0 && compressed > 2,
  );
  const ratio = unpacked > LIMITS.ratioFromBytes && unpacked > bytes.length * LIMITS.ratio;
  return unpacked > LIMITS.unpackedBytes || ratio || unsized ? "unpacks-too-large" : null;
}

/** True where the bytes hold a word in UTF-16, as the directory of an old container does. */
function holdsUtf16(bytes: Uint8Array, word: string): boolean {
  const wanted = Array.from(word, (letter) => letter.charCodeAt(0));
  const last = Math.min(bytes.length, 4 * 1024 * 1024) - wanted.length * 2;
  for (let at = 0; at <= last; at += 2) {
    if (bytes[at] === wanted[0] && wanted.every((code, i) => bytes[at + 2 * i] === code && bytes[at + 2 * i + 1] === 0))
      return true;
  }
  return false;
}
