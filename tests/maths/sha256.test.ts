import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sha256 } from "../../src/maths/sha256.ts";

const bytesOf = (text: string) => new TextEncoder().encode(text);

describe("sha256", () => {
  // Source: NIST, FIPS 180 example values for SHA-256 (one block, two blocks), and the empty message.
  it.each([
    ["", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"],
    ["abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"],
    [
      "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
      "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
    ],
  ])("gives the published digest of %j", (text, digest) => {
    expect(sha256(bytesOf(text))).toBe(digest);
  });

  it("agrees with the platform's own digest for every length around a block's end", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(sha256(bytes)).toBe(createHash("sha256").update(bytes).digest("hex"));
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});
