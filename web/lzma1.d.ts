/*
 * The packer's own types are its sources, which are not written for checks as strict as these.
 */

/** LZMA with the usual header of properties and size; the mode is 1 to 9, the hardest. */
export function compress(data: Uint8Array, mode?: number): Uint8Array;
