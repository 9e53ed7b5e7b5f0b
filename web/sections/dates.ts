import { heldTold, type Plan, pairMoves } from "../../src/index.ts";
import { actOn } from "../act-on.ts";
import { forgetFigures } from "../charts/figure.ts";
import { unitsDue } from "../charts/units-due.ts";
import { visitsEnough } from "../charts/visits-enough.ts";
import { keyName } from "../difference.ts";
import { make } from "../dom.ts";
import { unitsDueByMonth } from "../due-months.ts";
import { filteredTable } from "../filtered-table.ts";
import { chanceWords, dayWords, monthWords, numberWords, sentenceWords } from "../format.ts";
import { keptChoice } from "../kept-choices.ts";
import { nameKey } from "../name-key.ts";
import { picker } from "../picker.ts";
import type { PlannedSession } from "../session.ts";
import { say } from "../strings.ts";
import { type TableSpec, table } from "../table.ts";
import { placeAndSite } from "../where.ts";
import { lapseTable, placeTable, routineTable, useTable } from "./dates-behind.ts";
import { answer, lead, list, section } from "./section.ts";
import { traceBox } from "./trace-box.ts";

type Unit = Plan["datedStock"][number];
type Exchange = ReturnType<typeof pairMoves>[number];

/** Dates: expiries by month, crowded months, swaps, moves and every dated unit. */
export function dates({ plan, reading, behind }: PlannedSession): HTMLElement {
  const words = say.dates;
  if (plan.datedStock.length === 0) return section("dates", words.heading, lead(words.noStock));
  const items = [...new Set(plan.datedStock.map((row) => row.item))].sort();
  let item = items.find((name) => name === keptChoice("item-choice")) ?? null;
  const sites = new Map(reading.fleet.devices.map(({ device, site }) => [nameKey(device), site]));
  const due = unitsDueByMonth(plan, reading, null).reduce((sum, row) => sum + row.fitted + row.stored, 0);
  const chart = make("div");
  if (due > 0) draw();
  const swapVisits = make("a", { href: "#policy-swaps_per_month" }, keyName("swaps_per_month"));
  return section(
    "dates",
    words.heading,
    lead(leadText()),
    ...heldTold(behind?.heldStock ?? []).map((says) => make("p", {}, says)),
    chart,
    plan.crowdedMonths.length > 0 && answer(words.crowdedHeading, crowdedTable()),
    answer(words.stockHeading, stockTable()),
    traceBox({ reading, plan }),
    plan.moves.length > 0 && list(words.movesHeading, movesTable()),
    plan.swapCalendar.length > 0
      ? list(words.swapsHeading, swapTable())
      : answer(words.swapsHeading, make("p", {}, words.swapsNone, " ", swapVisits, ".")),
    behind && visitsEnough(behind.swapCapacity),
    behind !== null && behind.places.length > 0 && answer(words.places.heading, placeTable(behind)),
    behind !== null &&
      behind.lapses.length > 0 &&
      answer(words.lapses.heading, make("p", {}, words.lapses.note), lapseTable(behind)),
    behind !== null &&
      behind.useRates.length > 0 &&
      answer(words.use.heading, make("p", {}, words.use.note), useTable(behind)),
    behind !== null && behind.routine.length > 0 && answer(words.routine.heading, routineTable(behind)),
  );

  function draw(): void {
    forgetFigures(chart);
    const option = (value: string, label: string) => make("option", { value, selected: value === (item ?? "") }, label);
    const options = [option("", words.everything), ...items.map((name) => option(name, name))];
    const choices = picker("item-choice", words.pick, options, (name) => {
      item = name || null;
      draw();
    });
    chart.replaceChildren(
      unitsDue(unitsDueByMonth(plan, reading, item), item, Number(plan.policy.swap_before_expiry_days ?? 0), choices),
    );
  }

  function leadText(): string {
    const count = (is: (row: (typeof plan.datedStock)[number]) => boolean) =>
      plan.datedStock.reduce((sum, row) => sum + (is(row) ? row.quantity : 0), 0);
    const overdue = count((row) => row.swapBy < plan.asOf);
    const expired = count((row) => row.expiry < plan.asOf);
    return words.lead(due, monthWords(plan.horizon.to), overdue, expired);
  }

  function crowdedTable(): HTMLElement {
    const heads = words.crowdedHeads;
    return table({
      caption: words.crowdedHeading,
      rows: plan.crowdedMonths,
      below: (row) => `${sentenceWords(row.says)} ${heads[5]}: ${row.lots.join(", ")}.`,
      columns: [
        { title: heads[0]!, value: (row) => row.month, show: (row) => monthWords(row.month) },
        { title: heads[1]!, value: (row) => row.item },
        { title: heads[2]!, value: (row) => row.units, show: (row) => numberWords(row.units), figures: true },
        {
          title: heads[3]!,
          value: (row) => row.evenShare,
          show: (row) => numberWords(row.evenShare, 1),
          figures: true,
        },
        { title: heads[6]!, value: (row) => row.places, figures: true },
      ],
    });
  }

  function swapTable(): HTMLElement {
    const heads = words.swapsHeads;
    return table({
      caption: words.swapsHeading,
      rows: plan.swapCalendar,
      printed: 120,
      columns: [
        { title: heads[6]!, value: (row) => row.month, show: (row) => monthWords(row.month) },
        { title: heads[1]!, value: (row) => row.place, show: (row) => withSite(row.place), wide: true },
        {
          title: heads[0]!,
          value: (row) => row.swapBy,
          show: (row) => (row.swapBy < plan.asOf ? actOn(row.swapBy, words.overdue) : dayWords(row.swapBy)),
        },
        { title: heads[2]!, value: (row) => row.item },
        { title: heads[3]!, value: (row) => row.lot },
        { title: heads[4]!, value: (row) => row.quantity, figures: true },
        { title: heads[5]!, value: (row) => row.daysGivenUp, figures: true },
      ],
    });
  }

  function movesTable(): HTMLElement {
    const heads = words.movesHeads;
    const lots = (carried: Exchange["out"]) =>
      carried.map(({ lot, quantity }) => words.lotOf(numberWords(quantity), lot)).join(", ") || null;
    return table({
      caption: words.movesHeading,
      rows: pairMoves(plan.moves),
      printed: 120,
      columns: [
        { title: heads[0]!, value: (row) => row.by, show: (row) => dayWords(row.by) },
        { title: heads[1]!, value: (row) => row.from, show: (row) => withSite(row.from) },
        { title: heads[2]!, value: (row) => row.to, show: (row) => withSite(row.to) },
        { title: heads[3]!, value: (row) => row.item },
        { title: heads[4]!, value: (row) => lots(row.out) },
        { title: heads[5]!, value: (row) => lots(row.back) },
        {
          title: heads[6]!,
          value: (row) => row.unitsSaved,
          show: (row) => numberWords(row.unitsSaved, 1),
          figures: true,
        },
      ],
    });
  }

  function siteOf(place: string | null): string | null {
    return place === null ? null : (sites.get(nameKey(place)) ?? null);
  }

  /** A place, and the site where it stands, so that a driver finds it. */
  function withSite(place: string | null): string | null {
    return placeAndSite(place, siteOf(place));
  }

  function stockTable(): HTMLElement {
    const heads = words.stockHeads;
    const rows = [...plan.datedStock].sort((a, b) => (a.swapBy < b.swapBy ? -1 : a.swapBy > b.swapBy ? 1 : 0));
    const passed = (row: Unit) => row.swapBy < plan.asOf && (row.expiry < plan.asOf ? words.expired : words.overdue);
    const spec: TableSpec<Unit> = {
      caption: words.stockHeading,
      rows,
      first: 15,
      printed: 30,
      columns: [
        { title: heads[1]!, value: (row) => row.swapBy, show: (row) => actOn(row.swapBy, passed(row)) },
        { title: heads[0]!, value: (row) => row.expiry, show: (row) => dayWords(row.expiry) },
        { title: heads[2]!, value: (row) => row.item },
        { title: heads[3]!, value: (row) => row.lot ?? row.serial },
        { title: heads[4]!, value: (row) => row.place, show: (row) => withSite(row.place), wide: true },
        { title: heads[5]!, value: (row) => row.quantity, figures: true },
        { title: heads[6]!, value: (row) => row.chanceUsed, show: (row) => chanceWords(row.chanceUsed), figures: true },
      ],
    };
    return filteredTable(spec, [
      { id: "stock-item", label: words.pick, of: (row) => row.item },
      { id: "stock-site", label: words.site, of: (row) => siteOf(row.place) ?? row.place },
    ]);
  }
}
