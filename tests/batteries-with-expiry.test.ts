import { describe, expect, it } from "vitest";
import { dayFromIso } from "../src/calendar/day.ts";
import { itemBook } from "../src/fleet/item-book.ts";
import { defaultPolicy, type Policy } from "../src/fleet/policy.ts";
import { whoTakes } from "../src/fleet/who-takes.ts";
import { makePlan } from "../src/index.ts";
import { forecastPacks } from "../src/life/forecast-packs.ts";
import { standInGround } from "../src/orders/stand-ins.ts";
import { usableLots } from "../src/supplies/usable-lots.ts";
import { read } from "./sheets/sheet-file.ts";

const AS_OF = dayFromIso("2026-11-01")!;
const planOf = (sheets: string | Record<string, string>, policy: Partial<Policy> = {}) =>
  makePlan(read(sheets), { ...defaultPolicy(AS_OF), ...policy });
const needed = (plan: ReturnType<typeof planOf>) =>
  Object.fromEntries(plan.demand.map(({ item, cumulative }) => [item, cumulative.p50.at(-1)]));

// derived by hand: each battery is one need, on the earlier of its dates
describe("batteries with a serial and an expiry", () => {
  const REGISTER =
    "AED,Site,Battery S/N,Battery installed,Battery expires,Pad expires\n" +
    "AED-1,Pool,B1,2023-02-01,2027-03-31,2027-06-30\nAED-2,Hall,B2,2024-02-01,2028-03-31,2028-06-30\nAED-3,Gym,B3,2022-02-01,2026-12-31,2027-06-30\n";

  it("of a register are each one need, by the date that stands on it", () => {
    const plan = planOf(REGISTER);
    expect(needed(plan)).toEqual({ Battery: 3, Pad: 3 });
    expect(plan.packs.map(({ serial, replaceBy }) => [serial, replaceBy.p50, replaceBy.because]).sort()).toEqual([
      ["B1", "2027-03-31", "use-by"],
      ["B2", "2028-03-31", "use-by"],
      ["B3", "2026-12-31", "use-by"],
    ]);
    // the margin is for dated stock: pads by a fortnight before, batteries to the day that the packs tell
    const swapBy = Object.fromEntries(plan.datedStock.map((row) => [row.serial ?? row.place, row.swapBy]));
    expect(swapBy).toMatchObject({ B1: "2027-03-31", B3: "2026-12-31", "AED-1": "2027-06-16" });
  });

  // a list of all sorts and a register of the same three batteries; 36 months from 2024-01-01 are over on 2027-01-01
  it.each([
    [
      "a list of all sorts",
      "Category,Serial,Lot,Installed,Expires,Site\n" +
        "AED,AED-1,,2020-01-01,,Pool\nBattery,B1,,2024-01-01,2028-01-31,Pool\nPads,,L1,,2027-06-30,Pool\n" +
        "AED,AED-2,,2020-01-01,,Hall\nBattery,B2,,2024-06-01,2027-03-31,Hall\nPads,,L2,,2027-06-30,Hall\n",
    ],
    [
      "a register",
      "AED,Site,Battery S/N,Battery installed,Battery expires,Pad lot,Pad expires\n" +
        "AED-1,Pool,B1,2024-01-01,2028-01-31,L1,2027-06-30\nAED-2,Hall,B2,2024-06-01,2027-03-31,L2,2027-06-30\n",
    ],
  ])("of %s are packs, due by the earlier of age and expiry, and each is bought once", (_, sheet) => {
    const plan = planOf(sheet, { packMaxAgeMonths: 36, horizonMonths: 14 });
    expect(plan.packs.map(({ serial, replaceBy }) => [serial, replaceBy.p50, replaceBy.because]).sort()).toEqual([
      ["B1", "2027-01-01", "age"],
      ["B2", "2027-03-31", "use-by"],
    ]);
    expect(needed(plan)).toEqual({ [plan.packs[0]!.item!]: 2, [plan.datedStock.at(-1)!.item]: 2 });
  });

  it("fade as well where they were charged or tested", () => {
    const cycled = REGISTER.replace("Battery expires", "Battery cycles,Battery expires").replace(
      /,(202\d-02-01),/g,
      ",$1,120,",
    );
    const plan = planOf(cycled);
    expect(needed(plan).Battery).toBeGreaterThanOrEqual(3);
    expect(plan.packs.every(({ capacityNow }) => capacityNow !== null)).toBe(true);
    expect(plan.packs.find(({ serial }) => serial === "B3")!.replaceBy.p90! <= "2026-12-31").toBe(true);
  });

  it("are one unit of the device that holds them, and a device to come needs no more", () => {
    const { fleet } = read({
      "packs.csv": "serial,item,device\nB1,cell,AED-1\nB2,cell,AED-2\n",
      "dated_stock.csv": "item,expiry,serial,place\ncell,2028-03-31,B1,AED-1\ncell,2028-03-31,B2,AED-2\n",
      "devices.csv": "device,type,in_service\nAED-1,AED,2022-01-01\nAED-2,AED,2022-01-01\nAED-3,AED,2027-02-01\n",
    });
    const book = itemBook(fleet);
    const takes = whoTakes(fleet, book, AS_OF);
    expect(takes.takers(book.find("cell")).map(({ device, units }) => [device.device, units])).toEqual([
      ["AED-1", 1],
      ["AED-2", 1],
      ["AED-3", 1],
    ]);
    const ground = standInGround(fleet, defaultPolicy(AS_OF), book, []);
    expect(ground.stockOf.get("cell")).toBeUndefined();
  });

  it("are no spare besides the pack on the shelf", () => {
    const lots = (dated: string) => {
      const { fleet } = read({
        "packs.csv": "serial,item,device,in_service,made\nB1,cell,D1,2022-01-01,2021-12-01\nS1,cell,,,2026-06-01\n",
        "catalogue.csv": "item,kind,service_months\ncell,primary,60\n",
        "devices.csv": "device,type\nD1,AED\n",
        "dated_stock.csv": `item,expiry,serial,quantity,place\n${dated}`,
      });
      const policy = defaultPolicy(AS_OF);
      const found = usableLots(fleet, policy, forecastPacks(fleet, policy).stock);
      return found.filter(({ item }) => item === "cell").map(({ quantity, usableUntil }) => [quantity, usableUntil]);
    };
    expect(lots("pads,2027-05-31,,1,Store\n")).toEqual([[1, null]]);
    // until the month before that of its use-by, in which it would be due itself
    expect(lots("cell,2030-05-31,s1,1,Store\n")).toEqual([[1, dayFromIso("2030-04-30")]]);
  });
});
