import { describe, expect, it } from "vitest";
import { remembered } from "../src/fleet/remembered.ts";
import type { Plan } from "../src/index.ts";
import { type MadeUpSheets, madeUpFleet, type SheetRow } from "./made-up-fleet.ts";
import { filesOf, planned } from "./sheets-planned.ts";

// What must not move a plan, or must move it by a known measure: no expected figure comes from the plan itself.
// more of them take minutes: FLEETS=40 npx vitest run --config tests/vitest.config.ts tests/plan-unmoved
const FLEETS = Number(process.env.FLEETS ?? 1);

const policyValue = ({ policy }: MadeUpSheets, key: string) => policy!.find((row) => row.key === key)!.value!;

const withValue = (sheets: MadeUpSheets, key: string, value: string): MadeUpSheets => ({
  ...sheets,
  policy: [...sheets.policy!.filter((row) => row.key !== key), { key, value }],
});

const withRows = (sheets: MadeUpSheets, kind: string, more: SheetRow[]): MadeUpSheets => ({
  ...sheets,
  [kind]: [...sheets[kind]!, ...more],
});

const changed = (sheets: MadeUpSheets, kind: string, change: (row: SheetRow) => SheetRow): MadeUpSheets => ({
  ...sheets,
  [kind]: sheets[kind]!.map(change),
});

/** What leaves when, and what of it comes: all of a plan that a purchasing office acts on. */
const bought = ({ orders }: Plan) =>
  orders.map(({ item, supplier, orderBy, arriveBy, quantity, lineCost, feeShare, late }) => {
    return { item, supplier, orderBy, arriveBy, quantity, lineCost, feeShare, late };
  });

/** Changes after which the same is needed, bought and short. */
const UNMOVED: [string, (sheets: MadeUpSheets) => MadeUpSheets][] = [
  [
    "when what goes without saying is said",
    (sheets) =>
      changed(sheets, "catalogue", (row) => ({
        ...row,
        units_per_box: row.units_per_box || "1",
        minimum_order: row.minimum_order || "1",
        lead_sd_days: row.lead_sd_days || "0",
        price_breaks: row.price_breaks || (row.price ? `1:${row.price}` : ""),
        service_level: policyValue(sheets, "service_level"),
      })),
  ],
  [
    "when units lie there that may not be used",
    (sheets) =>
      withRows(sheets, "dated_stock", [
        {
          item: sheets.dated_stock![0]!.item!,
          expiry: "2001-01-01",
          lot: "OLD",
          quantity: "3",
          place: "North",
          held: "",
        },
        {
          item: sheets.dated_stock![0]!.item!,
          expiry: "2029-01-01",
          lot: "HELD",
          quantity: "3",
          place: "North",
          held: "recall",
        },
      ]),
  ],
  [
    "when the log also tells of units that lapsed or were put there",
    (sheets) => {
      const first = sheets.use_log!.map(({ date }) => date!).sort()[0]!;
      const row = { ...sheets.use_log![0]!, date: first };
      return withRows(sheets, "use_log", [
        { ...row, reason: "lapsed", quantity: "4" },
        { ...row, reason: "restock", quantity: "9" },
      ]);
    },
  ],
  [
    "when what is on order is told in two lines",
    (sheets) => ({
      ...sheets,
      on_order: sheets.on_order!.flatMap((row) => [
        { ...row, order: `${row.order}-1`, quantity: "1" },
        { ...row, order: `${row.order}-2`, quantity: String(Number(row.quantity) - 1) },
      ]),
    }),
  ],
  [
    "when a device is named that left long ago",
    (sheets) =>
      withRows(sheets, "devices", [
        {
          device: "D-99",
          type: "alpha",
          site: "North",
          duty: "car",
          in_service: "1999-01-01",
          temperature_c: "",
          retired: "2000-01-01",
        },
      ]),
  ],
  [
    "when a supplier is named who sells nothing, and a task that nobody does",
    (sheets) =>
      withRows(
        withRows(sheets, "suppliers", [
          { supplier: "Zinnia", order_fee: "9.00", free_over: "", order_every_months: "", currency: "EUR" },
        ]),
        "routine",
        [{ task: "never", per_year: "0", duty: "", item: sheets.dated_stock![0]!.item!, quantity: "1" }],
      ),
  ],
  ["when only so many swap visits can be made", (sheets) => withValue(sheets, "swaps_per_month", "3")],
  ["when a site has another name", (sheets) => JSON.parse(JSON.stringify(sheets).replaceAll('"North"', '"Nord"'))],
];

/** A fleet whose names are all its own: no item, supplier, duty, type or place of it is another's. */
function elsewhere(sheets: MadeUpSheets): MadeUpSheets {
  const NAMES = ["device", "item", "serial", "site", "supplier", "duty", "lot", "order", "task", "place", "type"];
  const own = (row: SheetRow) =>
    Object.fromEntries(
      Object.entries(row).map(([column, text]) => {
        if (text !== "" && column === "fits") return [column, text.replace(/\w+/g, "else-$&")];
        return [column, text !== "" && NAMES.includes(column) ? `else-${text}` : text];
      }),
    );
  return Object.fromEntries(Object.entries(sheets).map(([kind, rows]) => [kind, rows.map(own)]));
}

/** Fleets that have dated stock, a use log and something on order, so that each change finds what it changes. */
const SEEDS = Array.from({ length: 40 * FLEETS }, (_, at) => at + 1)
  .filter((seed) => {
    const { dated_stock, use_log, on_order } = madeUpFleet(seed);
    return [dated_stock, use_log, on_order].every((rows) => rows!.length > 0);
  })
  .slice(0, FLEETS);

describe.each(SEEDS)("makePlan on the made-up fleet %i", (seed) => {
  const sheets = madeUpFleet(seed);
  const planOf = remembered((of: MadeUpSheets) => planned(filesOf(of)));

  it.each(UNMOVED)("buys the same %s", async (_, change) => {
    const plan = await planned(filesOf(change(sheets)));
    const was = await planOf(sheets);
    expect(bought(plan)).toEqual(bought(was));
    expect(plan.short).toEqual(was.short);
    expect(plan.demand).toEqual(was.demand);
  });

  it("needs the same of supplies whatever another fleet beside it does", async () => {
    // how long the log has been kept is one day for all sheets
    const alone = withValue(sheets, "use_log_from", "2020-01-01");
    const other = elsewhere(madeUpFleet(seed + 1000));
    const both = Object.fromEntries(
      Object.entries(alone).map(([kind, rows]) => [kind, kind === "policy" ? rows : [...rows, ...other[kind]!]]),
    );
    const supplies = sheets.catalogue!.filter(({ kind }) => kind !== "pack" && kind !== "primary");
    const needs = ({ demand }: Plan) => demand.filter(({ item }) => supplies.some((row) => row.item === item));
    expect(needs(await planned(filesOf(both)))).toEqual(needs(await planned(filesOf(alone))));
  });

  it("costs three times as much where every price, fee and limit is three times as high", async () => {
    const triple = (text: string) => text.replace(/\d+\.\d+/g, (money) => (Number(money) * 3).toFixed(2));
    const prices = changed(sheets, "catalogue", (row) => ({
      ...row,
      price: triple(row.price!),
      price_breaks: triple(row.price_breaks!),
    }));
    const fees = changed(prices, "suppliers", (row) => ({
      ...row,
      order_fee: triple(row.order_fee!),
      free_over: row.free_over ? String(3 * Number(row.free_over)) : "",
    }));
    const dear = await planned(
      filesOf(
        withValue(fees, "budget_per_fiscal_year", String(3 * Number(policyValue(sheets, "budget_per_fiscal_year")))),
      ),
    );
    const was = await planOf(sheets);
    const units = (plan: Plan) => bought(plan).map(({ lineCost, feeShare, ...line }) => line);
    expect(units(dear)).toEqual(units(was));
    // a price that rises, and with it a line, is rounded to a cent once for each
    dear.orders.forEach(({ lineCost }, at) => {
      expect(Math.abs(lineCost - 3 * was.orders[at]!.lineCost)).toBeLessThanOrEqual(2);
    });
  });

  it("needs the same where keeping stock costs more", async () => {
    const { demand, packs } = await planOf(sheets);
    const dear = await planned(filesOf(withValue(sheets, "holding_rate_per_year", "0.4")));
    expect(dear.demand).toEqual(demand);
    expect(dear.packs).toEqual(packs);
  });

  it("leaves no more devices short where each order is to be safer", async () => {
    const [low, high] = await Promise.all(
      ["0.8", "0.99"].map((level) => planned(filesOf(withValue(sheets, "service_level", level)))),
    );
    expect(high!.demand).toEqual(low!.demand);
    high!.short.forEach(({ withSchedule }, month) => {
      // what is bought earlier may lapse earlier, a few hundredths of a device
      expect(withSchedule.expected).toBeLessThanOrEqual(low!.short[month]!.withSchedule.expected + 0.05);
    });
  });
});
