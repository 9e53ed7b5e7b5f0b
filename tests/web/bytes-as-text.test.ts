import { deflateRawSync } from "node:zlib";
import { expect, it } from "vitest";
import { seededRandom } from "../../src/maths/random.ts";
import { bytesOfText, textOfBytes } from "../../web/bytes-as-text.ts";

const random = seededRandom(20_261_130);
const bytes = (count: number) => Uint8Array.from({ length: count }, () => Math.floor(random.uniform() * 256));

it("gives all bytes back as they were", () => {
  const samples = [0, 1, 2, 3, 5, 8, 13, 1000].map(bytes);
  for (const one of [...samples, Uint8Array.of(0, 0, 0), Uint8Array.of(255, 255), Uint8Array.from(Array(256).keys())]) {
    expect(bytesOfText(textOfBytes(one))).toEqual(one);
  }
});

it("is a function that stands by itself, as the page carries it", () => {
  const one = bytes(500);
  expect(new Function("text", `return (${bytesOfText})(text)`)(textOfBytes(one))).toEqual(one);
});

it("may stand between quotes in a script of a page", () => {
  expect(textOfBytes(bytes(20_000))).toMatch(/^[^"\\<\p{Cc}]*$/u);
});

it("costs deflate less than base64 does", () => {
  const one = bytes(200_000);
  const packed = (text: string) => deflateRawSync(text, { level: 9 }).length;
  expect(packed(textOfBytes(one))).toBeLessThan(packed(Buffer.from(one).toString("base64")));
});
