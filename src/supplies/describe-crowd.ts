import { monthText } from "../calendar/month.ts";
import type { Item } from "../fleet/item-book.ts";
import { exactFromText, exactText, timesExact } from "../fleet/money.ts";
import type { CrowdedMonth } from "./types.ts";

/** What else is known of a crowd. */
export interface CrowdFacts {
  item: Item;
  /** Months over which the even spread runs. */
  months: number;
  /** Deliveries in the crowd's span, and the chance of as many in any stretch of its length. */
  deliveries: number;
  spanChance: number;
  /** Units a month at which a month is crowded no more. */
  uncrowdedUnits: number;
}

/** A crowd in plain sentences: how many, what even would be, how unlikely, where, what it costs, what flattens it. */
export function describeCrowd(found: Omit<CrowdedMonth, "says">, facts: CrowdFacts): string {
  const { item, month, units, evenShare, pValue, span, lots, places } = found;
  const from = lots.length === 0 ? "" : `, from ${lots.length} ${lots.length === 1 ? "lot" : "lots"}`;
  const sentences = [
    `${units} units of ${item} fall due in ${monthText(month)}, where an even spread over ${facts.months} months ` +
      `would bring ${evenShare.toFixed(1)} (chance of such a crowd: ${chanceText(pValue)}).`,
    `They stand at ${places} ${places === 1 ? "place" : "places"}${from}.`,
  ];
  if (span.from !== span.to) {
    sentences.push(
      `They belong to ${facts.deliveries} deliveries that fall due from ${monthText(span.from)} to ` +
        `${monthText(span.to)} (chance in any ${span.to - span.from + 1} months: ${chanceText(facts.spanChance)}).`,
    );
  }
  const { price, currency } = facts.item;
  if (price !== null && currency !== null) {
    sentences.push(`Replacing them costs ${exactText(timesExact(exactFromText(price), units), currency)} ${currency}.`);
  }
  const over = Math.ceil(units - facts.uncrowdedUnits);
  sentences.push(
    `To flatten it, swap ${over} of them one to three months early, or have the next purchase delivered in parts ` +
      "with expiry dates some months apart.",
  );
  return sentences.join(" ");
}

function chanceText(chance: number): string {
  return chance < 0.0001 ? "less than 1 in 10,000" : `${(chance * 100).toFixed(2)} %`;
}
