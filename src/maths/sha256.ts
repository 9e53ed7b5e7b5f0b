const PRIMES: number[] = [];
for (let number = 2; PRIMES.length < 64; number++) {
  if (PRIMES.every((prime) => number % prime > 0)) PRIMES.push(number);
}

/**
 * The first 32 bits of a root's fractional part. None of these roots lies so close to where a bit turns that an engine's
 * rounding of it could tell.
 */
const firstBits = (root: number) => (root % 1) * 2 ** 32;

/** Round constants and the state to begin with, from cube roots and square roots of the first primes (sections 4.2.2, 5.3.3). */
const ROUND = Uint32Array.from(PRIMES, (prime) => firstBits(Math.cbrt(prime)));
const BEGIN = Int32Array.from(PRIMES.slice(0, 8), (prime) => firstBits(Math.sqrt(prime)));

/**
 * The SHA-256 digest of bytes, in lower-case hexadecimal.
 *
 * Synchronous and the same in every engine, which the platforms' own digests are not.
 *
 * @see FIPS PUB 180-4 (NIST, 2015), section 6.2
 * @example sha256(new Uint8Array())  // "e3b0c442...b855"
 */
export function sha256(bytes: Uint8Array): string {
  const state = BEGIN.slice();
  const schedule = new Int32Array(64);
  const whole = bytes.length - (bytes.length % 64);
  for (let at = 0; at < whole; at += 64) addBlock(state, schedule, bytes, at);
  const tail = paddedTail(bytes, whole);
  for (let at = 0; at < tail.length; at += 64) addBlock(state, schedule, tail, at);
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/** The bytes past the last whole block, a one bit, zeros, and the length in bits (section 5.1.1). */
function paddedTail(bytes: Uint8Array, from: number): Uint8Array {
  const rest = bytes.length - from;
  const tail = new Uint8Array(rest < 56 ? 64 : 128);
  tail.set(bytes.subarray(from));
  tail[rest] = 0x80;
  const view = new DataView(tail.buffer);
  view.setUint32(tail.length - 8, Math.floor(bytes.length / 0x20000000));
  view.setUint32(tail.length - 4, (bytes.length << 3) >>> 0);
  return tail;
}

function addBlock(state: Int32Array, w: Int32Array, bytes: Uint8Array, at: number): void {
  for (let i = 0, p = at; i < 16; i++, p += 4) {
    w[i] = (bytes[p]! << 24) | (bytes[p + 1]! << 16) | (bytes[p + 2]! << 8) | bytes[p + 3]!;
  }
  for (let i = 16; i < 64; i++) {
    const x = w[i - 15]!;
    const y = w[i - 2]!;
    const s0 = ((x >>> 7) | (x << 25)) ^ ((x >>> 18) | (x << 14)) ^ (x >>> 3);
    const s1 = ((y >>> 17) | (y << 15)) ^ ((y >>> 19) | (y << 13)) ^ (y >>> 10);
    w[i] = (w[i - 16]! + s0 + w[i - 7]! + s1) | 0;
  }
  let a = state[0]!;
  let b = state[1]!;
  let c = state[2]!;
  let d = state[3]!;
  let e = state[4]!;
  let f = state[5]!;
  let g = state[6]!;
  let h = state[7]!;
  for (let i = 0; i < 64; i++) {
    const s1 = ((e >>> 6) | (e << 26)) ^ ((e >>> 11) | (e << 21)) ^ ((e >>> 25) | (e << 7));
    const t1 = (h + s1 + ((e & f) ^ (~e & g)) + ROUND[i]! + w[i]!) | 0;
    const s0 = ((a >>> 2) | (a << 30)) ^ ((a >>> 13) | (a << 19)) ^ ((a >>> 22) | (a << 10));
    const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + t1) | 0;
    d = c;
    c = b;
    b = a;
    a = (t1 + t2) | 0;
  }
  state[0]! += a;
  state[1]! += b;
  state[2]! += c;
  state[3]! += d;
  state[4]! += e;
  state[5]! += f;
  state[6]! += g;
  state[7]! += h;
}
