import { isoFromDay } from "../calendar/day.ts";
import { monthSpanWords } from "../calendar/month-words.ts";
import { counted } from "../fleet/count-text.ts";
import { namedMoney } from "../fleet/money-text.ts";
import type { Offer } from "./offers.ts";
import type { SizeRisk } from "./size-risk.ts";
import type { OrderLine } from "./types.ts";
import { unitWords } from "./unit-words.ts";

/** What a line's reason tells beside the line itself. */
export interface LineFacts {
  offer: Offer;
  level: number;
  offCadence: boolean;
  risk: SizeRisk;
  /** Units on order that come in the months covered, too late for the first of them. */
  tooLate: number;
  /** Units missing until a late order arrives, at the service level. */
  missing: number;
  stopgaps: readonly string[];
}

/** Why a line is there and what is special about it, in plain sentences. */
export function reasonFor(line: OrderLine, facts: LineFacts): string {
  const { offer, level, risk, tooLate } = facts;
  const said = [
    `Covers ${monthSpanWords(line.covers.from, line.covers.to)} at ${percent(level)}: ${unitWords(line.quantity, offer.kind)}.`,
  ];
  if (!offer.priced) said.push("No price is known.");
  if (offer.unitsPerBox > 1) said.push(`Bought as ${boxWords(line.boxes)} of ${offer.unitsPerBox}.`);
  if (risk.lower !== null) {
    const { boxes, saves } = risk.lower;
    const fewer = offer.unitsPerBox > 1 ? boxWords(boxes) : unitWords(boxes, offer.kind);
    said.push(`At ${percent(risk.lower.level)} it would be ${fewer} fewer${savedWords(saves, line.currency)}.`);
  }
  if (Math.round(risk.expectedLeft) > 0) {
    const left = Math.round(risk.expectedLeft);
    said.push(`${unitWords(left, offer.kind)} ${left === 1 ? "is" : "are"} expected to be left then.`);
    if (tooLate > 0) {
      const month = monthSpanWords(line.covers.from, line.covers.from);
      said.push(`On order, but too late for ${month}: ${unitWords(tooLate, offer.kind)}; ask for an earlier day.`);
    }
  }
  if (line.expectedWaste > 0) {
    const lapse = line.expectedWaste === 1 ? "it lapses" : "they lapse";
    said.push(`Of these, ${unitWords(line.expectedWaste, offer.kind)} cannot be needed before ${lapse}.`);
  }
  return [...said, ...lateWords(line, facts)].join(" ");
}

function lateWords(line: OrderLine, { offer, missing, stopgaps, offCadence }: LineFacts): string[] {
  if (!line.late) return [];
  const said: string[] = [];
  if (line.uncoveredUntil === null) {
    said.push("Late: the day on which it should have left has passed, and part of the safety days is used up.");
  } else {
    const arrives = isoFromDay(line.arriveBy);
    const until = isoFromDay(line.uncoveredUntil);
    said.push(
      `Late: it arrives on ${arrives} at the earliest; up to ${unitWords(missing, offer.kind)} may be missing until ${until}.`,
    );
    if (stopgaps.length > 0) said.push(`Until then: ${stopgaps.join("; ")}.`);
  }
  if (offCadence) said.push("It leaves outside the supplier's order calendar.");
  return said;
}

function savedWords(saves: number, currency: string): string {
  if (saves === 0) return "";
  const amount = namedMoney(Math.abs(saves), currency);
  // a smaller order can miss a price break
  return saves > 0 ? `, ${amount} less` : `, but ${amount} more, since it would miss a price break`;
}

function percent(level: number): string {
  return `${Number((level * 100).toFixed(2))} %`;
}

function boxWords(boxes: number): string {
  return counted(boxes, "box", "boxes");
}
