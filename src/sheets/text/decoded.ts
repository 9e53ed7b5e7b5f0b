/**
 * The text of bytes in an encoding. In Node 20 and 22 Windows-1252 that comes in one piece is taken for Latin-1, which has no
 * "€": one of several is not.
 */
export function decoded(bytes: Uint8Array, encoding: "utf-16le" | "utf-16be" | "windows-1252"): string {
  return new TextDecoder(encoding).decode(bytes, { stream: true });
}
