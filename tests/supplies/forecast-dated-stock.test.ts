import { describe, expect, it } from "vitest";
import { monthFromText } from "../../src/calendar/month.ts";
import { defaultPolicy } from "../../src/fleet/policy.ts";
import { emptyFleet, type Fleet } from "../../src/fleet/rows.ts";
import { fitGammaPoisson } from "../../src/maths/gamma-poisson.ts";
import { crowdedMonths } from "../../src/supplies/crowded-months.ts";
import { forecastDatedStock } from "../../src/supplies/forecast-dated-stock.ts";
import { tallyStock } from "../../src/supplies/stock-tally.ts";
import { usableLots } from "../../src/supplies/usable-lots.ts";
import { useRateTable } from "../../src/supplies/use-rate-table.ts";
import { catalogued, day, device, ordered, pack, stock, use } from "../fleet/make-rows.ts";

const policy = defaultPolicy(day("2026-11-01"));

describe("forecastDatedStock: swap days", () => {
  it("takes the swap margin off the expiry, and goes by the days after opening if sooner", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("D1")],
      catalogue: [catalogued("Gel", "gel", { openedDays: 90 })],
      datedStock: [
        stock("Gel", "2027-06-30", "D1"),
        stock("Gel", "2027-06-30", "D1", { opened: day("2026-10-01") }),
        stock("Gel", "2026-10-01", "D1"),
        stock("Gel", "2027-06-30", "Store"),
      ],
    };
    const { stock: units } = forecastDatedStock(fleet, policy).needing;
    expect([...units.swapBy]).toEqual([day("2027-06-16"), day("2026-12-30"), day("2026-09-17"), day("2027-06-16")]);
    expect([0, 1, 2, 3].map((at) => units.placeOf(at).installed)).toEqual([true, true, true, false]);
    // no log, no routine: nothing is used in place; the store's unit serves the swap of the opened gel
    expect([...units.chanceUsed]).toEqual([0, 0, 0, 1]);
  });
});

describe("forecastDatedStock: large quantities", () => {
  // By hand: 120 uses at two devices in two years, 24 months each, are 2.5 a month and device, 30 in the year to the
  // swap day; a date typed as a quantity must not be followed unit by unit
  it("comes to an end where a row holds millions of units", () => {
    const many = 20_270_331;
    const forecast = (atDevice: number, inStore: number) =>
      forecastDatedStock(
        {
          ...emptyFleet(),
          devices: [device("D1"), device("D2")],
          catalogue: [catalogued("Pads", "pads", { fits: ["van"] })],
          datedStock: [
            stock("Pads", "2027-11-15", "D1", { quantity: atDevice }),
            stock("Pads", "2027-11-15", "Store", { quantity: inStore }),
            stock("Pads", "2027-11-15", "D2"),
          ],
          useLog: Array.from({ length: 120 }, () => use("2025-12-01", "Pads", "D1")),
        },
        { ...policy, useLogFrom: policy.asOf - 730 },
      );
    const installed = forecast(many, 1);
    expect(installed.moves).toEqual([]);
    expect(Math.round(installed.needing.stock.chanceUsed[0]! * many)).toBe(30);
    expect(installed.needing.stock.chanceUsed[1]).toBeCloseTo(1, 9);
    // both devices' uses, and the units that fall due at both
    const shelved = forecast(1, many);
    const share = shelved.needing.stock.chanceUsed[1]! * many;
    expect(share).toBeGreaterThan(55);
    expect(share).toBeLessThan(70);
  });
});

describe("forecastDatedStock: use rates", () => {
  it("estimates each place's rate over the places of its duty", () => {
    const devices = ["A1", "A2", "A3", "A4"].map((name) => device(name, { duty: "ambulance" }));
    const counts = [9, 0, 1, 2];
    const useLog = counts.flatMap((count, i) =>
      Array.from({ length: count }, (_, n) => use(`2026-0${n + 1}-15`, "Pads", devices[i]!.device)),
    );
    const fleet: Fleet = {
      ...emptyFleet(),
      devices,
      catalogue: [catalogued("Pads", "pads", { carriedBy: ["ambulance"] })],
      useLog,
    };
    const from = day("2025-11-01");
    const { needing } = forecastDatedStock(fleet, { ...policy, useLogFrom: from });
    const months = (policy.asOf - from) / 30.4375;
    const prior = fitGammaPoisson(counts, [months, months, months, months])!;
    const places = needing.items[0]!.use!.places;
    expect(places.map((place) => place.rate.shape)).toEqual(counts.map((count) => prior.shape + count));
    expect(places[0]!.rate.exposure).toBeCloseTo(prior.exposure + months, 9);
  });

  it("ignores uses after as-of, restocking and lapses, and assumes no use of an item that is never logged", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("A1")],
      datedStock: [stock("Pads", "2028-01-31", "A1"), stock("Gel", "2028-01-31", "A1")],
      useLog: [
        use("2026-01-01", "Pads", "A1"),
        use("2026-02-01", "Pads", "A1", { reason: "restock" }),
        use("2026-03-01", "Pads", "A1", { reason: "lapsed" }),
        use("2027-01-01", "Pads", "A1"),
        use("2026-05-01", "Gel", "A1", { reason: "routine" }),
      ],
    };
    const { needing } = forecastDatedStock(fleet, policy);
    const [gel, pads] = needing.items;
    expect(pads!.use!.places[0]!.events).toBe(1);
    expect(gel!.use).toBeNull();
    expect(needing.stock.chanceUsed[1]).toBe(0);
    expect(needing.stock.chanceUsed[0]).toBeGreaterThan(0.3);
  });

  it("leaves out uses from before the log is complete", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("A1")],
      datedStock: [stock("Pads", "2028-01-31", "A1")],
      useLog: ["2024-01-01", "2025-03-01", "2026-02-01"].map((date) => use(date, "Pads", "A1")),
    };
    const { needing } = forecastDatedStock(fleet, { ...policy, useLogFrom: day("2025-01-01") });
    const { events, months } = needing.items[0]!.use!.places[0]!;
    expect([events, months]).toEqual([2, (policy.asOf - day("2025-01-01")) / 30.4375]);
  });

  it("shares a use logged at a site among the devices there, and gives a store a rate of its own", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("A1", { site: "North" }), device("A2", { site: "north" }), device("A3", { site: "South" })],
      catalogue: [catalogued("Pads", "pads", { carriedBy: [] })],
      datedStock: ["A1", "A2", "A3"].map((place) => stock("Pads", "2028-01-31", place)),
      useLog: [use("2026-01-01", "Pads", "North"), use("2026-02-01", "Pads", "Training room")],
    };
    const places = forecastDatedStock(fleet, policy).needing.items[0]!.use!.places;
    expect(places.map((place) => [place.key, place.events])).toEqual([
      ["a1", 0.5],
      ["a2", 0.5],
      ["a3", 0],
      ["store training room", 1],
    ]);
  });

  it("tells a store from a device whose name begins with that word", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("Store 5")],
      datedStock: [stock("Pads", "2028-01-31", "Store 5")],
      useLog: ["5", "Store 5", "Store 5"].map((place) => use("2026-01-01", "Pads", place)),
    };
    // the use at "5" is shared by no device, as none takes the item there
    const { needing } = forecastDatedStock(
      { ...fleet, catalogue: [catalogued("Pads", "pads", { fits: ["van"] })] },
      policy,
    );
    expect(needing.items[0]!.use!.places.map(({ device, events }) => [device?.device ?? "store", events])).toEqual([
      ["store", 1],
      ["Store 5", 2],
    ]);
    expect(useRateTable(needing).map(({ place }) => place)).toEqual(["5", "Store 5"]);
  });

  it("shares a use logged at a station among the devices of its vehicles", () => {
    const fleet: Fleet = {
      ...emptyFleet(),
      devices: [device("A1", { site: "North, Ambulance 7" }), device("A2", { site: "North, Ambulance 8" })],
      catalogue: [catalogued("Pads", "pads", { carriedBy: [] })],
      datedStock: ["A1", "A2"].map((place) => stock("Pads", "2028-01-31", place)),
      useLog: [use("2026-01-01", "Pads", "North"), use("2026-02-01", "Pads", "North, Ambulance 8")],
    };
    const places = forecastDatedStock(fleet, policy).needing.items[0]!.use!.places;
    expect(places.map((place) => [place.key, place.events])).toEqual([
      ["a1", 0.5],
      ["a2", 1.5],
    ]);
  });
});

describe("forecastDatedStock: crowded months", () => {
  const devices = Array.from({ length: 40 }, (_, i) => device(`D${i}`));
  const spreadOut = devices.slice(0, 24).map((d, i) => {
    const month = String((i % 12) + 1).padStart(2, "0");
    return stock("Pads", `${2027 + Math.floor(i / 12)}-${month}-28`, d.device, { lot: `S${i}` });
  });

  it("finds none where deliveries are spread evenly", () => {
    expect(forecastDatedStock({ ...emptyFleet(), devices, datedStock: spreadOut }, policy).crowdedMonths).toEqual([]);
  });

  it("finds a lot that lapses at many places in one month", () => {
    const wall = devices.slice(24).map((d) => stock("Pads", "2027-09-30", d.device, { lot: "WALL" }));
    const { crowdedMonths } = forecastDatedStock(
      { ...emptyFleet(), devices, datedStock: [...spreadOut, ...wall] },
      policy,
    );
    expect(crowdedMonths).toHaveLength(1);
    expect(crowdedMonths[0]).toMatchObject({ month: monthFromText("2027-09"), units: 17, places: 17 });
    expect(crowdedMonths[0]!.lots).toContain("WALL");
    expect(crowdedMonths[0]!.pValue).toBeLessThan(0.01);
    // By hand: 40 units over the 26 months to 2028-12 are 1.54 a month, so five make a crowd and four none: 13 too many; each of the three
    // months before has one unit and room for three more
    expect(crowdedMonths[0]!.evenShare).toBeCloseTo(40 / 26, 12);
    expect(crowdedMonths[0]!.says).toContain("swap 9 of the 13 units too many one to three months early");
    expect(crowdedMonths[0]!.says).toMatch(/^17 units of Pads fall due in 2027-09, .*\.$/);
  });

  // By hand: 12 units over a year are one a month, though the last of them is due in the third month
  it("judges an even spread over a year at least, so that a fleet of one purchase shows its crowd", () => {
    const datedStock = devices.slice(0, 12).map((d) => stock("Pads", "2027-01-31", d.device));
    const [crowd] = forecastDatedStock({ ...emptyFleet(), devices, datedStock }, policy).crowdedMonths;
    expect(crowd).toMatchObject({ month: monthFromText("2027-01"), units: 12, evenShare: 1 });
  });

  // By hand: 17 units, each as likely used as not, are 8.5; of two moves one carries a unit of the crowd
  it("says how many of a crowd are used before, and how many the moves carry away", () => {
    const wall = devices.slice(24).map((d) => stock("Pads", "2027-09-30", d.device, { lot: "WALL" }));
    const fleet = { ...emptyFleet(), devices, datedStock: [...spreadOut, ...wall] };
    const units = forecastDatedStock(fleet, policy).needing.stock;
    units.chanceUsed.fill(0.5);
    const moves = ["WALL", "S1"].map((lot) => {
      const carried = { item: "Pads", from: "D30", to: "D1", lot, quantity: 1, swapBy: day("2027-09-16") };
      return { ...carried, by: day("2027-01-01"), unitsSaved: 0.5 };
    });
    const [crowd] = crowdedMonths(units, tallyStock(units, policy), moves, policy);
    expect(crowd!.says).toContain(", and 8.5 are likely to be used before.");
    expect(crowd!.says).toContain("The moves proposed carry 1 of them to where more are used.");
  });

  // By hand, in 12 months with 12 deliveries: that five or more of them fall into one month has a chance of at most
  // 12 P(Bin(12, 1/12) >= 5) = 0.023, which is no rare thing; six or more, 0.0024
  it("passes over a full month that comes by chance more than once in a hundred times", () => {
    const fullest = (units: number) => {
      const ends = ["2026-11-30", "2026-12-31", "2027-01-31", "2027-02-28", "2027-05-31", "2027-10-31", "2027-08-31"];
      const single = ends.slice(0, 12 - units).map((expiry, i) => stock("Pads", expiry, devices[i]!.device));
      const full = devices.slice(20, 20 + units).map((d) => stock("Pads", "2027-03-31", d.device));
      return forecastDatedStock({ ...emptyFleet(), devices, datedStock: [...single, ...full] }, policy).crowdedMonths;
    };
    expect(fullest(5)).toEqual([]);
    expect(fullest(6)).toMatchObject([{ month: monthFromText("2027-03"), units: 6 }]);
  });

  it("takes units of one delivery for one point, which is no crowd", () => {
    const carton = stock("Pads", "2027-09-30", "D30", { lot: "ONE", quantity: 30 });
    const { crowdedMonths } = forecastDatedStock(
      { ...emptyFleet(), devices, datedStock: [...spreadOut, carton] },
      policy,
    );
    expect(crowdedMonths).toEqual([]);
  });
});

describe("usableLots", () => {
  const fleet: Fleet = {
    ...emptyFleet(),
    devices: [device("D1"), device("D2", { retired: day("2026-01-01") })],
    catalogue: [
      catalogued("Old pads", "pads", { replacedBy: "New pads" }),
      catalogued("New pads", "pads", { arrivesWithMonths: 20, leadDays: 30 }),
      catalogued("Pack", "pack"),
    ],
    datedStock: [
      stock("New pads", "2027-05-31", "Store", { quantity: 4, lot: "L1" }),
      stock("Old pads", "2027-03-31", "Store", { quantity: 2 }),
      stock("New pads", "2026-11-14", "Store"),
      stock("New pads", "2026-11-15", "Store"),
      stock("New pads", "2027-05-31", "D1"),
      stock("New pads", "2027-05-31", "D2"),
      stock("New pads", "2027-05-31", "Store", { held: "recall" }),
      stock("New pads", "2025-05-31", "Store"),
    ],
    onOrder: [
      ordered("New pads", 10, { arrives: day("2027-01-20"), order: "PO 1" }),
      ordered("New pads", 3, { expiry: day("2028-02-29") }),
      ordered("Pack", 2, { arrives: day("2026-09-01") }),
    ],
  };

  it("counts what a store or an order can still serve, under the item that is bought now", () => {
    const spares = [
      { pack: pack("S1", { item: "Pack" }), due: null },
      { pack: pack("S2", { item: "Pack", held: "swollen" }), due: policy.asOf },
    ];
    const lots = usableLots(fleet, policy, spares);
    expect(lots.map((lot) => [lot.item, lot.quantity, lot.origin, lot.availableFrom, lot.usableUntil])).toEqual([
      ["New pads", 2, "shelf", policy.asOf, day("2027-02-28")],
      ["New pads", 4, "shelf", policy.asOf, day("2027-04-30")],
      ["New pads", 3, "on-order", policy.asOf + 30, day("2028-01-31")],
      ["New pads", 10, "on-order", day("2027-01-20"), day("2028-08-31")],
      ["Pack", 1, "shelf", policy.asOf, null],
      ["Pack", 2, "on-order", policy.asOf, null],
    ]);
  });
});
