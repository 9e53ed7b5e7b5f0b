/**
 * Says what of a JSON value does not fit a shape; null where all does.
 *
 * @param at  the keys that lead to the value, parted by points; empty at the top
 */
export type JsonShape = (value: unknown, at: string) => string | null;

const place = (at: string) => (at === "" ? "" : ` at ${at}`);
const inside = (at: string, key: string | number) => (at === "" ? String(key) : `${at}.${key}`);

/** What passes a test, and else what was expected in its place. */
const only =
  (expected: string, fits: (value: unknown) => boolean): JsonShape =>
  (value, at) =>
    fits(value) ? null : `${place(at)}: ${named(value)} stands where ${expected} is expected`;

function named(value: unknown): string {
  if (value === undefined) return "nothing";
  if (typeof value === "string") return `"${value}"`;
  if (Array.isArray(value)) return "a list";
  return isObject(value) ? "an object" : String(value);
}

function isObject(value: unknown): value is object {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const LIST = only("a list", Array.isArray);
const OBJECT = only("an object", isObject);

/** Any text. */
export const text = only("a text", (value) => typeof value === "string");
/** A text that says something. */
export const words = only("a text that is not empty", (value) => typeof value === "string" && value !== "");
/** A count of 1 or more. */
export const ordinal = only("a whole number from 1", (value) => Number.isSafeInteger(value) && (value as number) >= 1);

/** One of some texts. */
export const oneOf = (texts: readonly string[]): JsonShape =>
  only(texts.map((one) => `"${one}"`).join(" or "), (value) => texts.includes(value as string));

/** What may be left out. */
export const optional =
  (shape: JsonShape): JsonShape =>
  (value, at) =>
    value === undefined ? null : shape(value, at);

/** What may be null. */
export const nullable =
  (shape: JsonShape): JsonShape =>
  (value, at) =>
    value === null ? null : shape(value, at);

/** A list of what has one shape. */
export const listOf =
  (shape: JsonShape): JsonShape =>
  (value, at) =>
    LIST(value, at) ?? first((value as unknown[]).entries(), (each, key) => shape(each, inside(at, key)));

/** An object with any keys, whose values have one shape. */
export const valuesOf =
  (shape: JsonShape): JsonShape =>
  (value, at) =>
    OBJECT(value, at) ?? first(Object.entries(value as object), (each, key) => shape(each, inside(at, key)));

/** An object with these keys and no others. */
export const objectOf =
  (shapes: Record<string, JsonShape>): JsonShape =>
  (value, at) =>
    OBJECT(value, at) ??
    first(Object.entries(shapes), (shape, key) => shape((value as Record<string, unknown>)[key], inside(at, key))) ??
    first(Object.entries(value as object), (_, key) =>
      Object.hasOwn(shapes, key)
        ? null
        : `${place(at)}: "${key}" is no key of it, only ${Object.keys(shapes).join(", ")}`,
    );

/** What has a shape and then passes a further look, which says what is wrong. */
export const andThen =
  <Value>(shape: JsonShape, wrong: (value: Value) => string | null): JsonShape =>
  (value, at) => {
    const problem = shape(value, at);
    if (problem !== null) return problem;
    const why = wrong(value as Value);
    return why && `${place(at)}: ${why}`;
  };

/** The first problem among some values. */
function first<Key, Value>(
  entries: Iterable<[Key, Value]>,
  problemOf: (value: Value, key: Key) => string | null,
): string | null {
  for (const [key, value] of entries) {
    const problem = problemOf(value, key);
    if (problem !== null) return problem;
  }
  return null;
}
