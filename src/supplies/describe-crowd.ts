import { monthText } from "../calendar/month.ts";
import type { Item } from "../fleet/item-book.ts";
import { exactFromText, exactText, groupedText, timesExact } from "../fleet/money.ts";
import type { CrowdedMonth } from "./types.ts";

/** What else is known of a crowd. */
export interface CrowdFacts {
  item: Item;
  /** Months over which the even spread runs. */
  months: number;
  /** Deliveries in the crowd's span, and the chance of as many in any stretch of its length. */
  deliveries: number;
  spanChance: number;
  /** Of its units, how many are expected to be used before they fall due. */
  used: number;
  /** Units of it that the proposed moves carry to where more of them are used. */
  moved: number;
  /** Units over what a month can hold without being crowded. */
  tooMany: number;
  /** Units that the three months before can take over without being crowded. */
  roomBefore: number;
}

/** A span's chance is told where it says something. */
const WORTH_TELLING = 0.05;
/** Fewer units expected to be used would be told as none. */
const LEAST_USED = 0.05;

/** A crowd in plain sentences: how many, what even would be, how unlikely, where, what it costs, what flattens it. */
export function describeCrowd(found: Omit<CrowdedMonth, "says">, facts: CrowdFacts): string {
  const { item, month, units, evenShare, pValue, span, lots, places } = found;
  const from = lots.length === 0 ? "" : `, from ${lots.length} ${lots.length === 1 ? "lot" : "lots"}`;
  const sentences = [
    `${units} units of ${item} fall due in ${monthText(month)}, where an even spread over ${facts.months} months ` +
      `would bring ${evenShare.toFixed(1)} (chance of such a crowd: ${chanceText(pValue)}).`,
    `They stand at ${places} ${places === 1 ? "place" : "places"}${from}.`,
  ];
  if (facts.used >= LEAST_USED) {
    const many = facts.used.toFixed(1);
    sentences.push(`Of them ${many} ${many === "1.0" ? "is" : "are"} expected to be used before.`);
  }
  if (span.from !== span.to) {
    const stretch = span.to - span.from + 1;
    const chance =
      facts.spanChance < WORTH_TELLING ? ` (chance in any ${stretch} months: ${chanceText(facts.spanChance)})` : "";
    sentences.push(
      `They belong to ${facts.deliveries} deliveries that fall due from ${monthText(span.from)} to ` +
        `${monthText(span.to)}${chance}.`,
    );
  }
  const { price, currency } = facts.item;
  if (price !== null && currency !== null) {
    const cost = exactText(timesExact(exactFromText(price), units), currency);
    sentences.push(`Replacing them costs ${groupedText(cost)} ${currency}.`);
  }
  sentences.push(flattening(facts));
  if (facts.moved > 0) {
    sentences.push(`The moves proposed carry ${facts.moved} of them to where they are more likely to be used.`);
  }
  return sentences.join(" ");
}

function flattening({ tooMany, roomBefore }: CrowdFacts): string {
  const apart = "have what replaces them delivered in parts, with expiry dates some months apart";
  const early = Math.min(tooMany, roomBefore);
  if (early === 0) return `To flatten it, ${apart}.`;
  const some = early < tooMany ? `${early} of the ${tooMany} units too many` : `the ${tooMany} units too many`;
  return `To flatten it, swap ${some} one to three months early, or ${apart}.`;
}

function chanceText(chance: number): string {
  return chance < 0.0001 ? "less than 1 in 10,000" : `${(chance * 100).toFixed(2)} %`;
}
