import { decoded } from "./decoded.ts";
import { meantText } from "./meant-text.ts";

/** A text file's text and the encoding in which it was written. */
interface DecodedText {
  text: string;
  encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
}

/** Share of zero bytes in one half of the byte pairs from which a file counts as UTF-16 without a mark. */
const UTF16_ZERO_SHARE = 0.4;

/**
 * Text of a file's bytes: by its byte-order mark, else UTF-16 where every other byte is mostly zero,
 * else UTF-8, and Windows-1252 where the bytes are no UTF-8. Marks and NUL characters are dropped,
 * and what was once read in the wrong code is put right.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const wide = wideEncodingOf(bytes);
  const { text, encoding } = wide === null ? narrowText(bytes) : { text: decoded(bytes, wide), encoding: wide };
  return { text: meantText(text.includes("\0") ? text.replaceAll("\0", "") : text), encoding };
}

function narrowText(bytes: Uint8Array): DecodedText {
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "utf-8" };
  } catch {
    return { text: decoded(bytes, "windows-1252"), encoding: "windows-1252" };
  }
}

/** UTF-16 by its mark or its zeros; null where the bytes are none. */
function wideEncodingOf(bytes: Uint8Array): "utf-16le" | "utf-16be" | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const sample = bytes.subarray(0, 4096);
  let evenZeros = 0;
  let oddZeros = 0;
  for (let i = 0; i < sample.length; i++) {
    if (sample[i] === 0) {
      if (i % 2 === 0) evenZeros++;
      else oddZeros++;
    }
  }
  const pairs = sample.length / 2;
  if (pairs >= 2 && oddZeros / pairs > UTF16_ZERO_SHARE && evenZeros / pairs < 0.1) return "utf-16le";
  if (pairs >= 2 && evenZeros / pairs > UTF16_ZERO_SHARE && oddZeros / pairs < 0.1) return "utf-16be";
  return null;
}
