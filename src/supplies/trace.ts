import { itemBook } from "../fleet/item-book.ts";
import { nameKey } from "../fleet/name-key.ts";
import { withNamedItems } from "../fleet/named-items.ts";
import { listedAsPack } from "../fleet/packs-in-stock.ts";
import type { Policy } from "../fleet/policy.ts";
import type { DatedStockRow, Fleet } from "../fleet/rows.ts";
import { type WhoTakes, whoTakes } from "../fleet/who-takes.ts";
import { sortBy } from "../maths/sort-by.ts";
import { BETWEEN_SEVERAL } from "../sheets/values/listed-supplies.ts";
import { hasLeft, isDevice, itemsTouched } from "./items-touched.ts";
import { type Matcher, matcherOf, productsIn } from "./trace-matcher.ts";
import { NO_PLACE, type Touched, type Trace, type TracedAs } from "./traced.ts";
import { swapDay } from "./unit-life.ts";

/**
 * Follows lots, serial numbers, GTINs, order numbers and scanned labels to every place, device, pack and open order that
 * they touch, as for a recall. Case and outer blanks do not matter; an identifier that ends in `*` is a prefix of lots and
 * serials; a GTIN may lack its leading zeros; a label stands for its lot and serial, of its product only where the
 * catalogue knows it.
 *
 * @param ids  one or a recall notice's list; blank ones are skipped
 */
export function traceIds(sheets: Fleet, policy: Policy, ids: readonly string[]): Trace {
  const fleet = withNamedItems(sheets);
  const book = itemBook(fleet);
  const takes = whoTakes(fleet, book, policy.asOf);
  const isPack = listedAsPack(fleet);
  const wanted = ids.map((id) => id.trim()).filter((id) => id !== "");
  const matchers = wanted.map((id) => ({ id, ...matcherOf(id, policy.asOf), as: new Set<TracedAs>() }));
  const touches = touchedBy(matchers, fleet);
  const touchedRows = fleet.datedStock.filter((row) =>
    touches(row.item, [
      ["lot", row.lot],
      ["serial", row.serial],
    ]),
  );
  const stock = sortBy(touchedRows, stockKey).map((row) => ({
    row,
    installed: row.place !== null && takes.devices.has(nameKey(row.place)),
    swapBy: swapDay(row, book.find(row.item), policy, isPack(row)),
  }));
  // a lot that stands in dated stock alone is its battery's, too
  const alsoPacks = new Set(touchedRows.filter(isPack).map(({ serial }) => nameKey(serial!)));
  const packs = sortBy(
    fleet.packs.filter((row) => touches(row.item, [["serial", row.serial]]) || alsoPacks.has(nameKey(row.serial))),
    ({ device, serial }) => [nameKey(device ?? ""), nameKey(serial)],
  );
  const orders = fleet.onOrder.filter((row) => touches(row.item, [["order", row.order]]));
  const counted = { stock: stock.filter(({ row }) => !isPack(row)), packs, orders };
  return {
    ids: matchers.map(({ id, as, wrong }) => ({
      id,
      as: [...as].sort(),
      ...(wrong !== null && as.size === 0 ? { wrong } : {}),
    })),
    stock,
    packs,
    orders,
    places: placesTouched(counted, takes, policy),
    items: itemsTouched(counted, { fleet, book, takes, isPack, policy }),
  };
}

/** An identifier with what it turned out to be so far. */
interface Wanted extends Matcher {
  as: Set<TracedAs>;
}

/**
 * Whether any identifier is one of a row's texts, or of several in one ("A1 / A2": any unit may be of either), or its item's
 * GTIN; each that is notes as what.
 */
function touchedBy(
  wanted: readonly Wanted[],
  { catalogue }: Fleet,
): (item: string | null, texts: [TracedAs, string | null][]) => boolean {
  const productOf = productsIn(catalogue);
  return (item, texts) => {
    const product = productOf(item);
    const keys = texts.flatMap(([as, text]) =>
      [text ?? "", ...(text?.split(BETWEEN_SEVERAL) ?? [])].map((part) => [as, nameKey(part)] as const),
    );
    let touched = false;
    for (const one of wanted) {
      const { all, named } = product(one);
      const kinds = named ? keys.filter(([, key]) => key !== "" && one.match(key)) : [];
      for (const [kind] of kinds) one.as.add(kind);
      if (all) one.as.add("gtin");
      touched ||= all || kinds.length > 0;
    }
    return touched;
  };
}

function placesTouched({ stock, packs }: Touched, takes: WhoTakes, policy: Policy): Trace["places"] {
  const places = new Map<string, Trace["places"][number]>();
  const at = (name: string | null) => {
    const place = name?.trim() || NO_PLACE;
    const key = nameKey(place);
    const found = places.get(key) ?? {
      place,
      device: isDevice(place, takes),
      units: 0,
      packs: 0,
    };
    places.set(key, found);
    return found;
  };
  for (const { row } of stock) at(row.place).units += row.quantity;
  for (const pack of packs) if (!hasLeft(pack, policy)) at(pack.device ?? pack.site).packs += 1;
  return [...places].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, place]) => place);
}

function stockKey(row: DatedStockRow): (string | number)[] {
  return [nameKey(row.place ?? ""), nameKey(row.item), row.expiry, nameKey(row.lot ?? ""), nameKey(row.serial ?? "")];
}
