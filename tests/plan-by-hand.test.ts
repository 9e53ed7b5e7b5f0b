import { describe, expect, it } from "vitest";
import { defaultPolicy, type Policy } from "../src/fleet/policy.ts";
import { makePlan } from "../src/plan.ts";
import { AS_OF, read } from "./sheets/sheet-file.ts";

/** Small fleets whose needs are certain, from their sheets to their orders; all figures are worked out by hand. */
function planOf(sheets: Record<string, readonly string[]>, choices: Partial<Policy> = {}) {
  const files = Object.entries(sheets).map(([name, lines]) => [`${name}.csv`, lines.join("\n")]);
  return makePlan(read(Object.fromEntries(files)), { ...defaultPolicy(AS_OF), horizonMonths: 24, ...choices });
}

/** The months in which units are needed, with their number. */
const needed = ({ demand: [first] }: ReturnType<typeof planOf>) =>
  first!.mean.flatMap((units, at) => {
    const month = 10 + at;
    return units > 0 ? [`${2026 + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, "0")}: ${units}`] : [];
  });

const ordered = ({ orders }: ReturnType<typeof planOf>) =>
  orders.map(({ orderBy, supplier, quantity, late }) => `${orderBy} ${supplier} ${quantity}${late ? " late" : ""}`);

const DEVICES = ["device,type,in_service,retired"];
const STOCK = ["item,expiry,quantity,place"];
const CATALOGUE = ["item,kind,supplier,price,currency,lead_days,arrives_with_months,fits,per_device"];

describe("a plan worked out by hand", () => {
  /*
   * Swaps are 14 days before expiry: in March and August 2027 and June 2028. Units that come in March 2027 last to September 2028,
   * and are swapped on the 17th. Without a fee each month is ordered for itself: its first day less 14 days and 40.
   */
  it("brings a device of a month to come its pads, and renews what was renewed", () => {
    const plan = planOf({
      devices: [...DEVICES, "M1,monitor,,", "M2,monitor,,", "M3,monitor,,", "M4,monitor,2027-09-15,"],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,40,18,monitor,2"],
      dated_stock: [...STOCK, "pads,2027-03-31,2,M1", "pads,2027-08-31,2,M2", "pads,2028-06-30,2,M3"],
    });
    expect(needed(plan)).toEqual(["2027-03: 2", "2027-08: 2", "2027-09: 2", "2028-06: 2", "2028-09: 2"]);
    expect(ordered(plan)).toEqual([
      "2027-01-06 Alpha 2",
      "2027-06-08 Alpha 2",
      "2027-07-09 Alpha 2",
      "2028-04-08 Alpha 2",
      "2028-07-09 Alpha 2",
    ]);
    expect(plan.budget.map(({ fiscalYear, planned, p50, p95 }) => [fiscalYear, planned, p50, p95])).toEqual([
      ["2027", 24_000, 24_000, 24_000],
      ["2028", 16_000, 16_000, 16_000],
    ]);
    expect(plan.short.every(({ withSchedule }) => withSchedule.anyChance === 0)).toBe(true);
  });

  /*
   * Orders leave on 1 January only: for the pads of August 2027, to be there by 18 July, on 1 January 2027. They come in January
   * and wait for 6 months until July, so that of the 18 that new ones would last from August, to February 2029, 12 are left.
   */
  it("counts the life that is lost where a supplier takes orders once a year", () => {
    const plan = planOf({
      devices: [...DEVICES, "D1,aed,,"],
      catalogue: [...CATALOGUE, "pads,pads,Beta,34.00,EUR,30,18,aed,1"],
      suppliers: ["supplier,order_every_months", "Beta,12"],
      dated_stock: [...STOCK, "pads,2027-08-31,1,D1"],
    });
    expect(needed(plan)).toEqual(["2027-08: 1", "2028-08: 1"]);
    expect(ordered(plan)).toEqual(["2027-01-01 Beta 1", "2028-01-01 Beta 1"]);
  });

  /*
   * Beta is the cheaper in the same currency, however it is written, and its fee is in that currency, too: 34.00 and 5.00 are 39.00 to 40.00.
   * The budget of 20 euros a year is held against it, so that the one line is put off in 2027, and again in 2028.
   */
  it("takes a currency told by its sign, its name or its code for one", () => {
    const sheets = {
      devices: [...DEVICES, "D1,aed,,"],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,30,24,aed,1", "pads,pads,Beta,34.00,€,30,24,aed,1"],
      suppliers: ["supplier,order_fee,currency", "Beta,5.00,euro"],
      dated_stock: [...STOCK, "pads,2027-08-31,1,D1"],
    };
    const plan = planOf(sheets, { currency: "EUR", budgetPerFiscalYear: "20" });
    expect(ordered(plan)).toEqual(["2027-06-18 Beta 1"]);
    expect(plan.budget.map(({ currency, planned }) => [currency, planned])).toEqual([["EUR", 3_900]]);
    expect(plan.deferrals.map(({ fiscalYear, saves }) => [fiscalYear, saves])).toEqual([
      ["2027", 3_900],
      ["2028", 3_900],
    ]);
    expect(plan.cautions.filter((caution) => caution.includes("EUR"))).toEqual([]);
  });

  // A price of nought stands for one that nobody filled in: it makes no supplier the cheapest, and no order free
  it("takes a price of nought for one that is not known", () => {
    const sheets = (...catalogue: string[]) => ({
      devices: [...DEVICES, "D1,aed,,"],
      catalogue: [...CATALOGUE, ...catalogue],
      dated_stock: [...STOCK, "pads,2027-08-31,1,D1"],
    });
    const beta = "pads,pads,Beta,0.00,EUR,30,24,aed,1";
    const both = planOf(sheets(beta, "pads,pads,Alpha,40.00,EUR,30,24,aed,1"));
    expect(ordered(both)).toEqual(["2027-06-18 Alpha 1"]);
    const alone = planOf(sheets(beta));
    expect(ordered(alone)).toEqual(["2027-06-18 Beta 1"]);
    expect(alone.cautions.filter((caution) => caution.startsWith("pads has no price"))).toHaveLength(1);
  });

  // D1's pads would be swapped after it has left, D2's four days before; D3 stays. Orders: less 14 days and 30.
  it("buys nothing for a device that leaves before its swap", () => {
    const plan = planOf({
      devices: [...DEVICES, "D1,aed,,2027-05-10", "D2,aed,,2027-05-10", "D3,aed,,"],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,30,24,aed,1"],
      dated_stock: [...STOCK, "pads,2027-08-31,1,D1", "pads,2027-05-20,1,D2", "pads,2027-07-31,1,D3"],
    });
    expect(needed(plan)).toEqual(["2027-05: 1", "2027-07: 1"]);
    expect(ordered(plan)).toEqual(["2027-03-18 Alpha 1", "2027-05-18 Alpha 1"]);
    expect(plan.short.map(({ devices }) => devices).slice(4, 8)).toEqual([3, 3, 1, 1]);
  });

  /*
   * The north's 3 are to be swapped by 16 April: one serves March, and is swapped in April as D2's is, for which no other of
   * them counts; two lapse. The south's serves one of these two. Nothing is left for the other, May, June and July; what D5
   * has besides is D5's. Orders leave 44 days before the first of a month.
   */
  it("uses what lies in stores first expired, first out, and leaves devices what they hold", () => {
    const plan = planOf({
      devices: [...DEVICES, "D1,aed,,", "D2,aed,,", "D3,aed,,", "D4,aed,,", "D5,aed,,"],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,30,24,aed,1"],
      dated_stock: [
        ...STOCK,
        ...["03", "04", "05", "06", "07"].map((month, at) => `pads,2027-${month}-28,1,D${at + 1}`),
        "pads,2029-06-30,1,D5",
        "pads,2027-04-30,3,North store",
        "pads,2028-12-31,1,South store",
      ],
    });
    expect(needed(plan)).toEqual(["2027-03: 1", "2027-04: 2", "2027-05: 1", "2027-06: 1", "2027-07: 1"]);
    expect(ordered(plan)).toEqual(
      ["2027-02-16", "2027-03-18", "2027-04-18", "2027-05-18"].map((by) => `${by} Alpha 1`),
    );
  });

  /*
   * 4 devices and the store were stocked from one delivery. Its units are swapped by 17 August: what lies in the store takes
   * the place of none of those, so all 4 are bought, for 1 August. A lot that is to be swapped by 17 October takes their
   * place in August, and is bought for in its turn.
   */
  it.each([
    ["2027-08-31", ["2027-08: 4"], ["2027-06-18 Alpha 4"]],
    ["2027-10-31", ["2027-08: 4", "2027-10: 4"], ["2027-08-18 Alpha 4"]],
    // swapped by 17 July: gone before
    ["2027-07-31", ["2027-08: 4"], ["2027-06-18 Alpha 4"]],
  ])("fits what lies on a shelf with the life that it has left: expiry %s", (expiry, needs, orders) => {
    const plan = planOf({
      devices: [...DEVICES, "D1,aed,,", "D2,aed,,", "D3,aed,,", "D4,aed,,"],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,30,24,aed,1"],
      dated_stock: [
        ...STOCK,
        ...["D1", "D2", "D3", "D4"].map((at) => `pads,2027-08-31,1,${at}`),
        `pads,${expiry},4,Store`,
      ],
    });
    expect(needed(plan)).toEqual(needs);
    expect(ordered(plan)).toEqual(orders);
    expect(plan.short.map(({ withSchedule }) => withSchedule.expected)).toEqual(plan.short.map(() => 0));
  });

  // The 2 that should have come count as of today, so 2 of February's 4 are lacking; the 3 of 20 June come after 1 June.
  it("counts what is overdue as of today, and what comes after the need not at all", () => {
    const plan = planOf({
      devices: [...DEVICES, ...Array.from({ length: 10 }, (_, at) => `D${at},aed,,`)],
      catalogue: [...CATALOGUE, "pads,pads,Alpha,40.00,EUR,30,36,aed,1"],
      dated_stock: [...STOCK, ...Array.from({ length: 10 }, (_, at) => `pads,2027-0${at < 4 ? 2 : 6}-28,1,D${at}`)],
      on_order: ["item,quantity,arrives,order", "pads,2,2026-10-10,PO1", "pads,3,2027-06-20,PO2"],
    });
    expect(needed(plan)).toEqual(["2027-02: 4", "2027-06: 6"]);
    expect(ordered(plan)).toEqual(["2026-12-19 Alpha 2", "2027-04-18 Alpha 6"]);
  });

  // January's 4 should have left for the cheaper one on 19 September, 104 days before; the dearer one takes 5 days and the 14
  it("buys from the dearer supplier what the cheaper one cannot bring in time", () => {
    const plan = planOf({
      devices: [...DEVICES, ...Array.from({ length: 10 }, (_, at) => `D${at},aed,,`)],
      catalogue: [...CATALOGUE, "pads,pads,Slow,30.00,EUR,90,36,aed,1", "pads,pads,Fast,45.00,EUR,5,36,aed,1"],
      dated_stock: [
        ...STOCK,
        ...Array.from({ length: 10 }, (_, at) => `pads,2027-${at < 4 ? "01" : "10"}-31,1,D${at}`),
      ],
    });
    expect(needed(plan)).toEqual(["2027-01: 4", "2027-10: 6"]);
    expect(ordered(plan)).toEqual(["2026-12-13 Fast 4", "2027-06-19 Slow 6"]);
  });

  /*
   * B1 in A1 came to the end of its service life in May 2026 and is short in every month, that of its use-by included. B2 in A2
   * is due by its use-by alone, and good to the end of that day, the last of February 2027: short from March on.
   */
  it("counts a battery in two lists as good to its use-by only where nothing else ended it before", () => {
    const plan = planOf({
      devices: [...DEVICES, "A1,aed,,", "A2,aed,,"],
      packs: ["serial,item,device,in_service", "B1,cell,A1,2022-05-01", "B2,cell,A2,2024-05-01"],
      dated_stock: ["item,expiry,serial,place", "cell,2027-01-31,B1,A1", "cell,2027-02-28,B2,A2"],
      catalogue: ["item,kind,service_months,fits,per_device", "cell,primary,48,aed,1"],
    });
    const short = plan.short
      .slice(0, 6)
      .map(({ month, withoutBuying }) => `${month}: ${withoutBuying.expected.toFixed(1)}`);
    expect(short).toEqual([
      "2026-11: 1.0",
      "2026-12: 1.0",
      "2027-01: 1.0",
      "2027-02: 1.0",
      "2027-03: 2.0",
      "2027-04: 2.0",
    ]);
  });

  /*
   * Some two uses a year, so that the sensor may well be used before its swap on 17 May. At the end of May, its expiry, it is good
   * only where it was not: the device is short no less often than a month before, and always from June on.
   */
  it("counts what is past its swap day and in date as good only so far as it was not used before", () => {
    const plan = planOf({
      devices: [...DEVICES, "M1,monitor,,"],
      catalogue: [...CATALOGUE, "sensor,sensor,Alpha,9.00,EUR,14,48,monitor,1"],
      dated_stock: [...STOCK, "sensor,2027-05-31,1,M1"],
      use_log: ["date,item,quantity,place", "2025-12-05,sensor,1,M1", "2026-06-05,sensor,1,M1"],
    });
    const [april, may, june] = plan.short.slice(5, 8).map(({ withoutBuying }) => withoutBuying.expected);
    expect(april).toBeGreaterThan(0.3);
    expect(may).toBeGreaterThanOrEqual(april!);
    expect(may).toBeLessThan(1);
    expect(june).toBe(1);
  });
});
