/** What is wrong with a value, and where in it. */
export interface ShapeProblem {
  at: (string | number)[];
  why: string;
}

/** Looks at a value that may be anything: what is wrong with it, null where nothing is. */
export type Shape = (value: unknown) => ShapeProblem | null;

const wrong = (why: string): ShapeProblem => ({ at: [], why });

/** A value that holds a condition. */
export function holding(holds: (value: unknown) => boolean, expected: string): Shape {
  return (value) => (holds(value) ? null : wrong(`${expected} was expected`));
}

export const text = holding((value) => typeof value === "string", "text");
export const words = holding((value) => typeof value === "string" && value !== "", "some text");

export const oneOf = (...values: string[]): Shape =>
  holding((value) => values.includes(value as string), `one of ${values.map((one) => `"${one}"`).join(", ")}`);

export const orAbsent =
  (shape: Shape): Shape =>
  (value) =>
    value === undefined ? null : shape(value);

/** A list of values of one shape. */
export function listOf(shape: Shape): Shape {
  return (value) => (Array.isArray(value) ? firstProblem(value.entries(), () => shape) : wrong("a list was expected"));
}

/** A value with these keys and no others. */
export function recordOf(shapes: Record<string, Shape>): Shape {
  return (value) => {
    if (!isRecord(value)) return wrong("keys with values were expected");
    const unknown = Object.keys(value).find((key) => !Object.hasOwn(shapes, key));
    if (unknown !== undefined) return wrong(`"${unknown}" is no key here`);
    return firstProblem(
      Object.keys(shapes).map((key) => [key, value[key]] as const),
      (key) => shapes[key]!,
    );
  };
}

/** A value of any keys, each with a value of one shape. */
export function valuesOf(shape: Shape): Shape {
  return (value) =>
    isRecord(value) ? firstProblem(Object.entries(value), () => shape) : wrong("keys with values were expected");
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function firstProblem<Key extends string | number>(
  entries: Iterable<readonly [Key, unknown]>,
  shapeOf: (key: Key) => Shape,
): ShapeProblem | null {
  for (const [key, value] of entries) {
    const problem = shapeOf(key)(value);
    if (problem !== null) return { at: [key, ...problem.at], why: problem.why };
  }
  return null;
}
