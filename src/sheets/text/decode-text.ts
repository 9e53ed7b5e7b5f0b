/** A text file's text and the encoding in which it was written. */
interface DecodedText {
  text: string;
  encoding: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252";
}

/** Share of zero bytes in one half of the byte pairs from which a file counts as UTF-16 without a mark. */
const UTF16_ZERO_SHARE = 0.4;

/**
 * Text of a file's bytes: by its byte-order mark, else UTF-16 where every other byte is mostly zero,
 * else UTF-8, and Windows-1252 where the bytes are no UTF-8. Marks and NUL characters are dropped.
 */
export function decodeText(bytes: Uint8Array): DecodedText {
  const encoding = encodingOf(bytes);
  const text = new TextDecoder(encoding).decode(bytes);
  return { text: text.includes("\0") ? text.replaceAll("\0", "") : text, encoding };
}

function encodingOf(bytes: Uint8Array): DecodedText["encoding"] {
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
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return "utf-8";
  } catch {
    return "windows-1252";
  }
}
