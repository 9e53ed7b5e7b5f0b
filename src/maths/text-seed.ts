/**
 * A seed from a text, the same for the same text: random streams that belong to a named thing do not change when
 * rows are sorted otherwise or others are added.
 *
 * @see Fowler, Noll and Vo, FNV-1a hash, 32 bits
 */
export function seedFromText(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return hash | 0;
}
