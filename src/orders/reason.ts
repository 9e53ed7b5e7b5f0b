import { isoFromDay } from "../calendar/day.ts";
import { monthSpanWords } from "./month-words.ts";
import type { Offer } from "./offers.ts";
import type { OrderLine } from "./types.ts";

/** Why a line is there and what is special about it, in plain sentences. */
export function reasonFor(line: OrderLine, offer: Offer, level: number, offCadence: boolean): string {
  const said = [
    `Covers ${monthSpanWords(line.covers.from, line.covers.to)} at ${percent(level)}: ${unitWords(line.quantity, offer)}.`,
  ];
  if (offer.unitsPerBox > 1) said.push(`Bought as ${count(line.boxes, "box", "boxes")} of ${offer.unitsPerBox}.`);
  if (line.expectedWaste > 0) {
    said.push(`${unitWords(line.expectedWaste, offer)} of it cannot be needed before they lapse.`);
  }
  if (line.late && line.uncoveredUntil !== null) {
    said.push(
      `Late: it can arrive on ${isoFromDay(line.arriveBy)} at the earliest, and something may be uncovered until ${isoFromDay(line.uncoveredUntil)}.`,
    );
  } else if (line.late) {
    said.push("Late: the day on which it should have left has passed, and the safety days are used up in part.");
  }
  if (offCadence) said.push("It leaves outside the supplier's order calendar.");
  return said.join(" ");
}

function percent(level: number): string {
  return `${Number((level * 100).toFixed(2))} %`;
}

function unitWords(units: number, offer: Offer): string {
  return offer.kind === "pack" ? count(units, "pack", "packs") : count(units, "unit", "units");
}

function count(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}
