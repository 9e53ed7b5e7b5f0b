/** A file of an archive. */
interface Part {
  name: string;
  text: string;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const VERSION = 20;
const NAMES_ARE_UTF8 = 0x0800;
const DEFLATED = 8;
/** 1 January 1980, the first day that the format knows: the same parts give the same bytes. */
const NO_DATE = 0x0021;

/** Packs texts into a ZIP archive (the format's version 2.0), deflated by what the browser or Node has for it. */
export async function zip(parts: readonly Part[]): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { name, text } of parts) {
    const bytes = new TextEncoder().encode(text);
    const packed = await deflated(bytes);
    const label = new TextEncoder().encode(name);
    const about = [
      [VERSION, 2],
      [NAMES_ARE_UTF8, 2],
      [DEFLATED, 2],
      [0, 2],
      [NO_DATE, 2],
      [crc32(bytes), 4],
      [packed.length, 4],
      [bytes.length, 4],
      [label.length, 2],
      [0, 2],
    ] as Field[];
    const head = record([[LOCAL, 4], ...about]);
    directory.push(record([[CENTRAL, 4], [VERSION, 2], ...about, [0, 2], [0, 2], [0, 2], [0, 4], [offset, 4]]), label);
    pieces.push(head, label, packed);
    offset += head.length + label.length + packed.length;
  }
  const size = directory.reduce((sum, piece) => sum + piece.length, 0);
  const count = parts.length;
  const end = record([
    [END, 4],
    [0, 2],
    [0, 2],
    [count, 2],
    [count, 2],
    [size, 4],
    [offset, 4],
    [0, 2],
  ]);
  return new Uint8Array(await new Blob([...pieces, ...directory, end] as BlobPart[]).arrayBuffer());
}

type Field = [value: number, bytes: 2 | 4];

/** Numbers one after the other, low byte first. */
function record(fields: readonly Field[]): Uint8Array {
  const view = new DataView(new ArrayBuffer(fields.reduce((sum, [, bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [value, bytes] of fields) {
    if (bytes === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(view.buffer);
}

async function deflated(bytes: Uint8Array): Promise<Uint8Array> {
  const stream = new Blob([bytes as BlobPart]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** CRC-32 of ISO 3309, as in PNG and ZIP. */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}
