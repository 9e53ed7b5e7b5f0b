/** Key under which names are the same: trimmed, inner blanks folded, without case. */
export function nameKey(name: string): string {
  // most names are plain, and patterns are many times slower than a look at each letter
  return (isPlain(name) ? name : name.trim().replace(/\s+/g, " ")).toLowerCase();
}

/** True for a text of ASCII letters, digits and signs with single blanks inside. */
function isPlain(text: string): boolean {
  let before = 32;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 32 || code > 126 || (code === 32 && before === 32)) return false;
    before = code;
  }
  return before !== 32;
}
