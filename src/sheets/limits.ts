const MB = 1024 * 1024;

/** Limits that are checked before memory is spent. */
export const LIMITS = {
  fileBytes: 256 * MB,
  unpackedBytes: 512 * MB,
  /** Unpacked to packed, beyond `ratioFromBytes` unpacked. */
  ratio: 200,
  ratioFromBytes: 50 * MB,
  rows: 2_000_000,
  columns: 1000,
} as const;
