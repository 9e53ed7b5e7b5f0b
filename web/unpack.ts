import type { learnedChances } from "./learned-chances.ts";

/**
 * The bytes that pack() made shorter: a stream of LZMA, but for its head and end and for how its chances are learned. The
 * page carries this function as it stands, so it asks for nothing outside itself.
 *
 * @param size    of the bytes
 * @param chances  learnedChances()
 */
export function unpack(packed: Uint8Array, size: number, chances: typeof learnedChances): Uint8Array {
  // where the questions of a kind begin: those asked in each of 12 states, of lengths, of distances, of bytes
  const [isRecent, isOlder, isThirdOrFourth, isFourth, isLong] = [0, 16, 32, 48, 64];
  const [lengths, recentLengths, slots, nearBits, lastBits] = [96, 512, 1024, 1280, 1408];
  // and those asked by the byte before, and by the two before
  const [isRepeat, bytes, byTwo] = [2 ** 11, 2 ** 14, 2 ** 19];
  const learned = chances(byTwo + 2 ** 20 + 256);
  // those are many, and hear few answers each
  learned.paces.fill(2 / 3, byTwo);

  let place = 5;
  let range = 2 ** 32 - 1;
  let code = packed.subarray(0, place).reduce((sum, byte) => sum * 256 + byte, 0);
  const told = (below: number) => {
    const answer = code < below ? 0 : 1;
    code -= answer * below;
    range = answer ? range - below : below;
    while (range < 2 ** 24) {
      range *= 256;
      code = code * 256 + packed[place++]!;
    }
    return answer;
  };
  const bit = (question: number, again?: number) => {
    let chance = learned.of[question]!;
    // asked of two at once, the second counts the more the more it has heard, and at most as much
    if (again) chance += (learned.of[again]! - chance) * (1 / 2 - (3 / 4) * learned.paces[again]!);
    const answer = told(Math.floor(range * chance));
    learned.hear(question, answer);
    if (again) learned.hear(again, answer);
    return answer;
  };
  const number = (from: number, bits: number) => {
    let node = 1;
    for (let left = bits; left > 0; left--) node = node * 2 + bit(from + node);
    return node - (1 << bits);
  };
  const numberFromLowest = (from: number, bits: number) => {
    let node = 1;
    let value = 0;
    for (let at = 0; at < bits; at++) {
      const one = bit(from + node);
      node = node * 2 + one;
      value |= one << at;
    }
    return value;
  };
  const evenNumber = (bits: number) => {
    let value = 0;
    for (let left = bits; left > 0; left--) {
      range -= range % 2;
      value = value * 2 + told(range / 2);
    }
    return value;
  };
  const lengthBy = (from: number) => {
    if (!bit(from)) return 2 + number(from + 8, 3);
    return bit(from + 1) ? 18 + number(from + 32, 8) : 10 + number(from + 16, 3);
  };
  const distanceFor = (length: number) => {
    const slot = number(slots + 64 * Math.min(length - 2, 3), 6);
    if (slot < 4) return slot + 1;
    const bits = (slot >> 1) - 1;
    const least = (2 | (slot & 1)) << bits;
    if (slot < 14) return 1 + least + numberFromLowest(nearBits + least - slot - 1, bits);
    return 1 + least + 16 * evenNumber(bits - 4) + numberFromLowest(lastBits, 4);
  };

  const all = new Uint8Array(size);
  let at = 0;
  let state = 0;
  let recent = [1, 1, 1, 1];
  // a byte that ends a word's code (word-codes.ts) is none of its own
  const byteBefore = () => (all[at - 2]! > 13 && all[at - 2]! < 29 ? 256 : 0) + (all[at - 1] ?? 0);
  const byPair = (node: number) => byTwo + (Math.imul((all[at - 2]! << 8) + all[at - 1]!, 0x9e3779b1) >>> 12) + node;
  const byte = () => {
    const from = bytes + 768 * byteBefore();
    // after a repeat a byte differs from the one that would have gone on: told beside its bits, while they are the same
    let apart = state < 7 ? 0 : 256;
    let other = all[at - recent[0]!]!;
    let node = 1;
    while (node < 256) {
      other *= 2;
      const beside = other & apart;
      const one = bit(from + apart + beside + node, apart ? 0 : byPair(node));
      node = node * 2 + one;
      if (one !== beside >> 8) apart = 0;
    }
    all[at++] = node;
  };
  while (at < size) {
    let length = 0;
    const afterByte = state < 7;
    if (!bit(isRepeat + 16 * byteBefore() + state, byPair(0))) {
      byte();
      state -= state < 4 ? state : state < 10 ? 3 : 6;
    } else if (!bit(isRecent + state)) {
      length = lengthBy(lengths);
      recent = [distanceFor(length), ...recent.slice(0, 3)];
      state = afterByte ? 7 : 10;
    } else {
      let which = 0;
      if (bit(isOlder + state)) which = bit(isThirdOrFourth + state) ? 2 + bit(isFourth + state) : 1;
      else if (!bit(isLong + state)) length = 1;
      recent.unshift(...recent.splice(which, 1));
      state = !afterByte ? 11 : length ? 9 : 8;
      length ||= lengthBy(recentLengths);
    }
    while (length-- > 0) all[at] = all[at++ - recent[0]!]!;
  }
  return all;
}
