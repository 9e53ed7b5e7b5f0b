import { type Day, isoFromDay } from "../calendar/day.ts";
import { counted } from "../fleet/count-text.ts";
import type { Item, ItemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import type { UsableLot } from "../supplies/types.ts";
import { countsUntil, goodUntil } from "../supplies/unit-life.ts";
import { type StandIn, type StandInFrom, type StandInGround, standIns } from "./stand-ins.ts";
import { unitWords } from "./unit-words.ts";

/** Places named in a clause; the rest are counted. */
const PLACES_NAMED = 3;

/** How a clause begins and ends, around the units and the places. */
const CLAUSES: Record<StandInFrom, (units: string, places: string) => string> = {
  pool: (units, places) => `${units} not due by then in the pool at ${places}`,
  idle: (units, places) => `${units} in devices out of service: ${places}`,
  surplus: (units, places) => `${units} to move from devices that hold more than they need: ${places}`,
  leaving: (units, places) => `${units} to swap out early from devices that leave service: ${places}`,
};

/**
 * What is at hand that could stand in for an item until a late order arrives, each a plain clause: stock of items that
 * serve as well, spares, units to move, units to swap out early elsewhere, and stock too short-dated to be planned on.
 *
 * @param arrives  the day on which the late order arrives
 */
export function stopgapsFor(item: Item, lots: readonly UsableLot[], arrives: Day, ground: StandInGround): string[] {
  const found = standIns(item, arrives, ground);
  const froms: StandInFrom[] = ["pool", "idle", "surplus", "leaving"];
  return [
    ...alternativesOnShelf(item, ground.book, lots),
    ...froms.flatMap((from) => {
      const ones = found.filter((one) => one.from === from);
      const units = ones.reduce((sum, one) => sum + one.units, 0);
      return units === 0 ? [] : [CLAUSES[from](unitWords(units, item.kind), placeWords(ones))];
    }),
    ...shortDated(item, ground),
  ];
}

function alternativesOnShelf(item: Item, book: ItemBook, lots: readonly UsableLot[]): string[] {
  return book.items
    .filter((other) => other !== item && (item.alternatives.has(other.key) || other.alternatives.has(item.key)))
    .flatMap((other) => {
      const units = lots
        .filter((lot) => lot.origin === "shelf" && book.find(lot.item).key === other.key)
        .reduce((sum, lot) => sum + lot.quantity, 0);
      return units === 0 ? [] : [`${units} of ${other.name} on the shelf ${units === 1 ? "serves" : "serve"} as well`];
    });
}

/** Units in stores that are in date, but with less life left than a unit that is fitted for good must have. */
function shortDated(item: Item, { policy, takes, stockOf }: StandInGround): string[] {
  const rows = (stockOf.get(item.key) ?? []).filter((row) => {
    if (row.held !== null || row.quantity <= 0 || goodUntil(row, item) < policy.asOf) return false;
    if (countsUntil(row, item, policy) >= policy.asOf) return false;
    const place = nameKey(row.place ?? "");
    return !takes.devices.has(place) && !takes.retired.has(place);
  });
  if (rows.length === 0) return [];
  const units = rows.reduce((sum, row) => sum + row.quantity, 0);
  const last = rows.reduce((day, row) => Math.max(day, goodUntil(row, item)), policy.asOf);
  return [
    `${unitWords(units, item.kind)} on the shelf too short-dated to plan on, in date to ${isoFromDay(last)} at most`,
  ];
}

function placeWords(ones: readonly StandIn[]): string {
  const named = ones.slice(0, PLACES_NAMED).map(({ place, units, leaves }) => {
    const count = ones.length > 1 ? ` (${units})` : "";
    return leaves === null ? `${place}${count}` : `${place}${count} on ${isoFromDay(leaves)}`;
  });
  const rest = ones.length - named.length;
  return rest > 0 ? `${named.join(", ")} and ${counted(rest, "more place")}` : named.join(", ");
}
