/** One file inside a zip archive, as its directory states it. */
interface ZipEntry {
  name: string;
  compressed: number;
  unpacked: number;
  /** 0 = stored, 8 = deflated. */
  method: number;
}

const END_OF_DIRECTORY = 0x06054b50;
const DIRECTORY_ENTRY = 0x02014b50;
const END_SIZE = 22;
const ENTRY_SIZE = 46;
const MAX_COMMENT = 65_535;
const ZIP64 = 0xffffffff;

/**
 * The directory of a zip archive, read without unpacking anything.
 *
 * @returns null where the archive is cut off or damaged
 * @see PKWARE, APPNOTE.TXT, sections 4.3.12 and 4.3.16
 */
export function zipDirectory(bytes: Uint8Array): ZipEntry[] | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endOfDirectory(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  const entries: ZipEntry[] = [];
  let at = view.getUint32(end + 16, true);
  for (let i = 0; i < count; i++) {
    if (at + ENTRY_SIZE > bytes.length || view.getUint32(at, true) !== DIRECTORY_ENTRY) return null;
    const nameLength = view.getUint16(at + 28, true);
    const name = new TextDecoder().decode(bytes.subarray(at + ENTRY_SIZE, at + ENTRY_SIZE + nameLength));
    const compressed = view.getUint32(at + 20, true);
    const unpacked = view.getUint32(at + 24, true);
    entries.push({
      name,
      compressed,
      unpacked: unpacked === ZIP64 ? Number.POSITIVE_INFINITY : unpacked,
      method: view.getUint16(at + 10, true),
    });
    at += ENTRY_SIZE + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
  }
  return entries;
}

function endOfDirectory(view: DataView): number | null {
  const from = view.byteLength - END_SIZE;
  for (let at = from; at >= 0 && at >= from - MAX_COMMENT; at--) {
    if (view.getUint32(at, true) === END_OF_DIRECTORY) return at;
  }
  return null;
}
