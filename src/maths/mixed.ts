/** One number more in a sum; the multiplier is from Knuth, The Art of Computer Programming, vol. 3, sec. 6.4 (from memory). */
export function mixed(sum: number, number: number): number {
  return Math.imul(sum ^ number, 2654435761) ^ (sum >>> 15);
}
