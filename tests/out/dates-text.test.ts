import { describe, expect, it } from "vitest";
import type { DatesReport } from "../../src/out/dates-report.ts";
import { datesText } from "../../src/out/dates-text.ts";
import { aPlan } from "./a-plan.ts";

const [row] = aPlan().datedStock;
const stock = (changes: Partial<DatesReport["datedStock"][number]>) => ({ ...row!, ...changes });
const rate = (place: string, unitsPerYear: number) => ({
  item: "pads-adult",
  place,
  duty: null,
  events: 3,
  months: 12,
  unitsPerYear,
  low: unitsPerYear / 2,
  high: unitsPerYear * 2,
  basis: "own" as const,
});

/** The dates of the small plan, with no visit to make and no use known. */
function aReport(changes: Partial<DatesReport> = {}): DatesReport {
  const swapCapacity = { perMonth: null, smallest: 0, enough: true, tradeOff: [] };
  return {
    ...aPlan(),
    heldStock: [],
    openedTooLong: [],
    lapses: [],
    places: [],
    swapCapacity,
    useRates: [],
    routine: [],
    ...changes,
  };
}

describe("datesText", () => {
  it("tells units by month, the crowded ones marked", () => {
    const report = aReport({
      datedStock: [
        stock({ swapBy: "2026-09-30", quantity: 2 }),
        stock({ swapBy: "2026-11-01", quantity: 4 }),
        stock({}),
        stock({ swapBy: "2028-01-01", quantity: 5 }),
      ],
    });
    expect(datesText(report, { width: 80 })).toContain(
      [
        "Units to swap by month",
        "overdue      2: pads-adult 2",
        "2026-11      4: pads-adult 4",
        "2027-08     30: pads-adult 30 (crowded)",
        "later        5: pads-adult 5",
      ].join("\n"),
    );
  });

  it("tells what is past expiry first", () => {
    const report = aReport({ datedStock: [stock({ expiry: "2026-10-31", quantity: 1150, place: "AED-04" })] });
    expect(datesText(report, { width: 90 })).toContain(
      "Out now\n- 1,150 dated units are past expiry: 1,150 of pads-adult at AED-04",
    );
  });

  it("tells the places with most to swap, the overdue ones first, and counts those beyond ten", () => {
    const at = (place: string, overdue: number, soon: number, year: number) => ({ place, overdue, soon, year });
    const report = aReport({ places: [at("AED-04", 1, 0, 3), at("Store", 0, 0, 30), at("MD-01", 0, 3, 3)] });
    expect(datesText(report, { width: 80 })).toContain(
      [
        "Places with most to swap",
        "place   overdue  to 2027-01  all to 2027-10",
        "------  -------  ----------  --------------",
        "AED-04        1           0               3",
        "Store         0           0              30",
        "MD-01         0           3               3",
        "",
      ].join("\n"),
    );
    const many = Array.from({ length: 12 }, (_, n) => at(`P${n}`, 0, 1, 1));
    expect(datesText(aReport({ places: many }), { width: 80 })).toContain("(2 more in dates.csv and --json)");
  });

  it("says one day, one minute and one month as one says them", () => {
    const days = (swap_before_expiry_days: number) =>
      datesText(aReport({ policy: { ...aPlan().policy, swap_before_expiry_days } }), { width: 200 });
    expect(days(2)).toContain("A unit is to be swapped 2 days before it expires;");
    expect(days(1)).toContain("A unit is to be swapped 1 day before it expires;");
    expect(days(0)).toContain("A unit is to be swapped by the day on which it expires;");
    const roll = { item: "paper", task: "check", duty: null, devices: 1, perYear: 1, quantity: 1, assumed: false };
    const routine = [{ ...roll, unitsPerYear: 1, minutesPerRoll: 1.2 }];
    expect(datesText(aReport({ routine }), { width: 80 })).toContain("A roll of paper lasts 1 minute of trace");
    const horizon = { from: "2026-11", to: "2026-11" };
    const places = [{ place: "AED-04", overdue: 2, soon: 0, year: 2 }];
    expect(datesText(aReport({ horizon, places }), { width: 80 })).toContain("place   overdue  all to 2026-11\n");
  });

  it("says so where no dated unit was read", () => {
    expect(datesText(aReport({ datedStock: [] }), { width: 80 })).toContain("\nNo dated unit was read.\n");
  });

  // what is counted is told as it is: 125 wipes are not 130
  it("rounds no whole number of units a time", () => {
    const task = { item: "wipes", task: "clean", duty: null, devices: 1, perYear: 12, assumed: false };
    const routine = [{ ...task, quantity: 125, unitsPerYear: 1500, minutesPerRoll: null }];
    expect(datesText(aReport({ routine }), { width: 90 })).toMatch(/^wipes +clean +all +1 +12 +125 +1,500\.0$/m);
    const parts = [{ ...task, quantity: 104.25, unitsPerYear: 1251, minutesPerRoll: null }];
    expect(datesText(aReport({ routine: parts }), { width: 90 })).toMatch(/ 104\.3 +1,251\.0$/m);
  });

  it("tells what lapses inside the horizon, and what moves save of it", () => {
    const lapses = [{ item: "pads-adult", due: 30, used: 7.5, saved: 0 }];
    expect(datesText(aReport({ lapses }), { width: 80 })).toContain(
      [
        "What lapses if nothing is done",
        "item        units due  used before  lapse unused",
        "----------  ---------  -----------  ------------",
        "pads-adult         30          7.5          22.5",
        "",
      ].join("\n"),
    );
    const move = { from: "A", to: "B", item: "pads-adult", lot: null, quantity: 2, by: "2026-12-01", unitsSaved: 1.26 };
    const saving = lapses.map((row) => ({ ...row, saved: 1.26 }));
    expect(datesText(aReport({ lapses: saving, moves: [move] }), { width: 80 })).toContain(
      "pads-adult         30          7.5          22.5         1.3\n",
    );
  });

  it("tells swaps and moves, where there are any", () => {
    const unit = { item: "pads-adult", lot: "W2708", quantity: 2 };
    const report = aReport({
      swapCalendar: [{ ...unit, month: "2027-07", place: "AED-01", swapBy: "2027-08-17", daysGivenUp: 34 }],
      moves: [
        { ...unit, from: "AED-01", to: "MD-01", by: "2026-12-01", unitsSaved: 0.34 },
        { ...unit, from: "MD-01", to: "AED-01", lot: null, by: "2026-11-20", unitsSaved: 0.34 },
      ],
    });
    expect(datesText(report, { width: 80 })).toContain(
      [
        "Swap calendar",
        "month    place   item        lot    units  swap by     unit-days given up",
        "-------  ------  ----------  -----  -----  ----------  ------------------",
        "2027-07  AED-01  pads-adult  W2708      2  2027-08-17                  34",
        "",
        "Moves",
        "1 exchange of 4 units saves 0.7 from lapsing; every place keeps its count. What",
        "saves 0.1 of a unit or less for each unit carried is left out.",
        "",
        "by          from    to     item        out      back         saved",
        "----------  ------  -----  ----------  -------  -----------  -----",
        "2026-11-20  AED-01  MD-01  pads-adult  2 W2708  2 of no lot   0.68",
      ].join("\n"),
    );
    expect(datesText(aReport(), { width: 80 })).not.toMatch(/^(Swap calendar|Swap visits|Moves|Use behind)/m);
  });

  it("tells the fewest visits a month that will do, and what more of them save", () => {
    const tradeOff = [
      { perMonth: 7, unitMonthsGivenUp: 1410 },
      { perMonth: 11, unitMonthsGivenUp: 0 },
    ];
    const text = datesText(aReport({ swapCapacity: { perMonth: null, smallest: 7, enough: true, tradeOff } }), {
      width: 80,
    });
    expect(text).toContain(
      "7 visits a month are\nthe fewest that meet every expiry. For the calendar of the visits, set",
    );
    expect(text).toContain("visits a month  unit-months of life given up\n");
    expect(text).toContain(
      "\n             7                         1,410\n            11                             0\n",
    );
    const set = { perMonth: 9, smallest: 7, enough: true, tradeOff };
    expect(datesText(aReport({ swapCapacity: set }), { width: 80 })).not.toContain("set swaps_per_month");
  });

  // By hand: low is half and high twice the rate, so that they run from half of 0.5 to twice 2.25
  it("tells how often an item is used by duty, where least and most, and how sure that is", () => {
    const useRates = [rate("MD-01", 0.5), rate("MD-02", 2.25), { ...rate("PUB-01", 0.125), duty: "public" }];
    expect(datesText(aReport({ useRates }), { width: 90 })).toContain(
      [
        "Use behind these figures",
        "item        duty    places  uses logged  units a year  at a place  9 in 10 within",
        "----------  ------  ------  -----------  ------------  ----------  --------------",
        "pads-adult  -            2            6           2.8  0.5 to 2.3      0.3 to 4.5",
        "pads-adult  public       1            3           0.1         0.1      0.1 to 0.3",
      ].join("\n"),
    );
  });

  // By hand: a use at a site of three devices is a third of one at each; of two of them, 0.667
  it("tells uses that devices share to a tenth", () => {
    const useRates = ["MD-01", "MD-02"].map((place) => ({ ...rate(place, 1), events: 1 / 3 }));
    expect(datesText(aReport({ useRates }), { width: 90 })).toMatch(/pads-adult +- +2 +0\.7 +2\.0 /);
  });

  it("tells what the routine uses, what is assumed marked, and the minutes of a roll", () => {
    const paper = { item: "paper", task: "shift check", duty: "van", devices: 4, perYear: 365, minutesPerRoll: 20 };
    const gel = { item: "gel", task: "weekly test", duty: null, devices: 2, perYear: 52, minutesPerRoll: null };
    const routine = [
      { ...gel, quantity: 0.5, assumed: false, unitsPerYear: 52 },
      { ...paper, quantity: 0.0083, assumed: true, unitsPerYear: 12.167 },
    ];
    expect(datesText(aReport({ routine }), { width: 90 })).toContain(
      [
        "Routine",
        "item   task         duty  devices  times a year  units a time  units a year",
        "-----  -----------  ----  -------  ------------  ------------  ------------",
        "gel    weekly test  all         2            52           0.5          52.0",
        "paper  shift check  van         4           365      0.0083 *          12.2",
        "",
        "* Common practice, as the sheet gives no quantity: one unit, or a strip of 10 seconds of",
        "paper.",
        "A roll of paper lasts 20 minutes of trace at 25 mm/s.",
      ].join("\n"),
    );
  });

  it.each([60, 80, 120])("fits %i columns", (width) => {
    const tradeOff = [
      { perMonth: 7, unitMonthsGivenUp: 1410 },
      { perMonth: 8, unitMonthsGivenUp: 0 },
    ];
    const move = { from: "Quarry Road", to: "North Station", item: "pads-adult", lot: "W2708", quantity: 12 };
    const report = aReport({
      moves: [{ ...move, by: "2026-12-01", unitsSaved: 1.5 }],
      useRates: [rate("MD-01", 0.5)],
      swapCapacity: { perMonth: null, smallest: 7, enough: true, tradeOff },
    });
    for (const line of datesText(report, { width }).split("\n")) {
      expect([...line].length, line).toBeLessThanOrEqual(width);
    }
  });
});
