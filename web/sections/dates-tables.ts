import { type Plan, pairMoves } from "../../src/index.ts";
import { actOn } from "../act-on.ts";
import { chanceColumn, countColumn, dayColumn, monthColumn } from "../columns.ts";
import { filteredTable } from "../filtered-table.ts";
import { dayWords, numberWords, sentenceWords } from "../format.ts";
import { say } from "../strings.ts";
import { table } from "../table.ts";
import type { Column } from "../table-spec.ts";
import { placeAndSite, type SiteOf } from "../where.ts";

type Exchange = ReturnType<typeof pairMoves>[number];

/** Months in which more falls due than an even share. */
export function crowdedTable({ crowdedMonths }: Plan): HTMLElement {
  const words = say.dates;
  const heads = words.crowdedHeads;
  return table<Plan["crowdedMonths"][number]>({
    caption: words.crowdedHeading,
    rows: crowdedMonths,
    below: (row) => `${sentenceWords(row.says)} ${heads[4]}: ${row.lots.join(", ")}.`,
    columns: [
      monthColumn(heads[0]!, (row) => row.month),
      { title: heads[1]!, value: (row) => row.item },
      countColumn(heads[2]!, (row) => row.units),
      countColumn(heads[3]!, (row) => row.evenShare, 1),
      countColumn(heads[5]!, (row) => row.places),
    ],
  });
}

/** Every dated unit, by the day until which it is to be swapped. */
export function stockTable({ datedStock, asOf }: Plan, siteOf: SiteOf): HTMLElement {
  type Unit = Plan["datedStock"][number];
  const words = say.dates;
  const heads = words.stockHeads;
  const passed = (row: Unit) => row.swapBy < asOf && (row.expiry < asOf ? words.expired : words.overdue);
  return filteredTable<Unit>(
    {
      caption: words.stockHeading,
      rows: [...datedStock].sort((a, b) => (a.swapBy < b.swapBy ? -1 : a.swapBy > b.swapBy ? 1 : 0)),
      first: 15,
      printed: 30,
      columns: [
        { title: heads[1]!, value: (row) => row.swapBy, show: (row) => actOn(row.swapBy, passed(row)) },
        dayColumn(heads[0]!, (row) => row.expiry),
        { title: heads[2]!, value: (row) => row.item },
        { title: heads[3]!, value: (row) => row.lot ?? row.serial },
        { ...placeColumn(heads[4]!, (row) => row.place, siteOf), wide: true },
        countColumn(heads[5]!, (row) => row.quantity),
        chanceColumn(heads[6]!, (row) => row.chanceUsed),
      ],
    },
    [
      { id: "stock-item", label: words.pick, of: (row) => row.item },
      { id: "stock-site", label: words.site, of: (row) => siteOf(row.place) ?? row.place },
    ],
  );
}

/** Lots that change places, so that they are used before they expire. */
export function movesTable({ moves }: Plan, siteOf: SiteOf): HTMLElement {
  const words = say.dates;
  const heads = words.movesHeads;
  const lots = (carried: Exchange["out"]) =>
    carried.map(({ lot, quantity }) => words.lotOf(numberWords(quantity), lot)).join(", ") || null;
  return table<Exchange>({
    caption: words.movesHeading,
    rows: pairMoves(moves),
    printed: 120,
    columns: [
      dayColumn(heads[0]!, (row) => row.by),
      placeColumn(heads[1]!, (row) => row.from, siteOf),
      placeColumn(heads[2]!, (row) => row.to, siteOf),
      { title: heads[3]!, value: (row) => row.item },
      { title: heads[4]!, value: (row) => lots(row.out) },
      { title: heads[5]!, value: (row) => lots(row.back) },
      countColumn(heads[6]!, (row) => row.unitsSaved, 1),
    ],
  });
}

/** What is swapped at which visit. */
export function swapTable({ swapCalendar, asOf }: Plan, siteOf: SiteOf): HTMLElement {
  const words = say.dates;
  const heads = words.swapsHeads;
  return table<Plan["swapCalendar"][number]>({
    caption: words.swapsHeading,
    rows: swapCalendar,
    printed: 120,
    columns: [
      monthColumn(heads[6]!, (row) => row.month),
      { ...placeColumn(heads[1]!, (row) => row.place, siteOf), wide: true },
      {
        title: heads[0]!,
        value: (row) => row.swapBy,
        show: (row) => (row.swapBy < asOf ? actOn(row.swapBy, words.overdue) : dayWords(row.swapBy)),
      },
      { title: heads[2]!, value: (row) => row.item },
      { title: heads[3]!, value: (row) => row.lot },
      countColumn(heads[4]!, (row) => row.quantity),
      countColumn(heads[5]!, (row) => row.daysGivenUp),
    ],
  });
}

/** A column of places, each with the site where it stands, so that a driver finds it. */
function placeColumn<Row>(title: string, value: (row: Row) => string | null, siteOf: SiteOf): Column<Row> {
  return { title, value, show: (row) => placeAndSite(value(row), siteOf(value(row))) };
}
