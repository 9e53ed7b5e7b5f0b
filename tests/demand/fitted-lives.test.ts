import { describe, expect, it } from "vitest";
import { isoFromDay } from "../../src/calendar/day.ts";
import { firstDayOfMonth, lastDayOfMonth, monthFromText, monthOfDay } from "../../src/calendar/month.ts";
import { type ComingLot, fittedLots } from "../../src/demand/fitted-lives.ts";
import { placeNeeds } from "../../src/demand/place-needs.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { seededRandom } from "../../src/maths/random.ts";
import { itemPlaces } from "../../src/supplies/item-places.ts";
import { catalogued, day, device, ordered, stock, use } from "../fleet/make-rows.ts";

const MONTHS = 36;
const policy = { ...defaultPolicy(day("2026-11-01")), horizonMonths: MONTHS };
const FIRST = monthFromText("2026-11")!;
const STARTS = Float64Array.from({ length: MONTHS + 1 }, (_, m) => firstDayOfMonth(FIRST + m));
const catalogue = [catalogued("Pads", "pads", { arrivesWithMonths: 24 })];

const placesOf = (fleet: Partial<Fleet>) => itemPlaces({ ...emptyFleet(), catalogue, ...fleet }, policy).items[0]!;

/** From which month on what is fitted has which swap days: those of so many units first, and then those of all others. */
function fitted(fleet: Partial<Fleet>, coming: readonly ComingLot[] = []): string[] {
  const months = fittedLots(placesOf(fleet), STARTS, policy, coming).map((lots, m) =>
    lots.map(({ upTo, swapDay }) => {
      const isNew = swapDay === lastDayOfMonth(FIRST + m + 24) - 14;
      const when = isNew ? "new" : isoFromDay(swapDay);
      return upTo === Number.POSITIVE_INFINITY ? when : `${when} to ${upTo}`;
    }),
  );
  return months.flatMap((lots, m) => {
    const now = lots.join(", ");
    return m > 0 && months[m - 1]!.join(", ") === now ? [] : [`${m} ${now}`];
  });
}

describe("fittedLots", () => {
  const devices = ["D1", "D2", "D3"].map((name) => device(name));

  // By hand: swap days are 14 days before the expiry. The store's are fitted until the month before their own swap month,
  // March (month 4), and then those of 16 June (month 7)
  it("fits what lies on shelves, first expired first out, until the month before its own swap", () => {
    const datedStock = [
      stock("Pads", "2027-06-30", "Store", { quantity: 5 }),
      stock("Pads", "2027-03-31", "Store", { quantity: 5 }),
      stock("Pads", "2029-10-31", "D1"),
    ];
    expect(fitted({ devices, datedStock }).slice(0, 3)).toEqual(["0 2027-03-17", "4 2027-06-16", "7 new"]);
  });

  // By hand: D1's and D2's are overdue and take both of May; D3's of January is replaced by a new one
  it("fits new ones once the shelf is empty, and leaves out what may not be fitted", () => {
    const datedStock = [
      stock("Pads", "2026-10-31", "D1"),
      stock("Pads", "2026-10-31", "D2"),
      stock("Pads", "2027-01-31", "D3"),
      stock("Pads", "2027-05-31", "Store", { quantity: 2 }),
      stock("Pads", "2027-05-31", "Store", { quantity: 9, held: "recall" }),
      // to be swapped in as-of's month itself
      stock("Pads", "2026-12-10", "Store", { quantity: 9 }),
    ];
    expect(fitted({ devices, datedStock }).slice(0, 2)).toEqual(["0 2027-05-17 to 2, new", "1 new"]);
  });

  // By hand: month 0 needs 3 and takes 1 of May and 1 of August; the third is new
  it("tells the order in which a month takes from several", () => {
    const datedStock = [
      ...devices.map((one) => stock("Pads", "2026-10-31", one.device)),
      stock("Pads", "2027-08-31", "Store"),
      stock("Pads", "2027-05-31", "Store"),
    ];
    const first = fitted({ devices, datedStock })[0];
    expect(first).toBe("0 2027-05-17 to 1, 2027-08-17 to 2, new");
  });

  // By hand: the order arrives on 20 January, in month 2, so the unit of month 1 is new. Two of its five are fitted in month 2
  // and the others wait, until July 2028 (month 20), before their swap month. Without a date of their own they last to
  // January 2029, as what is new in month 2 does, and wait until December (month 25)
  it("fits what is on order once it is there, with the dates that it will have", () => {
    const datedStock = [
      stock("Pads", "2026-12-31", "D1"),
      stock("Pads", "2027-01-31", "D2"),
      stock("Pads", "2027-01-31", "D3"),
    ];
    const fittedOf = (expiry: string | null) => {
      const facts = { arrives: day("2027-01-20"), expiry: expiry === null ? null : day(expiry) };
      return fitted({ devices, datedStock, onOrder: [ordered("Pads", 5, facts)] }).slice(0, 3);
    };
    expect(fittedOf("2028-08-31")).toEqual(["0 new", "2 2028-08-17", "21 new"]);
    expect(fittedOf(null)).toEqual(["0 new", "3 2029-01-17", "26 new"]);
  });

  // By hand: of three that count from 14 February 2027 and last to February 2029, D2 and D3 get two in August (month 9). D1's
  // of December 2026 is new, before it is their turn, and due in December 2028 (month 25), when it takes the last
  it("fits what is to come from the month of its first need on, with the life that it has by its arrival", () => {
    const datedStock = [
      stock("Pads", "2026-12-31", "D1"),
      stock("Pads", "2027-08-31", "D2"),
      stock("Pads", "2027-08-31", "D3"),
    ];
    const coming = [{ quantity: 3, from: day("2027-08-01"), arrives: day("2027-02-14") }];
    expect(fitted({ devices, datedStock }, coming).slice(0, 3)).toEqual([
      "0 new",
      "9 2029-02-14",
      "25 2029-02-14 to 1, new",
    ]);
  });
});

// By hand: ten devices lapse in May 2027 (month 6) and four of the store, of 17 February 2028 (month 15), are fitted then. The
// other six are new: their swap days are 17 May 2029 (month 30), and those of the four that replace the store's, Feb 2030
it("of places that lapse in one month, those that the shelf serves lapse with what it served", () => {
  const devices = Array.from({ length: 10 }, (_, at) => device(`D${at}`));
  const datedStock = [
    ...devices.map((one) => stock("Pads", "2027-05-31", one.device)),
    stock("Pads", "2028-02-29", "Store", { quantity: 4 }),
  ];
  const { certain } = placeNeeds(placesOf({ devices, datedStock }), policy);
  expect([...certain].flatMap((units, month) => (units > 0 ? [[month, units]] : []))).toEqual([
    [6, 10],
    [15, 4],
    [30, 6],
  ]);
});

/** Units that leave by month on average, played day by day: uses and lapses, each replaced from the shelf or by a new one. */
function played(places: { swapDays: number[]; perDay: number }[], shelf: readonly number[], runs: number): number[] {
  const { uniform } = seededRandom(20_261_130);
  const left = new Array<number>(MONTHS).fill(0);
  const indexOf = (at: number) => monthOfDay(Math.floor(at)) - FIRST;
  for (let run = 0; run < runs; run++) {
    const store = [...shelf].sort((a, b) => a - b);
    const here = places.map(({ swapDays }) => [...swapDays]);
    const uses = places.flatMap(({ perDay }, place) => {
      const days: [number, number][] = [];
      const wait = () => -Math.log(1 - uniform()) / perDay;
      for (let at = policy.asOf + wait(); at < STARTS[MONTHS]!; at += wait()) days.push([at, place]);
      return days;
    });
    uses.sort(([a], [b]) => a - b);
    for (;;) {
      const soonest = here.map((days) => Math.min(...days));
      const lapse = Math.min(...soonest);
      const isUse = uses.length > 0 && uses[0]![0] < lapse;
      const [at, place] = isUse ? uses.shift()! : [lapse, soonest.indexOf(lapse)];
      if (at >= STARTS[MONTHS]!) break;
      const month = indexOf(at);
      left[month]! += 1 / runs;
      while (store.length > 0 && indexOf(store[0]!) <= month) store.shift();
      const days = here[place]!;
      days[days.indexOf(soonest[place]!)] = store.shift() ?? lastDayOfMonth(FIRST + month + 24) - 14;
    }
  }
  return left;
}

const total = (values: ArrayLike<number>, months: number) =>
  Array.from(values)
    .slice(0, months)
    .reduce((a, b) => a + b, 0);

// What is expected comes from the play alone. The forecast has the shelf last as long as is expected, which errs by a unit or
// so; without the lives of what lies on the shelf 31 of 40 were told in two years
it("the needs of places that a shelf serves are those of a fleet played day by day, to five hundredths", () => {
  const devices = Array.from({ length: 10 }, (_, at) => device(`D${at}`));
  const ends = ["2027-05-31", "2027-11-30", "2028-04-30", "2028-09-30"];
  const datedStock = [
    ...devices.map((one, at) => stock("Pads", ends[at % 4]!, one.device, { quantity: 2 })),
    stock("Pads", "2027-08-31", "Store", { quantity: 6 }),
    stock("Pads", "2028-02-29", "Store", { quantity: 6 }),
  ];
  const useLog = Array.from({ length: 48 }, (_, at) =>
    use(isoFromDay(day("2022-02-01") + 36 * at), "Pads", `D${at % 10}`),
  );
  const ofItem = placesOf({ devices, datedStock, useLog });
  const { causes } = placeNeeds(ofItem, policy);
  const told = causes.expiry.map((expiry, m) => expiry + causes.use[m]!);
  const places = ofItem.places.map((place) => ({
    swapDays: [...place.stock].flatMap((at) => new Array<number>(2).fill(ofItem.units.swapBy[at]!)),
    perDay: (place.use!.rate.shape / place.use!.rate.exposure) * (12 / 365.25),
  }));
  const store = datedStock.filter(({ place }) => place === "Store");
  const shelf = store.flatMap(({ quantity, expiry }) => new Array<number>(quantity).fill(expiry - 14));
  const play = played(places, shelf, 2000);
  for (const months of [12, 18, 24, 36]) {
    expect(total(told, months) / total(play, months)).toBeGreaterThan(0.95);
    expect(total(told, months) / total(play, months)).toBeLessThan(1.05);
  }
});
