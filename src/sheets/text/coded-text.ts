/** Parts of up to so many characters are put together one by one; longer ones are decoded. */
const SHORT = 40;
/** The share of a text from which on parts are cut out of the whole of it: a sheet of serials is nearly all asked for. */
const SHARE_OF_WHOLE = 1 / 16;

const LINE_FEED = 10;
const RETURN = 13;
const QUOTE = 34;

/**
 * A text as the codes of its characters. What a large sheet holds is compared code by code, and few of its parts are
 * needed as texts: to decode all of them would take as long as to read them.
 */
export class CodedText {
  #whole: string | null;
  #asked = 0;

  private constructor(
    readonly codes: Uint8Array | Uint16Array,
    whole: string | null,
  ) {
    this.#whole = whole;
  }

  static of(text: string): CodedText {
    const codes = new Uint16Array(text.length);
    for (let at = 0; at < codes.length; at++) codes[at] = text.charCodeAt(at);
    return new CodedText(codes, text);
  }

  /** @param bytes  codes below 128 only */
  static ofAscii(bytes: Uint8Array): CodedText {
    return new CodedText(bytes, null);
  }

  get length(): number {
    return this.codes.length;
  }

  slice(from: number, to: number): string {
    if (this.#whole !== null) return this.#whole.slice(from, to);
    const part = this.codes.subarray(from, to);
    if (part.length > SHORT) return decoded(part);
    this.#asked += part.length;
    if (this.#asked > this.codes.length * SHARE_OF_WHOLE) this.#whole = decoded(this.codes);
    let text = "";
    for (const code of part) text += String.fromCharCode(code);
    return text;
  }
}

function decoded(codes: Uint8Array | Uint16Array): string {
  return new TextDecoder().decode(codes as Uint8Array<ArrayBuffer>);
}

/** The bytes of a text of ASCII characters without quotes, each line end as one line feed; null for any other text. */
export function plainAscii(bytes: Uint8Array): Uint8Array | null {
  let held = 0;
  for (let at = 0; at < bytes.length; at++) held |= SORT_OF[bytes[at]!]!;
  if ((held & UNPLAIN) !== 0) return null;
  return (held & ENDS_BY_RETURN) === 0 ? bytes : withPlainLineEnds(bytes);
}

const UNPLAIN = 1;
const ENDS_BY_RETURN = 2;
/** What a byte makes of a text, all sorts in one look: a large sheet has millions of them. */
const SORT_OF = new Uint8Array(256).fill(UNPLAIN, 128);
SORT_OF[0] = UNPLAIN;
SORT_OF[QUOTE] = UNPLAIN;
SORT_OF[RETURN] = ENDS_BY_RETURN;

function withPlainLineEnds(bytes: Uint8Array): Uint8Array {
  const plain = new Uint8Array(bytes.length);
  let to = 0;
  for (let at = 0; at < bytes.length; at++) {
    const code = bytes[at]!;
    if (code === LINE_FEED && at > 0 && bytes[at - 1] === RETURN) continue;
    plain[to++] = code === RETURN ? LINE_FEED : code;
  }
  return plain.subarray(0, to);
}
