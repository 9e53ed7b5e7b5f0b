/** Characters gathered before a chunk is handed on. */
const CHUNK_LENGTH = 65_536;

/**
 * JSON text of an object in chunks, for streams: one line a key, and one line a row where a value is a list
 * of rows (or an object of such lists), so that two versions can be compared line by line. Ends with a newline.
 */
export function* jsonChunks(document: object): Generator<string> {
  let pending = "";
  for (const piece of jsonPieces(document, "")) {
    pending += piece;
    if (pending.length >= CHUNK_LENGTH) {
      yield pending;
      pending = "";
    }
  }
  yield `${pending}\n`;
}

function* jsonPieces(value: unknown, indent: string): Generator<string> {
  if (isRowList(value))
    yield* bracketed(
      "[",
      value.map((row) => ["", row] as const),
      "]",
      indent,
      compact,
    );
  else if (indent === "" || holdsRowLists(value)) {
    const entries = Object.entries(value as object).map(([key, entry]) => [`${JSON.stringify(key)}: `, entry] as const);
    yield* bracketed("{", entries, "}", indent, jsonPieces);
  } else yield JSON.stringify(value);
}

function* bracketed(
  open: string,
  entries: readonly (readonly [string, unknown])[],
  close: string,
  indent: string,
  write: (value: unknown, indent: string) => Iterable<string>,
): Generator<string> {
  yield open;
  let separator = "\n";
  for (const [label, entry] of entries) {
    yield `${separator}${indent}  ${label}`;
    yield* write(entry, `${indent}  `);
    separator = ",\n";
  }
  yield `\n${indent}${close}`;
}

function* compact(row: unknown): Generator<string> {
  yield JSON.stringify(row);
}

/** A list with at least one object or text in it: each element has its line. Lists of numbers stay on one. */
function isRowList(value: unknown): value is unknown[] {
  return (
    Array.isArray(value) && value.length > 0 && value.some((row) => typeof row === "object" || typeof row === "string")
  );
}

function holdsRowLists(value: unknown): boolean {
  return typeof value === "object" && value !== null && !Array.isArray(value) && Object.values(value).some(isRowList);
}
