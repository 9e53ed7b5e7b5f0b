import { block, found, withoutBodies } from "./code-cuts.ts";

/** Names of text formats (e-mail addresses, tokens) that no value of a policy or mapping has (zod 4.6.7). */
const TEXT_FORMATS = /const FormatDictionary = \{[\s\S]*?\n {4}\};/;

/** What zod says of text formats, multiples, keys and unions, none of which such a value is checked for (zod 4.6.7). */
const TEXT_ISSUES = /case "invalid_format": \{[\s\S]*?(?=case "unrecognized_keys":)/;

/**
 * Schemas that are waited for, asked backward, by other names or for what values they take, that make one type of another,
 * and records whose keys are listed: nothing is checked so (zod 4.6.7).
 */
const AWAITED = new RegExp(
  String.raw`[\w.]+ instanceof Promise|\bctx\.async(?=\))|\bctx\??\.direction === "backward"|\bproms\.length|` +
    String.raw`asyncResult \|\||(?<=if \()(?:asyncResult|def\.coerce|ctx\.skipChecks)(?=\))`,
  "g",
);
const OTHER_SURFACE: [string, string][] = [["standardProps", "{}"]];
const LISTED_KEYS = "values && !def.partial";
const VALUES_TAKEN =
  /^ {4}util\.defineLazyInternal\(inst, "(?:pattern|propValues|values)", \(zod\) => (?:\{\n[\s\S]*?\n {4}\}\);|.*;)/gm;
/** What an error of schemas is besides its issues, and what is done with a schema besides to read safely by it. */
const ERROR_WORDS = /(?<=^const initializer = \(inst, def\) => \{)[\s\S]*?(?=\n\};)/m;
const OTHER_METHODS = ["parse", "parseAsync", "safeParseAsync", "brand", "register", "apply"];

/**
 * Cycles of values, reading that ends with the first issue, a hook, and what an array's size is capped by: nothing is
 * checked so (zod 4.6.7).
 */
const OTHER_READING: [RegExp, string][] = [
  [/core\.globalConfig\.memoizer/g, "undefined"],
  [/ctx\?\.abortEarly(?: === true)?/g, "false"],
  [/(?<=function capSize\(inst, size\) \{)[\s\S]*?(?=\n\})/, ""],
];
const HOOK = /const pp = globalThis[^;]*;/;

/** Numbers that are no whole ones, words that go with a schema in another form, and what an integer is (zod 4.6.7). */
const OTHER_NUMBERS = /^ {4}u?(?:int|float)(?:32|64): .*$/gm;
const OTHER_WORDS = block(" {4}", String.raw`if \(params\?\.message !== undefined\)`);
const NOTES = /^\s+note: "Integers.*$/gm;

/**
 * A module of the schema library without what is asked of no schema in the page; null where it is left as it is.
 *
 * @param path  of the module, parted by slashes
 */
export function withoutSchemaParts(code: string, path: string): string | null {
  if (/core\/(schemas|checks|parse)\.js$/.test(path)) {
    const atOnce = code.replace(AWAITED, (what) => (what === "asyncResult ||" ? "" : "false"));
    const open = atOnce.replace(LISTED_KEYS, "false");
    if (path.endsWith("checks.js")) return found(open, NOTES, "");
    if (path.endsWith("parse.js")) return open;
    const plain = withoutBodies(found(open, VALUES_TAKEN, ""), OTHER_SURFACE);
    return OTHER_READING.reduce((text, [pattern, by]) => found(text, pattern, by), plain);
  }
  if (path.endsWith("core/core.js"))
    return found(withoutBodies(code, [["newError", "new Definition()"]]), HOOK, "const pp = null;");
  if (path.endsWith("core/errors.js")) return found(code, ERROR_WORDS, "inst.issues = def;");
  if (path.endsWith("core/util.js")) {
    const counted = withoutBodies(code, [["codePointLength", "str.length"]]);
    return [OTHER_NUMBERS, OTHER_WORDS].reduce((text, pattern) => found(text, pattern, ""), counted);
  }
  if (path.endsWith("mini/schemas.js"))
    return OTHER_METHODS.reduce(
      (text, name) => found(text, block(" {4}", String.raw`${name}\([^)]*\)`), `${name}: null`),
      code,
    );
  if (path.endsWith("locales/en.js"))
    return code.replace(TEXT_FORMATS, 'const FormatDictionary = { regex: "input" };').replace(TEXT_ISSUES, "");
  return null;
}
