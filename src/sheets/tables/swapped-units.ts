import { parseHeader } from "../words/parse-header.ts";
import { CAME_OUT, WENT_IN } from "./replacements.ts";
import { type ColumnView, datedThing } from "./score-column.ts";

/** What a list of swaps says of a unit that came out or went in. */
const OF_A_UNIT = /\b(expiry|lot)\b/;
/** The day of the swap, which is none of the device's. */
const SWAPPED = /^(date|install|date install)$/;

/**
 * The columns of a list of swapped supplies ("Old pad lot, Old exp, New pad lot, New exp"): those of what came out say
 * nothing any more, and what went in is what there is. Other columns as they are.
 */
export function withNewUnits(views: ColumnView[]): ColumnView[] {
  const said = (view: ColumnView, words: RegExp, not: RegExp) =>
    OF_A_UNIT.test(view.meaning.says) && words.test(view.name) && !not.test(view.name);
  const gone = new Set(views.filter((view) => said(view, CAME_OUT, WENT_IN)));
  const fresh = new Set(views.filter((view) => said(view, WENT_IN, CAME_OUT)));
  const dated = [...fresh].some(({ meaning }) => meaning.says.includes("expiry"));
  const ofSupplies = [...fresh].some((view) => !["", "battery"].includes(datedThing(view)));
  if (gone.size === 0 || !dated || !ofSupplies) return views;
  return views.map((view) => {
    if (fresh.has(view)) {
      const meaning = parseHeader(view.name.replace(WENT_IN, " "));
      return { ...view, meaning, things: meaning.things || view.things };
    }
    const isDay = view.things === "" && SWAPPED.test(view.meaning.says);
    return gone.has(view) || isDay
      ? { ...view, things: "", joined: null, meaning: { ...view.meaning, says: "aside", things: "" } }
      : view;
  });
}
