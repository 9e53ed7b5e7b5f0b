/** What a file is by its first bytes, whatever it is called. */
export type FileNature =
  | "text"
  | "zip"
  | "ole"
  | "image"
  | "pdf"
  | "archive"
  | "html"
  | "xml"
  | "json"
  | "calendar"
  | "binary";

const starts = (bytes: Uint8Array, ...signature: number[]) => signature.every((byte, at) => bytes[at] === byte);

/** How many bytes are looked at for signs that a file is no text. */
const LOOK = 4096;

/** Tells a file's nature from its bytes. */
export function natureOf(bytes: Uint8Array): FileNature {
  if (starts(bytes, 0x50, 0x4b, 0x03, 0x04) || starts(bytes, 0x50, 0x4b, 0x05, 0x06)) return "zip";
  if (starts(bytes, 0xd0, 0xcf, 0x11, 0xe0)) return "ole";
  if (starts(bytes, 0x89, 0x50, 0x4e, 0x47) || starts(bytes, 0xff, 0xd8, 0xff) || starts(bytes, 0x47, 0x49, 0x46, 0x38))
    return "image";
  if (
    starts(bytes, 0x49, 0x49, 0x2a, 0x00) ||
    starts(bytes, 0x4d, 0x4d, 0x00, 0x2a) ||
    (starts(bytes, 0x52, 0x49, 0x46, 0x46) && starts(bytes.subarray(8), 0x57, 0x45, 0x42, 0x50))
  )
    return "image";
  if (starts(bytes, 0x25, 0x50, 0x44, 0x46)) return "pdf";
  if (starts(bytes, 0x1f, 0x8b) || starts(bytes, 0x37, 0x7a, 0xbc, 0xaf) || starts(bytes, 0x52, 0x61, 0x72, 0x21))
    return "archive";
  const head = asciiOf(bytes.subarray(0, 512)).trimStart().toLowerCase();
  if (/^(<!doctype html|<html|<table|<head)/.test(head)) return "html";
  if (head.startsWith("<?xml")) return /<(html|table)/.test(head) ? "html" : "xml";
  if (/^[{[]\s*["{}\]]/.test(head)) return "json";
  if (head.startsWith("begin:vcalendar")) return "calendar";
  return mostlyControl(bytes) ? "binary" : "text";
}

function asciiOf(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) if (byte !== 0 && byte < 128) text += String.fromCharCode(byte);
  return text;
}

/** True where many bytes are control characters that no text holds (NUL bytes belong to UTF-16). */
function mostlyControl(bytes: Uint8Array): boolean {
  const sample = bytes.subarray(0, LOOK);
  let control = 0;
  for (const byte of sample)
    if (byte > 0 && byte < 32 && byte !== 9 && byte !== 10 && byte !== 13 && byte !== 12 && byte !== 26) control++;
  return sample.length > 0 && control > sample.length * 0.1;
}
