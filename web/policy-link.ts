const MARK = "#with?";
/** No policy value is longer; what is, came from no page of ours. */
const LONGEST_VALUE = 60;

/** A fragment of this page's address that carries the reader's own assumptions: policy values, and nothing of a sheet. */
export function policyLink(choices: ReadonlyMap<string, string>): string {
  return MARK + new URLSearchParams([...choices]);
}

/**
 * The assumptions in a fragment, without keys that are no policy keys; null where the fragment carries none. Whether a
 * value makes sense is for the engine to say, as with values that are typed in.
 */
export function choicesInLink(fragment: string, keys: readonly string[]): [key: string, value: string][] | null {
  if (!fragment.startsWith(MARK)) return null;
  return [...new URLSearchParams(fragment.slice(MARK.length))].filter(
    ([key, value]) => keys.includes(key) && value !== "" && value.length <= LONGEST_VALUE,
  );
}
