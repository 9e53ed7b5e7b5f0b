import { readFileSync } from "node:fs";
import { deflateRawSync } from "node:zlib";
import { expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { learnedChances } from "../../web/learned-chances.ts";
import { pack } from "../../web/pack.ts";
import { unpack } from "../../web/unpack.ts";

const random = seededRandom(20_261_130);
const noise = (count: number, kinds = 256) =>
  Uint8Array.from({ length: count }, () => Math.floor(random.uniform() * kinds));
const joined = (...parts: Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));
const sheet = readFileSync("sample-data/runtime_tests.csv");

it("gives all bytes back as they were", async () => {
  const block = noise(600);
  // repeats of every length that is told in a way of its own, from near and from far
  const repeats = [2, 3, 5, 9, 10, 17, 18, 64, 272, 273, 274, 600].flatMap((length) => [
    block.subarray(0, length),
    noise(length % 7),
  ]);
  const samples = [
    noise(1),
    noise(1000),
    noise(5000, 3),
    new Uint8Array(3000).fill(255),
    joined(block, noise(3), block, noise(70_000, 40), block, ...repeats),
    sheet,
  ];
  for (const one of samples) {
    const packed = await pack(one);
    expect(Buffer.from(unpack(packed, one.length, learnedChances)).equals(one)).toBe(true);
  }
});

it("has an unpacker that stands by itself, as the page carries it", async () => {
  const carried = new Function("packed", "size", `return (${unpack})(packed, size, ${learnedChances})`);
  expect(Buffer.from(carried(await pack(sheet), sheet.length)).equals(sheet)).toBe(true);
});

it("leaves a text at least a tenth shorter than deflate", async () => {
  expect((await pack(sheet)).length).toBeLessThan(0.9 * deflateRawSync(sheet, { level: 9 }).length);
});
