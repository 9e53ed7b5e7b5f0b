import { describe, expect, it } from "vitest";
import { isoFromDay } from "../src/calendar/day.ts";
import { remembered } from "../src/fleet/remembered.ts";
import { cleanSheets, cleanWorkbook, type Plan, type SheetFile } from "../src/index.ts";
import { seededRandom } from "../src/maths/random.ts";
import { shuffled } from "../src/maths/shuffled.ts";
import { type MadeUpSheets, madeUpFleet, type SheetRow } from "./made-up-fleet.ts";
import { day } from "./orders/made-up.ts";
import { textFile } from "./sheets/sheet-file.ts";
import { filesOf, ISO_DAY, PLAIN, planned, read } from "./sheets-planned.ts";

// more of them take minutes: FLEETS=40 npx vitest run --config tests/vitest.config.ts tests/plan-however-told
const FLEETS = Number(process.env.FLEETS ?? 2);

/** What is planned, without where it was read. */
function content({ inputs, findings, ...planned }: Plan): unknown {
  return planned;
}

/** Ways of handing over the same facts, each with the order of day and month in which it writes dates. */
const TELLINGS: [string, "ymd" | "dmy", (sheets: MadeUpSheets, seed: number) => SheetFile[] | Promise<SheetFile[]>][] =
  [
    [
      "in another order of rows",
      "ymd",
      (sheets, seed) =>
        filesOf(Object.fromEntries(Object.entries(sheets).map(([kind, rows]) => [kind, mixedUp(rows, seed)]))),
    ],
    [
      "in another order of columns",
      "ymd",
      (sheets, seed) => filesOf(sheets, (rows) => mixedUp(Object.keys(rows[0]!), seed)),
    ],
    ["in another order of files", "ymd", (sheets, seed) => mixedUp(filesOf(sheets), seed)],
    [
      "in two files a sheet",
      "ymd",
      (sheets) =>
        filesOf(sheets).flatMap((whole) => {
          const [header, ...lines] = new TextDecoder().decode(whole.bytes).trimEnd().split("\n");
          if (lines.length < 2 || whole.name === "policy.csv") return [whole];
          const half = Math.ceil(lines.length / 2);
          return [lines.slice(0, half), lines.slice(half)].map((some, at) =>
            textFile(whole.name.replace(".", `-${at}.`), `${[header, ...some].join("\n")}\n`),
          );
        }),
    ],
    [
      "with semicolons, days first and decimal commas",
      "dmy",
      (sheets) =>
        filesOf(sheets, undefined, {
          separator: ";",
          day: (iso) => iso.split("-").reverse().join("."),
          decimal: (text) => text.replace(".", ","),
        }),
    ],
    [
      "with days as a spreadsheet counts them",
      "ymd",
      // Source: ECMA-376 part 1, 18.17.4.1: 1 January 1970 is day 25569 of the 1900 date system
      (sheets) => filesOf(sheets, undefined, { ...PLAIN, day: (iso) => String(day(iso) + 25_569) }),
    ],
    [
      "as the program's own clean sheets",
      "ymd",
      async (sheets) => withPolicy(sheets, cleanTexts((await read(filesOf(sheets))).reading)),
    ],
    [
      "as the program's own clean workbook",
      "ymd",
      async (sheets) =>
        withPolicy(sheets, [
          { name: "all.xlsx", bytes: await cleanWorkbook((await read(filesOf(sheets))).reading.fleet) },
        ]),
    ],
  ];

function mixedUp<T>(of: readonly T[], seed: number): T[] {
  return [...shuffled(of.length, seededRandom(seed))].map((at) => of[at] as T);
}

function cleanTexts({ fleet }: Awaited<ReturnType<typeof read>>["reading"]): SheetFile[] {
  return cleanSheets(fleet)
    .filter(({ name }) => !name.startsWith("policy"))
    .map(({ name, text }) => textFile(name, text));
}

function withPolicy({ policy }: MadeUpSheets, others: SheetFile[]): SheetFile[] {
  return [...others.filter(({ name }) => name !== "policy.csv"), ...filesOf({ policy: policy! })];
}

describe.each(Array.from({ length: FLEETS }, (_, i) => i + 1))("makePlan on the made-up fleet %i", (seed) => {
  const sheets = madeUpFleet(seed);
  // a column of days may hold none over the 12th: how they are written is told
  const told = (order: string) => ({ ...sheets, policy: [...sheets.policy!, { key: "date_order", value: order }] });
  const asTold = remembered((order: string) => planned(filesOf(told(order))));

  it.each(TELLINGS)("plans the same from the same facts told %s", async (_, order, telling) => {
    const plan = content(await planned(await telling(told(order), seed), filesOf(told(order))));
    expect(plan).toEqual(content(await asTold(order)));
  });

  it("orders the same whatever else the price list holds, and from units listed one by one", async () => {
    const { orders } = await asTold("ymd");
    const unneeded = { ...sheets.catalogue?.[0], item: "unneeded", kind: "other", fits: "gamma" };
    const more = { ...sheets, catalogue: [...sheets.catalogue!, unneeded as SheetRow] };
    expect((await planned(filesOf(more))).orders).toEqual(orders);
    const units = sheets.dated_stock!.flatMap((row) =>
      Array.from({ length: Number(row.quantity) }, () => ({ ...row, quantity: "1" })),
    );
    expect((await planned(filesOf({ ...sheets, dated_stock: units }))).orders).toEqual(orders);
  });

  it("orders the same 28 years later, when weekdays and leap years fall as they do now", async () => {
    // by hand: 28 years hold 7 leap days, and 28 * 365 + 7 = 10227 days, whole weeks
    const later = (text: string) => (ISO_DAY.test(text) ? isoFromDay(day(text) + 10_227) : text);
    const rowsLater = (rows: SheetRow[]) =>
      rows.map((row) => Object.fromEntries(Object.entries(row).map(([column, text]) => [column, later(text)])));
    const then = Object.fromEntries(Object.entries(sheets).map(([kind, rows]) => [kind, rowsLater(rows)]));
    const dated = ({ orders }: Plan) =>
      orders.map(({ item, orderBy, arriveBy, quantity, lineCost, feeShare }) => {
        return { item, quantity, lineCost, feeShare, orderBy: day(orderBy), arriveBy: day(arriveBy) };
      });
    const now = dated(await asTold("ymd"));
    expect(dated(await planned(filesOf(then)))).toEqual(
      now.map((line) => ({ ...line, orderBy: line.orderBy + 10_227, arriveBy: line.arriveBy + 10_227 })),
    );
  });

  it("adds up: causes to needs, lines to years, and each chance and date in its order", async () => {
    const plan = await asTold("ymd");
    for (const { mean, causes, cumulative } of plan.demand) {
      mean.forEach((units, m) => {
        // each cause is told to a thousandth
        expect(Object.values(causes).reduce((sum, cause) => sum + cause[m]!, 0)).toBeCloseTo(units, 2);
        expect(cumulative.p50[m]).toBeLessThanOrEqual(cumulative.p80[m]!);
        expect(cumulative.p80[m]).toBeLessThanOrEqual(cumulative.p95[m]!);
        if (m > 0) expect(cumulative.p95[m]).toBeGreaterThanOrEqual(cumulative.p95[m - 1]!);
      });
    }
    const spent = plan.orders.reduce((sum, { lineCost, feeShare }) => sum + lineCost + feeShare, 0);
    expect(plan.budget.reduce((sum, { planned }) => sum + planned, 0)).toBe(spent);
    for (const { withoutBuying, withSchedule, devices } of plan.short) {
      expect(withoutBuying.expected).toBeLessThanOrEqual(devices + 1e-6);
      // what is bought later may lapse where what is there would have, a thousandth of a device or so
      expect(withSchedule.expected).toBeLessThanOrEqual(withoutBuying.expected + 0.05);
    }
    for (const { dueBy, belowBy, replaceBy } of plan.packs) {
      dueBy.chance.forEach((chance, m) => {
        if (m > 0) expect(chance).toBeGreaterThanOrEqual(dueBy.chance[m - 1]!);
      });
      for (const { p10, p50, p90 } of [belowBy, replaceBy])
        expect([p10, p50, p90].filter((date) => date !== null)).toEqual(
          [p10, p50, p90].filter((date) => date !== null).sort(),
        );
    }
  });
});
