import { type ColumnView, datedThing, MOSTLY_DIFFERENT } from "./score-column.ts";

const MOSTLY_DATES = 0.5;
/** What is said of pads that only go by whom they are for, beside their expiry: "Adult qty, Adult exp". */
const OF_PADS = /^(expiry|quantity|lot|)$/;

/** The columns, with what a head of goods means beside the others: levels of stock, spares, packs and boxes. */
export function asGoods(views: readonly ColumnView[]): ColumnView[] {
  return asBoxes(asPacks(asPads(asLevels(views))));
}

/**
 * The columns, those headed by adult or child alone taken for pads, and by spare for what stands before: "Pads exp, Spare exp",
 * or "Batt 1, Batt 2, Spare" above names.
 */
function asPads(views: readonly ColumnView[]): ColumnView[] {
  let before = "";
  return views.map((view) => {
    const { meaning, things, groupSubject, profile } = view;
    before = datedThing(view) || before;
    const thing = meaning.variant === "spare" ? before : /^(adult|child)/.test(meaning.variant) ? "pads" : "";
    const dated = views.some((other) => other.meaning.says === "expiry" && other.meaning.variant === meaning.variant);
    const named = thing === "battery" && profile.distinct > MOSTLY_DIFFERENT && profile.numbers + profile.yesNo === 0;
    if (
      things + groupSubject !== "" ||
      thing === "" ||
      !(dated || named) ||
      !OF_PADS.test(meaning.says) ||
      meaning.coverage < 1
    )
      return view;
    return { ...view, things: thing, meaning: { ...meaning, things: thing, subject: `${meaning.subject} ${thing}` } };
  });
}

/** The columns, "Packs" and "Pack" of goods over numbers or measures taken for how many there are, in boxes where another column says what one holds, and for that. */
function asPacks(views: readonly ColumnView[]): readonly ColumnView[] {
  const says = (words: RegExp) => views.some(({ meaning }) => words.test(meaning.says));
  if (!views.some(({ things }) => things === "item") || !says(/expiry|price/)) return views;
  const unit = says(/^box$/) ? "boxes" : "";
  return views.map((view) => {
    const { meaning, profile } = view;
    if (/^price (per )?pack$/.test(meaning.words))
      return { ...view, things: "", meaning: { ...meaning, things: "", says: "box price" } };
    if (
      !/^((full|std|standard) )?packs?( (on|in) .+)?$/.test(meaning.words) ||
      !(profile.fewEach || profile.measures > 0)
    )
      return view;
    const said = meaning.words.includes("packs") ? { says: "quantity", unit } : { says: "box" };
    return { ...view, things: "", meaning: { ...meaning, things: "", ...said } };
  });
}

/** The columns, "Min qty" beside "Max qty" taken for a level of stock, and not for the least that is sold. */
function asLevels(views: readonly ColumnView[]): readonly ColumnView[] {
  const has = (words: RegExp) => views.some(({ meaning }) => words.test(meaning.says));
  const isStock = has(/^expiry/) && !has(/\bprice\b|supplier|lead/);
  if (!isStock && !views.some(({ meaning: { words, says } }) => words.startsWith("max") && /^(quantity)?$/.test(says)))
    return views;
  return views.map((view) => {
    const { meaning } = view;
    return /^(minorder|least quantity)$/.test(meaning.says) && /\bmin(\b|destm|im)/.test(meaning.words)
      ? { ...view, meaning: { ...meaning, words: "", says: "aside" } }
      : view;
  });
}

/** The columns, a bare "Boxes" taken for how many there are, and what stands beside "Units per box" in one word. */
function asBoxes(views: readonly ColumnView[]): ColumnView[] {
  const boxes = views.filter(({ meaning }) => meaning.says === "box");
  const [counted, other] = boxes.filter(({ meaning }) => !meaning.words.includes(" "));
  const counts =
    counted !== undefined &&
    other === undefined &&
    (boxes.length === 2 || counted.meaning.words.endsWith("s")) &&
    !views.some(({ meaning, profile }) => meaning.says === "quantity" && profile.dates < MOSTLY_DATES);
  return views.map((view) =>
    counts && view === counted ? { ...view, meaning: { ...view.meaning, says: "quantity", unit: "boxes" } } : view,
  );
}
