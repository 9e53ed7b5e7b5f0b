import { Readable } from "node:stream";
import { createDeflateRaw } from "node:zlib";
import { openWorkbooks } from "../../src/sheets/open-file.ts";
import { readSheets } from "../../src/sheets/read-sheets.ts";
import { msOf } from "./report.ts";

const PIECE = 1 << 20;

/** So many MB of nothing, packed piece by piece: the bench itself must stay small. */
async function packedNothing(megabytes: number): Promise<Buffer> {
  const piece = Buffer.alloc(PIECE);
  const nothing = Readable.from(Array.from({ length: megabytes }, () => piece));
  const parts: Buffer[] = [];
  for await (const part of nothing.pipe(createDeflateRaw())) parts.push(part as Buffer);
  return Buffer.concat(parts);
}

/** An archive of one sheet, laid out as PKWARE's APPNOTE says; the unpacked size it states may be a lie. */
function archiveOf(packed: Buffer, stated: number): Buffer {
  const path = Buffer.from("xl/workbook.xml");
  const local = Buffer.alloc(30);
  local.writeUInt32LE(0x04034b50, 0);
  local.writeUInt16LE(8, 8);
  local.writeUInt32LE(packed.length, 18);
  local.writeUInt32LE(stated, 22);
  local.writeUInt16LE(path.length, 26);
  const entry = Buffer.alloc(46);
  entry.writeUInt32LE(0x02014b50, 0);
  entry.writeUInt16LE(8, 10);
  entry.writeUInt32LE(packed.length, 20);
  entry.writeUInt32LE(stated, 24);
  entry.writeUInt16LE(path.length, 28);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(1, 8);
  end.writeUInt16LE(1, 10);
  end.writeUInt32LE(entry.length + path.length, 12);
  end.writeUInt32LE(local.length + path.length + packed.length, 16);
  return Buffer.concat([local, path, packed, entry, path, end]);
}

/** How long refusing an archive takes, and the most memory (MB) that the whole process ever held. */
export async function bombRefusal(
  megabytes: number,
  statedBytes: number,
): Promise<{ code: string; seconds: number; peakMb: number }> {
  const archive = archiveOf(await packedNothing(megabytes), statedBytes);
  const files = [{ name: "bomb.xlsx", bytes: new Uint8Array(archive) }];
  let code = "none";
  const ms = await msOf(async () => {
    await openWorkbooks(files);
    code = readSheets(files, { asOf: 20_758, dateOrder: null }).refused[0]?.code ?? "none";
  });
  return { code, seconds: ms / 1000, peakMb: process.resourceUsage().maxRSS / 1024 };
}
