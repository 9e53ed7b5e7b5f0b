/*
 * Packed bytes as text that deflate makes as short as the bytes were. In base64 it would find stretches of three
 * characters again by chance, which cost more than they save: the more characters there are, the fewer. Of 92, 36 stand
 * for six bits each and 56 for seven, so that each comes as often as a code of that length is worth.
 */

const SIX_BITS = 36;

/** All that may stand in a quoted text within a script: the printable ones but the quote, the backslash and "<". */
const CHARACTERS = Array.from({ length: 95 }, (_, at) => String.fromCharCode(32 + at)).filter(
  (one) => !/["\\<]/.test(one),
);

/** Bytes as characters of seven bits and, those first in line, of six. */
export function textOfBytes(bytes: Uint8Array): string {
  const bitsFrom = (place: number, count: number) => {
    const two = ((bytes[place >> 3] ?? 0) << 8) | (bytes[(place >> 3) + 1] ?? 0);
    return (two >> (16 - count - (place & 7))) & ((1 << count) - 1);
  };
  let text = "";
  for (let place = 0; place < bytes.length * 8; ) {
    const six = bitsFrom(place, 6);
    text += CHARACTERS[six < SIX_BITS ? six : bitsFrom(place, 7) - SIX_BITS];
    place += six < SIX_BITS ? 6 : 7;
  }
  return text;
}

/** The bytes again. The page carries this function as it stands, so it asks for nothing outside itself. */
export function bytesOfText(text: string): Uint8Array {
  const bytes: number[] = [];
  let bits = 0;
  let count = 0;
  for (const one of text) {
    let code = one.charCodeAt(0) - 32;
    // the quote, "<" and the backslash are left out
    code -= +(code > 2) + +(code > 28) + +(code > 60);
    const isSix = code < 36;
    bits = isSix ? (bits << 6) | code : (bits << 7) | (code + 36);
    count += isSix ? 6 : 7;
    if (count > 7) {
      count -= 8;
      bytes.push(bits >> count);
    }
  }
  return Uint8Array.from(bytes);
}
