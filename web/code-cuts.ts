/** The code with the bodies of functions left out; a body ends with the first brace that is indented as its function is. */
export function withoutBodies(code: string, functions: [name: string, gives: string][]): string {
  return functions.reduce(
    (text, [name, gives]) =>
      found(
        text,
        new RegExp(
          `^( \\*/ | )?([ \\t]*)((?:export )?(?:async )?function ${name}\\([^)]*\\)\\s*\\{)[\\s\\S]*?\\n\\2\\}`,
          "m",
        ),
        `$1$2$3 return ${gives}; }`,
      ),
    code,
  );
}

/** The code with what a pattern finds put otherwise; a build stops where a library no longer has it. */
export function found(code: string, pattern: RegExp, by: string): string {
  if (code.search(pattern) < 0) throw new Error(`leave-out looks in vain for ${pattern}`);
  return code.replace(pattern, by);
}

/** A block of code that begins so, up to the brace that is indented as it is. */
export const block = (indent: string, begins: string): RegExp =>
  new RegExp(`^${indent}${begins} \\{[\\s\\S]*?\\n${indent}\\}`, "gm");
