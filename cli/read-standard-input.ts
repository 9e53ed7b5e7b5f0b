import { readSync } from "node:fs";

const PIECE = 65_536;
/** How long to wait for more where there is nothing yet, milliseconds. */
const PAUSE = 20;

/**
 * All of standard input, also where it comes slowly: a pipe that another program has set not to wait says "nothing yet"
 * (EAGAIN) instead of waiting, which `readFileSync` takes for an error.
 *
 * @param most  bytes after which no more is read
 * @returns the bytes; more than `most` where there were more
 */
export function readStandardInput(most = Number.POSITIVE_INFINITY): Uint8Array {
  const pieces: Uint8Array[] = [];
  for (let read = 0; read <= most; ) {
    const piece = new Uint8Array(PIECE);
    const count = readPiece(piece);
    if (count === 0) break;
    pieces.push(piece.subarray(0, count));
    read += count;
  }
  return Buffer.concat(pieces);
}

/** Reads what is there next; 0 at the end. */
function readPiece(piece: Uint8Array): number {
  for (;;) {
    try {
      return readSync(0, piece);
    } catch (error) {
      const { code } = error as NodeJS.ErrnoException;
      // how Windows says that a pipe has ended
      if (code === "EOF") return 0;
      if (code !== "EAGAIN") throw error;
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, PAUSE);
    }
  }
}
