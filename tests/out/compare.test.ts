import { describe, expect, it } from "vitest";
import { comparePlans } from "../../src/out/compare.ts";
import { compareText } from "../../src/out/compare-text.ts";
import type { Plan } from "../../src/out/plan-schema.ts";
import { aPlan } from "./a-plan.ts";

const plan = aPlan();
const line = plan.orders[0]!;
const pack = plan.packs[0]!;

describe("comparePlans", () => {
  it("finds nothing changed between a plan and itself", () => {
    const same = comparePlans({ label: "a", plan }, { label: "b", plan });
    expect(same.says).toEqual(["Nothing changed."]);
    expect(same.policy).toEqual([]);
    expect(same.packs).toEqual([]);
    expect(same.orders).toEqual([]);
  });

  // By hand: unless a policy says otherwise, packs end at 80 % (the default in README.md), and what came later was not asked
  it("takes a plan that says nothing of a policy key for one made by its default", () => {
    const asked = (policy: typeof plan.policy) =>
      comparePlans({ label: "a", plan: aPlan({ policy: {} }) }, { label: "b", plan: aPlan({ policy }) }).policy;
    expect(asked({ end_of_life_percent: 80, buy_lacking: "no", use_log_from: null })).toEqual([]);
    expect(asked({ buy_lacking: "yes", of_no_meaning: 3 })).toEqual([
      { key: "buy_lacking", a: "no", b: "yes" },
      { key: "of_no_meaning", a: null, b: 3 },
    ]);
  });

  it("sets two policies side by side: choices, spend, units and dates that move", () => {
    const other = aPlan({
      policy: { ...plan.policy, end_of_life_percent: 70 },
      packs: [{ ...pack, replaceBy: { ...pack.replaceBy, p50: "2027-03-16" } }, plan.packs[1]!],
      orders: [{ ...line, quantity: 10, boxes: 10, lineCost: 389_000 }],
      budget: [{ ...plan.budget[0]!, planned: 395_500, p95: 434_400 }],
    });
    const both = comparePlans({ label: "80 %", plan }, { label: "70 %", plan: other });
    expect(both.policy).toEqual([{ key: "end_of_life_percent", a: 80, b: 70 }]);
    // By hand: 14 February to 16 March 2027 is 30 days
    expect(both.packs).toEqual([
      {
        serial: "M22-001",
        item: "pack-md",
        replaceBy: { a: "2027-02-14", b: "2027-03-16" },
        daysLater: 30,
        newReadings: 0,
      },
    ]);
    expect(both.orders).toMatchObject([{ id: line.id, change: "changed", quantity: { a: 12, b: 10 } }]);
    expect(both.items.find((row) => row.item === "pack-md")).toMatchObject({
      units: { a: 12, b: 10 },
      cost: { a: 473_300, b: 395_500, currency: "EUR" },
    });
    expect(both.says).toContain("2026/27: planned spend EUR 778.00 less; safe (P95) 5,122.00 against 4,344.00.");
    expect(compareText(both, { width: 100 })).toContain("2027-03-16");
  });

  it("counts every pack whose date moved, came or went, and says what did not change", () => {
    const by = (p50: string | null) => ({ ...pack, replaceBy: { ...pack.replaceBy, p50 } });
    const before = aPlan({ packs: [by("2027-02-14"), { ...by(null), serial: "Z" }] });
    const after = aPlan({
      packs: [by(null), { ...by("2029-01-01"), serial: "Z" }],
      budget: [{ ...plan.budget[0]!, p95: 512_300 }],
    });
    const both = comparePlans({ label: "a", plan: before }, { label: "b", plan: after });
    expect(both.packs).toHaveLength(2);
    expect(both.says).toContain("Packs whose likely date moved: 0 later, 0 earlier, 2 with a date in one plan only.");
    expect(both.says).toContain("2026/27: planned spend the same; safe (P95) 5,122.00 against 5,123.00.");
    const gone = comparePlans({ label: "a", plan }, { label: "b", plan: aPlan({ budget: [] }) });
    expect(gone.says).toContain("2026/27: EUR 4,733.00 planned in A only.");
  });

  it("says which years the plans do not hold alike, so that a short one is not taken for a saving", () => {
    const policy = { ...plan.policy, fiscal_year_starts: 4 };
    const years = (...of: [string, number][]) =>
      of.map(([fiscalYear, planned]) => ({ ...plan.budget[0]!, fiscalYear, planned, p95: planned }));
    // November 2026 to March 2028 holds all of 2027/28, November 2026 to October 2027 seven months from April on
    const long = { from: "2026-11", to: "2028-06" };
    const a = aPlan({ policy, horizon: long, budget: years(["2027/28", 900_000], ["2028/29", 50_000]) });
    const b = aPlan({ policy, horizon: { from: "2026-11", to: "2027-10" }, budget: years(["2027/28", 500_000]) });
    const { says, spend } = comparePlans({ label: "a", plan: a }, { label: "b", plan: b });
    expect(spend.map(({ months }) => months)).toEqual([
      { a: 12, b: 7 },
      { a: 3, b: 0 },
    ]);
    expect(says).toContain(
      "2027/28: planned spend EUR 4,000.00 less; safe (P95) 9,000.00 against 5,000.00. They do not compare: A holds 12 months of that year, B 7.",
    );
    expect(says).toContain("2028/29: EUR 500.00 planned in A only. B does not reach that year.");
    const none = comparePlans({ label: "a", plan: a }, { label: "b", plan: { ...b, budget: [] } }).says;
    expect(none).toContain(
      "2027/28: EUR 9,000.00 planned in A only. They do not compare: A holds 12 months of that year, B 7.",
    );
    const other = { ...b, policy: { ...policy, fiscal_year_starts: 7 } };
    const starts = comparePlans({ label: "a", plan: a }, { label: "b", plan: other }).says;
    expect(starts).toContain("The fiscal years start in different months: their sums do not compare.");
    // a year of the one is no year of the other, though both plans reach its months
    expect(starts.filter((told) => /^20\d\d|does not reach/.test(told))).toEqual([]);
  });

  it("tells each of several files of one name that differ", () => {
    const [input] = plan.inputs;
    const files = (...of: [string, number][]) => of.map(([sha256, used]) => ({ ...input!, sha256, used }));
    const a = aPlan({ inputs: files(["north", 5], ["south", 7]) });
    const inputsOf = (b: typeof plan) => comparePlans({ label: "a", plan: a }, { label: "b", plan: b }).inputs;
    const [file, sheet] = [input!.file, input!.sheet];
    expect(inputsOf(aPlan({ inputs: files(["south", 7], ["north", 5]) }))).toEqual([]);
    expect(inputsOf(aPlan({ inputs: files(["new north", 6], ["south", 7]) }))).toEqual([{ file, sheet, a: 5, b: 6 }]);
    expect(inputsOf(aPlan({ inputs: files(["south", 7]) }))).toEqual([{ file, sheet, a: 5, b: null }]);
  });

  it("calls no pack everlasting that has no date", () => {
    const none = { ...pack, replaceBy: { ...pack.replaceBy, kind: "no-forecast" as const, p50: null } };
    const text = compareText(comparePlans({ label: "a", plan }, { label: "b", plan: aPlan({ packs: [none] }) }), {
      width: 100,
    });
    expect(text).toMatch(/^M22-001 +pack-md +2027-02-14 +none +- +0$/m);
  });

  it("names no currency where the sheets name none", () => {
    const bare = (quantity: number, planned: number) =>
      aPlan({
        orders: [{ ...line, currency: "XXX", quantity, boxes: quantity, lineCost: planned }],
        budget: [{ ...plan.budget[0]!, currency: "XXX", planned, p95: planned }],
      });
    const both = comparePlans({ label: "a", plan: bare(2, 60_000) }, { label: "b", plan: bare(3, 90_000) });
    expect(both.says).toContain("2026/27: planned spend 300.00 more; safe (P95) 600.00 against 900.00.");
    expect(compareText(both, { width: 120 })).not.toContain("XXX");
    const free = [{ ...bare(0, 0).budget[0]!, p50: 0, p80: 0, p95: 0 }];
    const unpriced = aPlan({ budget: free });
    const text = compareText(comparePlans({ label: "a", plan: unpriced }, { label: "b", plan: unpriced }), {
      width: 120,
    });
    expect(text).not.toContain("Spend by fiscal year");
  });

  it("takes no amount in one currency from one in another", () => {
    const b = aPlan({ orders: [{ ...line, currency: "USD" }] });
    const { orders } = comparePlans({ label: "a", plan: aPlan({ orders: [line] }) }, { label: "b", plan: b });
    const cost = line.lineCost + line.feeShare;
    expect(orders.map((one) => [one.id, one.change, one.currency, one.cost])).toEqual([
      [line.id, "gone", "EUR", { a: cost, b: null }],
      [line.id, "new", "USD", { a: null, b: cost }],
    ]);
  });

  // By hand: nobody knows what a line without a price costs, nor by how much it costs more or less than another
  it("takes a price that is not known for unknown, and for no other currency", () => {
    const unpriced = { ...line, unitPrice: "0.00", lineCost: 0, feeShare: 0, currency: "XXX" };
    const none = { ...plan.budget[0]!, currency: "XXX", planned: 0, p50: 0, p80: 0, p95: 0 };
    const of = (orders: Plan["orders"]) => ({ label: "", plan: aPlan({ orders, budget: [plan.budget[0]!, none] }) });
    const known = comparePlans(of([unpriced]), of([line]));
    const cost = { a: null, b: line.lineCost + line.feeShare };
    expect(known.orders).toMatchObject([{ id: line.id, change: "changed", currency: "EUR", cost }]);
    expect(known.says).toContain("pack-md: its first order 12 at no known price against 12 at 389.00 EUR each.");
    expect(comparePlans(of([line]), of([unpriced])).orders).toMatchObject([{ change: "changed", currency: "EUR" }]);
    const text = compareText(known, { width: 120 });
    expect(text).toMatch(/^changed .*pack-md .* 12 +12 +-$/m);
    expect(text.match(/^2026\/27 .*/gm)).toHaveLength(1);
    expect(compareText(comparePlans(of([]), of([unpriced])), { width: 120 })).toMatch(/^new .*pack-md .* 12 +-$/m);
    const abroad = { ...unpriced, currency: "EUR" };
    expect(comparePlans(of([unpriced]), of([abroad])).says).toEqual(["Nothing changed."]);
  });

  // an order's fee moves between its lines whenever another line comes or goes
  it("takes a line that differs by its share of the fee alone for the same", () => {
    const orders = (more: object) => [{ ...line, ...more }];
    const shared = comparePlans({ label: "a", plan }, { label: "b", plan: aPlan({ orders: orders({ feeShare: 1 }) }) });
    expect(shared.orders).toEqual([]);
    const dearer = aPlan({ orders: orders({ lineCost: line.lineCost + 123_456 }) });
    const text = compareText(comparePlans({ label: "a", plan }, { label: "b", plan: dearer }), { width: 100 });
    expect(text).toMatch(/changed .*pack-md .* 1,234\.56$/m);
  });

  // due in December as foreseen, and told as of February, the later plan's day
  it("takes a pack that came due as foreseen for unmoved", () => {
    const due = (p50: string, kind: "within-horizon" | "already-due") => [
      { ...pack, replaceBy: { ...pack.replaceBy, p50, kind } },
    ];
    const before = aPlan({ packs: due("2026-12-10", "within-horizon") });
    const after = aPlan({ asOf: "2027-02-01", packs: due("2027-02-01", "already-due") });
    expect(comparePlans({ label: "a", plan: before }, { label: "b", plan: after }).packs).toEqual([]);
    const sooner = aPlan({ packs: due("2027-05-10", "within-horizon") });
    expect(comparePlans({ label: "a", plan: sooner }, { label: "b", plan: after }).packs).toHaveLength(1);
  });

  it("tells new readings, used stock and prices as what may be behind a change", () => {
    const later = aPlan({
      fadeGroups: [{ ...plan.fadeGroups[0]!, readings: 11 }],
      packs: [{ ...pack, readings: 11, replaceBy: { ...pack.replaceBy, p50: "2027-02-04" } }, plan.packs[1]!],
      datedStock: [{ ...plan.datedStock[0]!, quantity: 24 }],
      demand: [plan.demand[0]!, { ...plan.demand[0]!, item: "pads-adult" }],
      orders: [{ ...line, unitPrice: "399.00", quantity: 9 }],
      inputs: [{ ...plan.inputs[0]!, sha256: "11" }],
    });
    const { says, inputs } = comparePlans({ label: "October", plan }, { label: "January", plan: later });
    expect(inputs).toEqual([{ file: "packs.csv", sheet: null, a: 1199, b: 1199 }]);
    // a price may hang on the size of its order, which stands beside it
    expect(says).toContain("pack-md: 2 readings more, its first order 12 at 389.00 against 9 at 399.00 each.");
    expect(says).toContain("pads-adult: 6 dated units fewer.");
    // the same figure in another currency is another price
    const abroad = aPlan({ orders: [{ ...line, currency: "USD" }] });
    expect(comparePlans({ label: "a", plan }, { label: "b", plan: abroad }).says).toContain(
      "pack-md: its first order 12 at 389.00 EUR against 12 at 389.00 USD each.",
    );
    expect(says).toContain("Packs whose likely date moved: 0 later, 1 earlier, 1 of them with new readings.");
  });

  // By hand: what lies there under the name that is replaced is neither needed nor bought under it, and 30 less 24 are 6; of its
  // packs, 11 less 9 readings are 2
  it("tells used stock and new readings also of what is bought under another name", () => {
    const of = (quantity: number, readings: number) =>
      aPlan({
        demand: [{ ...plan.demand[0]!, item: "new" }],
        datedStock: [{ ...plan.datedStock[0]!, item: "old", quantity }],
        fadeGroups: [{ ...plan.fadeGroups[0]!, item: "old-pack", readings }],
        packs: [{ ...pack, item: "old-pack", readings }],
        orders: [],
      });
    const both = comparePlans({ label: "a", plan: of(30, 9) }, { label: "b", plan: of(24, 11) });
    expect(both.says).toEqual(["old: 6 dated units fewer.", "old-pack: 2 readings more."]);
    const [, table] = compareText(both, { width: 90 }).split("Items\n");
    expect(
      table!
        .split("\n")
        .slice(2)
        .map((row) => row.split(" ")[0]),
    ).toEqual(["new", ""]);
  });

  // By hand: the last test of the pack that read 9 times is its tenth, for which it is replaced by one that has none, so that the
  // plan lists 0 readings of packs in service; the item has 10 less 9 more, not 9 fewer
  it("counts the readings of packs that were replaced since", () => {
    const later = aPlan({
      fadeGroups: [{ ...plan.fadeGroups[0]!, readings: 10 }],
      packs: [{ ...pack, serial: "M27-001", readings: 0 }, plan.packs[1]!],
    });
    const { says } = comparePlans({ label: "a", plan }, { label: "b", plan: later });
    expect(says).toEqual(["pack-md: 1 reading more."]);
  });

  // By hand: 1.5 at one month's end and 2 at the next are 3.5 device-months; a line put off twice is one line
  it("tells what a budget puts off and whom that leaves short, as the schedule itself is the same", () => {
    const [row] = plan.short;
    const within = (month: string, expected: number) => ({
      ...row!,
      month,
      withinBudget: { expected, anyChance: 1 },
    });
    const put = (fiscalYear: string) => ({
      ...{ fiscalYear, currency: "EUR", line: "L1", supplier: "Fenwold Batteries", item: "pack-md", quantity: 12 },
      ...{ orderBy: "2026-11-01", deferredTo: "2027-04-01", saves: 100, deviceMonthsShort: 1 },
    });
    const short = [within("2026-11", 1.5), within("2026-12", 2)];
    const open = aPlan({ short: short.map((one) => ({ ...one, withinBudget: null })) });
    const capped = aPlan({ short, deferrals: [put("2026/27"), put("2027/28")] });
    const says = (a: Plan, b: Plan) => comparePlans({ label: "a", plan: a }, { label: "b", plan: b }).says;
    expect(says(open, capped)).toEqual([
      "Within the budget: A has none; B puts off 1 line, with 3.5 device-months short, at worst 2.0.",
    ]);
    expect(says(capped, capped)).toEqual(["Nothing changed."]);
  });

  // A sheet of the next month may spell what it names in another way: it is the same item, pack and order
  it("takes names that differ in case for the same, between plans and within one", () => {
    const stock = plan.datedStock[0]!;
    const shouted = aPlan({
      packs: plan.packs.map((one) => ({ ...one, item: "Pack-MD", serial: one.serial.toLowerCase() })),
      demand: plan.demand.map((one) => ({ ...one, item: "PACK-MD" })),
      orders: [
        { ...line, item: "PACK-MD", id: "Fenwold batteries / PACK-MD / 2026-11", quantity: 13, lineCost: 505_700 },
      ],
      datedStock: [stock, { ...stock, item: "PACK-md", quantity: 2 }],
    });
    const both = comparePlans({ label: "a", plan }, { label: "b", plan: shouted });
    // By hand: 9 readings in both, 12 and 13 units, and the 2 dated units that the second names in a third way
    expect(both.items).toMatchObject([
      {
        item: "PACK-MD",
        needed: { a: 6, b: 6 },
        units: { a: 12, b: 13 },
        orders: { a: 1, b: 1 },
        stock: { a: 0, b: 2 },
        readings: { a: 9, b: 9 },
      },
      { item: "pads-adult", needed: { a: 0, b: 0 }, stock: { a: 30, b: 30 } },
    ]);
    expect(both.orders).toMatchObject([{ change: "changed", quantity: { a: 12, b: 13 } }]);
    expect(both.packs).toEqual([]);
    const moved = shouted.packs.map((one) => ({ ...one, replaceBy: { ...one.replaceBy, p50: "2027-02-28" } }));
    const later = comparePlans({ label: "a", plan }, { label: "b", plan: { ...shouted, packs: moved } });
    expect(later.packs).toMatchObject([
      { serial: "m25-002", daysLater: null },
      { serial: "m22-001", daysLater: 14 },
    ]);
  });

  // By hand: 0.02 and 0.04 devices short are both 0.0 to the tenth, 0.04 and 0.06 are 0.0 and 0.1
  it("says nothing of devices short that differ by less than the tenth told", () => {
    const short = (expected: number) =>
      aPlan({ short: [{ ...plan.short[0]!, withSchedule: { expected, anyChance: 0.01 } }] });
    const says = (a: number, b: number) =>
      comparePlans({ label: "a", plan: short(a) }, { label: "b", plan: short(b) }).says;
    expect(says(0.02, 0.04)).toEqual(["Nothing changed."]);
    expect(says(0.04, 0.06)).toEqual([
      "Devices short with the schedule followed: 0.0 against 0.1 device-months short, at worst 0.0 against 0.1.",
    ]);
  });

  it("counts what is needed in the months that both plans hold", () => {
    // by hand: half a pack a month; May to October 2027 are six months of the first plan and the first six of the second
    const from = "2027-05";
    const later = aPlan({ horizon: { from, to: "2028-04" }, demand: plan.demand.map((row) => ({ ...row, from })) });
    const { months, items } = comparePlans({ label: "a", plan }, { label: "b", plan: later });
    expect(months).toEqual({ from: "2027-05", to: "2027-10" });
    expect(items.find(({ item }) => item === "pack-md")!.needed).toEqual({ a: 3, b: 3 });
  });

  it("says nothing of a year that only one plan holds and in which nothing is spent", () => {
    const spent = (planned: number, p95: number) => aPlan({ budget: [{ ...plan.budget[0]!, planned, p95 }] });
    const says = (b: Plan) => comparePlans({ label: "a", plan: aPlan({ budget: [] }) }, { label: "b", plan: b }).says;
    expect(says(spent(0, 0))).toEqual(["Nothing changed."]);
    expect(says(spent(0, 100))).toContain("2026/27: EUR 0.00 planned in B only.");
    expect(says(spent(100, 0))).toContain("2026/27: EUR 1.00 planned in B only.");
  });

  it("says so where two plans share no month", () => {
    const later = aPlan({ horizon: { from: "2029-01", to: "2029-12" } });
    const { months, says } = comparePlans({ label: "a", plan }, { label: "b", plan: later });
    expect(months).toBeNull();
    expect(says).toEqual(["The two plans have no month in common."]);
  });
});
