import { compress } from "lzma1";
import { type LearnedChances, learnedChances } from "./learned-chances.ts";
import { isLead } from "./word-codes.ts";

/** The hardest that the packer looks. */
const HOW_HARD = 9;
/** The packer's own head, of its settings and the size: unpack.ts knows the ones and is told the other. */
const HEAD = 13;
/** Bits of the byte before by which a byte is told: all of them. */
const LITERAL_BITS = 8;
/** Questions by which a byte is told, given the byte before. */
const BYTE_QUESTIONS = 768;
/** A stretch found again that is so long is taken at once. */
const LONG_ENOUGH = 48;
/** Questions asked by the two bytes before: of a byte of which no repeat tells, and whether a repeat begins. */
const PAIR_QUESTIONS = 2 ** 20 + 256;

/** The packer's parts (lzma1 0.3.0). */
const LIBRARY = new URL("../node_modules/lzma1/lib/", import.meta.url).pathname;
/** The packer is changed once, however often it packs. */
let ready: Promise<void> | undefined;

/** Bytes made shorter, which unpack() gives back. */
export async function pack(bytes: Uint8Array): Promise<Uint8Array> {
  ready ??= packAsText();
  await ready;
  return compress(bytes, HOW_HARD).slice(HEAD);
}

/**
 * Has the packer learn chances as unpack() does, which takes a fortieth off, and ask some questions by two bytes as well,
 * which takes a 150th off. It looks at a byte's place among four no more, which tells something of machine code and
 * nothing of a text: a thousandth. What a length or a distance costs it reckons once, before it has met any, and a bit's
 * cost by straight lines between powers of two: reckoned anew each time, and as the logarithm it is, it finds the shorter
 * way more often, six thousandths less.
 */
async function packAsText(): Promise<void> {
  const [{ Encoder }, { PROB_PRICES }, { RangeBitTreeCoder }] = await Promise.all(
    ["encoder", "utils", "range-bit-tree-coder"].map((part) => import(`${LIBRARY}${part}.js`)),
  );
  const { configure, encodeLength } = Encoder.prototype;
  Encoder.prototype.configure = function (mode: unknown) {
    configure.call(this, mode);
    this._posStateBits = 0;
    this._posStateMask = 0;
    this._numLiteralContextBits = LITERAL_BITS;
    this._numFastBytes = LONG_ENOUGH;
  };
  Encoder.prototype.encodeLength = function (of: { updateTables: (places: number) => void }, ...length: unknown[]) {
    encodeLength.call(this, of, ...length);
    of.updateTables(1);
    this._matchPriceCount = this._alignPriceCount = Infinity;
  };
  Encoder.prototype.getEncoderBitTreePrice = (of: object, symbol: number) =>
    RangeBitTreeCoder.prototype.getPrice.call(of, symbol);
  const learned = new WeakMap<object, LearnedChances>();
  const learnedOf = (asked: object, questions: number, pace?: number) => {
    const before = learned.get(asked);
    if (before !== undefined) return before;
    const chances = learnedChances(questions);
    if (pace !== undefined) chances.paces.fill(pace);
    learned.set(asked, chances);
    return chances;
  };
  Encoder.prototype.encodeBit = function (prices: number[], at: number, bit: number) {
    // what stands before bears on a byte and on whether a repeat begins, which is priced without it
    const isOfByte = prices.length === BYTE_QUESTIONS;
    const isOfRepeat = prices === this._isMatch;
    const afterLead = Number(isLead(this._matchFinder.getIndexByte(-2 - this._additionalOffset)));
    const before = isOfRepeat ? 256 * afterLead + this._previousByte : isOfByte ? afterLead : 0;
    const question = before * prices.length + at;
    const chances = learnedOf(prices, prices.length * (isOfRepeat ? 512 : isOfByte ? 2 : 1));
    const coder = this._rangeEncoder;
    const range = coder.rrange >>> 0;
    let chance = chances.of[question]!;
    const byPair = learnedOf(this, PAIR_QUESTIONS, 2 / 3);
    const pair = (this._matchFinder.getIndexByte(-2 - this._additionalOffset) << 8) + this._previousByte;
    const node = isOfRepeat ? 0 : isOfByte && at < 256 ? at : null;
    const again = node === null ? null : (Math.imul(pair, 0x9e3779b1) >>> 12) + node;
    if (again !== null) chance += (byPair.of[again]! - chance) * (1 / 2 - (3 / 4) * byPair.paces[again]!);
    const below = Math.floor(range * chance);
    if (bit) coder.low += BigInt(below);
    coder.rrange = bit ? range - below : below;
    while (coder.rrange >>> 0 < 2 ** 24) {
      coder.rrange <<= 8;
      this.shiftLow();
    }
    chances.hear(question, bit);
    if (again !== null) byPair.hear(again, bit);
    prices[at]! += (chances.of[question]! * 2048 - prices[at]!) / (isOfRepeat ? 32 : 1);
  };
  // the size is known
  Encoder.prototype.writeEndMarker = () => {};
  // a price for each 512th of a chance, in 64ths of a bit
  for (const chance of PROB_PRICES.keys()) PROB_PRICES[chance] = -64 * Math.log2((chance + 0.5) / 512);
}
