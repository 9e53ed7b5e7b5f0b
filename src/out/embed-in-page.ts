import type { Reading } from "../sheets/reading.ts";
import type { Plan } from "./plan-schema.ts";

/** Stands once in the built page where the data goes. */
export const PAGE_DATA_PLACEHOLDER = "<!--wanecast-data-->";

/**
 * The page with a plan and the rows it rests on inside it, so that it opens without a file being dropped and
 * can plan anew. The rows travel with the page: whoever gets it can read them.
 *
 * @param page  the built page's HTML, with its placeholder
 * @throws RangeError where the page has no placeholder
 */
export function embedInPage(page: string, plan: Plan, reading: Reading): string {
  const at = page.indexOf(PAGE_DATA_PLACEHOLDER);
  if (at < 0) throw new RangeError(`embedInPage: the page has no ${PAGE_DATA_PLACEHOLDER}`);
  // JSON has "<" only inside strings, where \u003c means the same and can end no script element
  const json = JSON.stringify({ plan, reading }).replaceAll("<", "\\u003c");
  const script = `<script type="application/json" id="wanecast-data">${json}</script>`;
  return page.slice(0, at) + script + page.slice(at + PAGE_DATA_PLACEHOLDER.length);
}
