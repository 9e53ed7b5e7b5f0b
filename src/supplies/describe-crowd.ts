import { monthText } from "../calendar/month.ts";
import { counted, tenthsText } from "../fleet/count-text.ts";
import type { Item } from "../fleet/item-book.ts";
import { exactFromText, minorUnits, timesExact } from "../fleet/money.ts";
import { groupedMoney } from "../fleet/money-text.ts";
import type { CrowdedMonth } from "./types.ts";

/** What else is known of a crowd. */
export interface CrowdFacts {
  item: Item;
  /** The chance of as many deliveries as in the crowd's span in any stretch of its length. */
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
  const from = lots.length === 0 ? "" : ` from ${counted(lots.length, "lot")}`;
  const used = facts.used < LEAST_USED ? "" : `, and ${tenthsText(facts.used)} are likely to be used before`;
  const sentences = [
    `${counted(units, "unit")} of ${item} fall due in ${monthText(month)}, against ${tenthsText(evenShare)} if spread evenly ` +
      `(chance of such a crowd: ${chanceText(pValue)}).`,
    `They stand at ${counted(places, "place")}${from}${used}.`,
  ];
  if (span.from !== span.to && facts.spanChance < WORTH_TELLING) {
    const stretch = span.to - span.from + 1;
    sentences.push(
      `The months from ${monthText(span.from)} to ${monthText(span.to)} are crowded together ` +
        `(chance in any ${stretch} months: ${chanceText(facts.spanChance)}).`,
    );
  }
  const { price, currency } = facts.item;
  if (price !== null && currency !== null) {
    const cost = minorUnits(timesExact(exactFromText(price), units), currency);
    sentences.push(`At the price of a single unit, replacing them costs ${groupedMoney(cost, currency)} ${currency}.`);
  }
  sentences.push(flattening(facts));
  if (facts.moved > 0) sentences.push(`The moves proposed carry ${facts.moved} of them to where more are used.`);
  return sentences.join(" ");
}

function flattening({ tooMany, roomBefore }: CrowdFacts): string {
  const early = Math.min(tooMany, roomBefore);
  const some = `${early < tooMany ? `${early} of ` : ""}the ${counted(tooMany, "unit")} too many`;
  const swap = early === 0 ? "" : `swap ${some} one to three months early, or `;
  return `To flatten it, ${swap}have what replaces them come in parts that expire months apart.`;
}

function chanceText(chance: number): string {
  return chance < 0.0001 ? "less than 1 in 10,000" : `${(chance * 100).toFixed(2)} %`;
}
